"""A small plan written by hand, with texts that are out to do harm."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from blockgen.plan import Body, Contributor, Fastener, Feature, Frame, Ligament, Plan, Pocket, Segment
from blockgen.record import Input, Record

MORE_OR_LESS = {"upper": 0.1, "lower": -0.1}
HOSTILE = "Spray | carriage <b>x</b> `rm` _a_ [l](http://x)\nrow\x1b[31m \u202e$"


def record(key, value, unit="mm", origin="sized", rule="", inputs=(), source="", **more):
    return Record(key, value, unit, origin, rule, dict(inputs), source, **more)


def records():
    length_inputs = {
        "screw.journal_reach": Input(35.0, "mm", "given", "screw.journal_reach"),
        "motor.shaft_length": Input(30.0, "mm", "preset", "motor.shaft_length"),
    }
    return [
        record("job.number", "GL-040-11", "", "given"),
        record("job.revision", "A", "", "assumed", "first revision"),
        record("job.title", HOSTILE, "", "given", source="/somewhere/axis.toml"),
        record("job.gravity", "-z", "", "assumed", "horizontal axis"),
        record("block.material", "EN AW-6082-T6", "", "assumed", "usual block material"),
        record("screw.journal_reach", 35.0, origin="given", source="/somewhere/axis.toml", line=12),
        record("motor.shaft_length", 30.0, origin="preset", source="preset servo-80: own (representative)"),
        record("coupling.gap_min", 1.0, origin="assumed", rule="shaft ends must not touch", source="common practice"),
        record("practice.rim", 2.5, origin="assumed", rule="least wall", source="common practice"),
        record("length_min", 80.0, rule="journal reach + shaft length + 15", inputs=length_inputs),
        record("length_max", 92.0, rule="largest"),
        record("length", 86.0 + 1e-9, rule="middle of length_min and length_max", inputs=length_inputs, **MORE_OR_LESS),
        record("bearing_bore", 50.0, rule="pilot", upper=0.025, lower=0.0, fit="H7"),
        record("motor_bore", 70.0, rule="pilot", upper=0.03, lower=0.0, fit="H7"),
    ]  # fmt: skip


def features():
    bore = Feature(
        "motor_bore", "bore", "motor_bores", "motor_seat", (86.0, 0.0, 55.0), (-1.0, 0.0, 0.0), 70.0, 24.0, True,
        (Segment("bore", 0.0, 35.0, 24.0, 35.0),), opens_into=("window",), fit="H7", upper=0.03, lower=0.0,
        call_out="\u230070 H7", keys={"diameter": "motor_bore"},
    )  # fmt: skip
    window = Feature(
        "window", "window", "window", "top", (43.0, 0.0, 100.0), (0.0, 0.0, -1.0), 60.0, 100.0, True,
        pocket=Pocket("z", (25.0, -30.0, 0.0), (62.0, 30.0, 100.0), 8.0, True, True), opens_into=("base", "motor_bore"),
    )  # fmt: skip
    return bore, window


@pytest.fixture
def plan():
    entered = records()
    return Plan(
        records={r.key: r for r in entered},
        dimensions=("length", "length_min", "length_max", "bearing_bore", "motor_bore"),
        body=Body(86.0, 120.0, 100.0, 0.0, 0.5),
        features=features(),
        base_features=(),
        annotations=(),
        contributors=(Contributor("coaxiality", "both", "offset", "disc", 0.01, None, 0.0, False, "block.coaxiality"),),
        fasteners=(Fastener("base", "ISO 4762", "M10", 50.0, "8.8", 4, 50.0, 28000.0, 15.0, None),),
        frames={"motor": Frame((86.0, 0.0, 55.0), (0.0, 1.0, 0.0), (1.0, 0.0, 0.0))},
        ligaments=tuple(Ligament(f"hole_{n}", "window", 3.0 + n, 3.0) for n in range(7)),
        notes=("the counterbore was deepened",),
        material_density=2700.0,
    )


@pytest.fixture
def findings():
    def finding(name, verdict, margin):
        inputs = {"peak": Input(10.0, "N*m", "given", "motor.peak_torque")}
        return SimpleNamespace(
            id=name, title=f"Check of {name}", value=1.0, limit=2.0, unit="mm", margin=margin, verdict=verdict,
            explanation=f"because of {name}", inputs=inputs, source="common practice",
            missing=("motor.peak_torque",) if verdict == "not_assessed" else (), stake="fail",
        )  # fmt: skip

    return (
        finding("good", "pass", 0.5),
        finding("bad", "fail", -0.25),
        finding("open", "not_assessed", None),
        finding("near", "warn", 0.02),
    )
