"""Tests of names and colours of parts."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from blockgen.outputs.report.scene_parts import COLOURS, OTHER, colour, kind_of, label


def brightness(shown):
    parts = [int(shown[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return sum(weight * part for weight, part in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


@pytest.mark.parametrize(
    ("one", "other"),
    [("block", "motor"), ("block", "bearing_unit"), ("block", "base_plate"), ("block", "base_screw"),
     ("journal", "bearing_unit"), ("journal", "coupling"), ("motor", "coupling"), ("base_plate", "dowel")],
)  # fmt: skip
def test_parts_that_touch_differ_in_brightness_too(one, other):
    light, dark = sorted((brightness(COLOURS[one]), brightness(COLOURS[other])), reverse=True)
    assert (light + 0.05) / (dark + 0.05) > 1.35


def test_kinds_and_colours():
    assert kind_of("base_screw_12") == "base_screw"
    assert colour("motor_screw_3") == COLOURS["motor_screw"]
    assert colour("something_new") == OTHER


@pytest.mark.parametrize(
    ("part_id", "name", "shown"),
    [
        ("block", "X_A_block", "block"),
        ("motor", "motor servo-80", "motor servo-80"),
        ("base_screw_2", "ISO 4762 M8 x 60 - 8.8", "base screw: ISO 4762 M8 x 60 - 8.8"),
    ],
)
def test_labels(part_id, name, shown):
    assert label(SimpleNamespace(id=part_id, name=name)) == shown
