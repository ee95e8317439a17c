from dataclasses import replace

from blockgen.outputs.cautions import cautions
from blockgen.record import Record


def falling(plan, gravity):
    records = {**plan.records, "job.gravity": Record("job.gravity", gravity, "", "given", "")}
    return cautions(replace(plan, records=records))


def test_every_subject_is_there(plan):
    text = " ".join(cautions(plan)).lower()
    for word in ("falls", "stored energy", "mass", "sharp", "pinch", "guard", "qualified engineer", "licensed"):
        assert word in text


def test_only_a_vertical_axis_is_called_one(plan):
    assert falling(plan, "-x")[0].startswith("THIS AXIS IS VERTICAL")
    assert falling(plan, "+x")[0].startswith("THIS AXIS IS VERTICAL")
    assert not any("THIS AXIS" in text for text in falling(plan, "-y"))
