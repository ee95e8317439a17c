"""The measured block of the demo: its inspection sheet, filled in with invented values.

``python -m tests.measured_example`` writes it again after the spec or the sheet has changed; a test tells when it is
stale.
"""

from __future__ import annotations

import csv
import io
from pathlib import Path

from blockgen.evidence.characteristics import InspectionRow, inspection_rows
from blockgen.outputs.inspection_csv import inspection_csv
from blockgen.pipeline import design

EXAMPLES = Path(__file__).resolve().parents[1] / "presets" / "examples"
SPEC = EXAMPLES / "spray_carriage_servo.toml"
MEASURED = EXAMPLES / "spray_carriage_servo_measured.csv"

# id: value, expanded uncertainty, in the unit of the row. All invented.
VALUES = {
    "bearing_seat.flatness": (0.004, 0.002),
    "bearing_seat.slope_z": (0.09, 0.03),
    "bearing_bore.perpendicularity": (0.006, 0.002),
    "motor_bore.offset_y": (0.006, 0.002),
    "motor_bore.offset_z": (-0.004, 0.002),
    "motor_seat.slope_y": (-0.11, 0.03),
    "motor_seat.slope_z": (0.07, 0.03),
    "base.flatness": (0.012, 0.003),
    "bearing_bore.diameter": (45.011, 0.003),
    "motor_bore.diameter": (70.014, 0.003),
    "motor_bore.depth": (4.05, 0.02),
    "block.length": (113.04, 0.02),
    "block.shaft_height": (64.972, 0.004),
    "motor.spigot_y": (0.012, 0.003),
    "motor.spigot_z": (-0.007, 0.003),
    "motor.face_slope_y": (0.14, 0.05),
    "motor.face_slope_z": (-0.20, 0.05),
}


def measured_sheet() -> str:
    """Return the filled sheet; what is not listed above stands in the middle of its limits."""
    made = design(SPEC)
    rows = {row.id: row for row in inspection_rows(made.plan)}
    lines = list(csv.reader(io.StringIO(inspection_csv(made.plan, made.spec_sha256, made.status))))
    for cells in lines:
        if len(cells) > 1 and cells[1] in rows:
            cells[2], cells[4] = _written(rows[cells[1]])
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\n").writerows(lines)
    return out.getvalue()


def _written(row: InspectionRow) -> tuple[str, str]:
    if row.id in VALUES:
        value, uncertainty = VALUES[row.id]
        return f"{value:g}", f"{uncertainty:g}"
    told_by_the_vector = row.kind in {"coaxiality", "parallelism"} or row.id == "bearing_seat.perpendicularity"
    if row.needed == "bought" or row.uncertainty_wanted is None or row.upper is None or told_by_the_vector:
        return "", ""
    low = row.lower if row.lower is not None else 0.0
    return f"{round((low + row.upper) / 2, 4):g}", f"{row.uncertainty_wanted:g}"


if __name__ == "__main__":
    MEASURED.write_text(measured_sheet(), encoding="utf-8", newline="\n")
