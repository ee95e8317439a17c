"""The key table is complete and says what the contract says."""

import pytest

from blockgen.spec.keys import key_info, key_table
from blockgen.spec.tables import MODELS, TABLES
from blockgen.units import DIMENSIONS

REQUIRED = {
    "job.number",
    *(f"motor.{k}" for k in ("pilot_diameter", "bolt_circle", "flange_size", "shaft_diameter", "shaft_length")),
    *(f"bearing.{k}" for k in ("pilot_diameter", "flange_size", "bolt_circle")),
    "screw.journal_diameter",
    "screw.journal_reach",
    "coupling.outer_diameter",
    "coupling.length",
    "base.shaft_height",
}


def test_every_key_is_there_once_and_described():
    keys = key_table()
    assert len({k.key for k in keys}) == len(keys)
    assert {k.key.split(".")[0] for k in keys} == {*TABLES, "material"}
    assert all(k.description.endswith(".") and k.unit in DIMENSIONS for k in keys)


def test_the_required_keys():
    assert {k.key for k in key_table() if k.required} == REQUIRED


def test_units_and_choices():
    assert key_info("motor.inertia").unit == "kg*m^2"
    assert key_info("motor.pilot_form").choices == ("proud", "recessed")
    assert key_info("motor.brake").choices == ("true", "false")
    assert key_info("family.3.shaft_length").unit == "mm"
    assert key_info("material.my 1.2 alloy.density").unit == "kg/m^3"
    with pytest.raises(KeyError, match=r"motor\.nothing"):
        key_info("motor.nothing")


def test_tables_are_strict():
    assert all(model.model_config["extra"] == "forbid" and model.model_config["strict"] for model in MODELS.values())
