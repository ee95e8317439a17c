from blockgen.change.swap.swap import swap
from blockgen.console.new_page import swap_page
from blockgen.console.plain import lines
from tests.examples import SERVO, STEPPER

NONE = {"motor": None, "bearing": None, "coupling": None}


def printed(made, width=100):
    return "\n".join(lines(swap_page(made), width))


def test_locks_and_status_are_told(tmp_path):
    text = printed(swap(tmp_path / "n.toml", SERVO, {**NONE, "motor": "iec-71-ft85"}), 400)
    assert "Revision A became B" in text
    assert '- block.bearing_wall = "26.5 mm"' in text
    assert "- base.shaft_height, as it was given" in text
    assert "No check fails when these locks are freed: remove base.hole_positions from the file." in text
    assert f"blockgen compare {SERVO} {tmp_path / 'n.toml'}" in text


def test_a_conflict_names_the_locks_to_free(tmp_path):
    text = printed(swap(tmp_path / "n.toml", STEPPER, {**NONE, "coupling": "jaw-40"}), 400)
    assert "The file is written, but no block can exist for it as it stands." in text
    assert "remove block.bearing_wall and block.motor_wall from the file" in text


def test_a_copy_says_little(tmp_path):
    text = printed(swap(tmp_path / "n.toml", SERVO, NONE), 400)
    assert "Locked" not in text
    assert "Revision" not in text


def test_a_revision_without_a_next_one_is_left_and_told(tmp_path):
    (tmp_path / "old.toml").write_text(SERVO.read_text().replace('revision = "A"', 'revision = "draft"'))
    text = printed(swap(tmp_path / "n.toml", tmp_path / "old.toml", {**NONE, "motor": "servo-100"}))
    assert "Revision draft was left: give the new one yourself." in text


def test_checks_that_fail_with_and_without_the_locks_are_told_so(tmp_path):
    text = printed(swap(tmp_path / "n.toml", SERVO, {**NONE, "motor": "servo-130"}), 400)
    assert "NOT FOR MANUFACTURE" in text
    assert "Freeing the locks does not help: blockgen check tells what would." in text


def test_without_a_cure_no_empty_list_is_announced(tmp_path):
    text = printed(
        swap(tmp_path / "n.toml", SERVO.with_name("spray_carriage_family.toml"), {**NONE, "motor": "nema-34"}), 400
    )
    assert "no block can exist" in text
    assert "choose other parts" in text
    assert "the least trouble first" not in text
