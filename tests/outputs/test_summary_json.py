import json
from dataclasses import replace

import pytest

from blockgen.mechanics.volume import reference_volume
from blockgen.outputs.summary_json import summary
from blockgen.outputs.tidy import as_json


@pytest.fixture
def document(plan, findings):
    return summary(plan, findings, "PRELIMINARY: hole size assumed", "a" * 64)


def test_the_contract_s_keys_are_there(document):
    wanted = (
        "schema status tool spec_sha256 job dimensions features fasteners checks alignment mass bounding_box volume "
        "frames assumptions cautions"
    )
    assert set(wanted.split()) <= set(document)
    assert document["schema"] == 1
    assert document["status"] == "PRELIMINARY: hole size assumed"


def test_a_dimension_tells_its_rule_inputs_source_and_origin(document):
    length = document["dimensions"]["length"]
    assert length == {
        "value": 86.0,
        "unit": "mm",
        "upper": 0.1,
        "lower": -0.1,
        "fit": None,
        "rule": "middle of length_min and length_max",
        "inputs": {
            "screw.journal_reach": {"value": 35.0, "unit": "mm", "origin": "given", "ref": "screw.journal_reach"},
            "motor.shaft_length": {"value": 30.0, "unit": "mm", "origin": "preset", "ref": "motor.shaft_length"},
        },
        "source": "",
        "origin": "sized",
    }
    assert list(document["dimensions"]) == ["length", "length_min", "length_max", "bearing_bore", "motor_bore"]


def test_every_reference_leads_somewhere(document):
    known = {**document["dimensions"], **document["inputs"]}
    refs = [i["ref"] for d in known.values() for i in d["inputs"].values()]
    assert refs
    assert set(refs) <= set(known)


def test_the_folder_of_the_spec_leaves_no_trace(document):
    assert "/somewhere" not in as_json(document)


def test_features_fasteners_and_checks(document):
    bore, window = document["features"]
    assert bore["position"] == [86.0, 0.0, 55.0]
    assert bore["axis"] == [-1.0, 0.0, 0.0]
    assert (bore["diameter"], bore["fit"], bore["upper"], bore["thread"]) == (70.0, "H7", 0.03, None)
    assert window["pocket"]["corner_radius"] == 8.0
    assert document["fasteners"][0]["class"] == "8.8"
    assert document["fasteners"][0]["standard"] == "ISO 4762"
    assert [c["verdict"] for c in document["checks"]] == ["pass", "fail", "not_assessed", "warn"]
    assert document["checks"][2]["margin"] is None
    assert document["alignment"]["contributors"][0]["characteristic"] == "block.coaxiality"


def test_box_volume_and_mass_agree(document, plan):
    assert document["bounding_box"] == [0.0, -60.0, 0.0, 86.0, 60.0, 100.0]
    assert document["volume"] == pytest.approx(reference_volume(plan), abs=1e-6)
    assert document["mass"]["value"] == pytest.approx(document["volume"] * 2700e-9, abs=1e-6)


def test_assumptions_are_about_this_machine(document):
    keys = [a["key"] for a in document["assumptions"]]
    assert "coupling.gap_min" in keys
    assert "practice.rim" not in keys
    assert not any(a["mates"] for a in document["assumptions"])
    assert "practice.rim" in document["inputs"]


def test_thinnest_walls_are_five(document):
    assert [w["wall"] for w in document["thinnest_walls"]] == [3.0, 4.0, 5.0, 6.0, 7.0]


def test_text_survives_as_json(document, plan):
    assert json.loads(as_json(document))["job"]["title"] == plan.text("job.title")


def test_bytes_do_not_hang_on_the_last_bits(plan, findings, document):
    noisy = dict(plan.records)
    noisy["length"] = replace(noisy["length"], value=86.0 - 1e-9)
    other = summary(replace(plan, records=noisy), findings, "PRELIMINARY: hole size assumed", "a" * 64)
    assert as_json(other) == as_json(document)
