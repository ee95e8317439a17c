from types import SimpleNamespace

from blockgen.outputs.unused import unused_line
from blockgen.record import Record


def plan(*keys):
    return SimpleNamespace(records={key: Record(key, 1.0, "", "given", "") for key in keys})


def test_the_line_names_what_is_given_for_nothing():
    line = unused_line(plan("motor.inertia", "family.0.pilot_diameter", "family.1.shaft_fit", "motor.pilot_diameter"))
    assert line == "Given, not used in this version: motor.inertia, family.1.shaft_fit."


def test_nothing_is_said_where_all_is_used():
    assert unused_line(plan("motor.pilot_diameter")) == ""
