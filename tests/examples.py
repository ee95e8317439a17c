"""The demonstration specs that can be built."""

from pathlib import Path

FOLDER = Path(__file__).resolve().parents[1] / "presets" / "examples"
EXAMPLES = [path for path in sorted(FOLDER.glob("*.toml")) if "too_short" not in path.stem]
SERVO = FOLDER / "spray_carriage_servo.toml"
STEPPER = FOLDER / "spray_carriage_stepper.toml"
