"""Plans written by hand for the tests of solid, volume, STEP and STL: a demo-like block and variants of it."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from blockgen.plan import Body, Feature, Plan, Pocket, Point, Segment
from blockgen.record import Record

LENGTH, WIDTH, HEIGHT, SHAFT_HEIGHT = 140.0, 120.0, 110.0, 55.0
BEARING_WALL, MOTOR_WALL, WINDOW_WIDTH = 25.0, 24.0, 60.0
POINT_SLOPE = math.tan(math.radians(59.0))


def stack(*pieces: tuple[str, float, float, float]) -> tuple[Segment, ...]:
    """Return a profile from (part, length, start radius, end radius)."""
    segments, place = [], 0.0
    for part, length, start, end in pieces:
        segments.append(Segment(part, place, start, place + length, end))
        place += length
    return tuple(segments)


def drilled(part: str, diameter: float, depth: float, mouth: float) -> tuple[Segment, ...]:
    """Return a blind drilled hole: mouth chamfer, cylinder, 118 degree point."""
    r = diameter / 2
    return stack(
        ("mouth_chamfer", mouth - r, mouth, r), (part, depth - (mouth - r), r, r), ("point", r / POINT_SLOPE, r, 0.0)
    )


def turned(feature_id: str, kind: str, face: str, position: Point, axis: Point, profile: tuple[Segment, ...], **more):
    """Return a turned feature; diameter and depth follow from the profile's last cylinder."""
    last = [s for s in profile if s.start_radius == s.end_radius][-1]
    return Feature(
        feature_id,
        kind,
        feature_id.rstrip("0123456789_") + "s",
        face,
        position,
        axis,
        2 * last.end_radius,
        last.end,
        more.pop("through", False),
        profile,
        **more,
    )


def motor_bore(through_radius: float = 22.0) -> Feature:
    """Return a stepped pilot bore of the motor wall."""
    r = through_radius
    profile = stack(
        ("mouth_chamfer", 0.5, 35.5, 35.0),
        ("bore", 4.0, 35.0, 35.0),
        ("shoulder", 0.0, 35.0, r),
        ("through", MOTOR_WALL - 4.5, r, r),
    )
    bore = turned(
        "motor_bore", "bore", "motor_seat", (LENGTH, 0.0, SHAFT_HEIGHT), (-1.0, 0.0, 0.0), profile, through=True,
        opens_into=("window",), fit="H7", upper=0.030, lower=0.0, call_out="70 H7 (+0.030/0)",
    )  # fmt: skip
    return replace(bore, diameter=70.0, depth=4.5)


def bearing_bore(radius: float = 25.0) -> Feature:
    """Return a plain bore through the bearing wall."""
    profile = stack(("mouth_chamfer", 0.5, radius + 0.5, radius), ("bore", BEARING_WALL - 0.5, radius, radius))
    return turned(
        "bearing_bore", "bore", "bearing_seat", (0.0, 0.0, SHAFT_HEIGHT), (1.0, 0.0, 0.0), profile, through=True,
        opens_into=("window",), fit="H7", upper=0.025, lower=0.0, call_out="50 H7 (+0.025/0)",
    )  # fmt: skip


def window(axis: str = "z", floor: float = 0.0, half: float = WINDOW_WIDTH / 2, corner: float = 8.0) -> Feature:
    """Return a window: through or a pocket along z, or across along y between floor and floor + 2 half."""
    start, end = BEARING_WALL, LENGTH - MOTOR_WALL
    if axis == "z":
        pocket = Pocket("z", (start, -half, floor), (end, half, HEIGHT), corner, floor == 0.0, True)
    else:
        pocket = Pocket("y", (start, -WIDTH / 2, floor), (end, WIDTH / 2, floor + 2 * half), corner, True, True)
    position = ((start + end) / 2, 0.0, HEIGHT)
    return Feature(
        "window",
        "window",
        "window",
        "top",
        position,
        (0.0, 0.0, -1.0),
        2 * half,
        HEIGHT - floor,
        floor == 0.0,
        pocket=pocket,
    )


def around(count: int, circle: float) -> list[tuple[float, float]]:
    """Return places on a bolt circle, the first at 45 degrees."""
    angles = [math.radians(45.0 + 360.0 * i / count) for i in range(count)]
    return [(circle / 2 * math.cos(a), circle / 2 * math.sin(a)) for a in angles]


def threads(name: str, x: float, sense: float, circle: float, drill: float, depth: float) -> list[Feature]:
    """Return four tapped holes on a seat."""
    face = "motor_seat" if name.startswith("motor") else "bearing_seat"
    return [
        turned(
            f"{name}_thread_{i}", "tapped_hole", face, (x, y, SHAFT_HEIGHT + z), (sense, 0.0, 0.0),
            drilled("thread", drill, depth, drill * 0.62), thread="M8-6H", thread_depth=depth - 4.0,
            call_out=f"M8-6H depth {depth - 4:g}",
        )
        for i, (y, z) in enumerate(around(4, circle), 1)
    ]  # fmt: skip


BASE_PLACES = [(x, y) for x in (20.0, 70.0, 120.0) for y in (-47.0, 47.0)]


def base_screws(height: float = HEIGHT, bottom: float = 0.0) -> list[Feature]:
    """Return six counterbored through holes from above."""
    profile = stack(
        ("counterbore", 12.0, 9.0, 9.0), ("shoulder", 0.0, 9.0, 5.5), ("hole", height - bottom - 12.0, 5.5, 5.5)
    )
    return [
        turned(
            f"base_screw_{i}", "counterbored_hole", "top", (x, y, height), (0.0, 0.0, -1.0), profile, through=True,
            opens_into=("base",), counterbore_diameter=18.0, counterbore_depth=12.0,
            call_out="11 through, counterbore 18 depth 12",
        )
        for i, (x, y) in enumerate(BASE_PLACES, 1)
    ]  # fmt: skip


def dowels() -> list[Feature]:
    """Return two blind dowel holes from below."""
    return [
        turned(
            f"dowel_{i}", "dowel_hole", "base", (x, y, 0.0), (0.0, 0.0, 1.0), drilled("hole", 7.8, 16.0, 4.2),
            fit="H7", call_out="8 H7",
        )
        for i, (x, y) in enumerate([(45.0, -47.0), (95.0, 47.0)], 1)
    ]  # fmt: skip


def lifting_thread() -> Feature:
    """Return a tapped hole on top."""
    return turned(
        "lifting_thread_1", "tapped_hole", "top", (12.0, 0.0, HEIGHT), (0.0, 0.0, -1.0),
        drilled("thread", 6.8, 18.0, 4.2), thread="M8-6H", thread_depth=14.0, call_out="M8-6H depth 14",
    )  # fmt: skip


def relief(low_x: float = 40.0, high_x: float = 100.0, depth: float = 2.0, clipped: bool = False) -> Feature:
    """Return a relief of the base that runs out at both sides."""
    half = WIDTH / 2 if not clipped else 40.0
    pocket = Pocket("z", (low_x, -half, 0.0), (high_x, half, depth), 0.0, True, False)
    position = ((low_x + high_x) / 2, 0.0, 0.0)
    return Feature(
        "relief", "relief", "relief", "base", position, (0.0, 0.0, 1.0), high_x - low_x, depth, False, pocket=pocket,
        opens_into=("base",),
    )  # fmt: skip


def plan_of(features: Iterable[Feature], *, fillet: float = 6.0, chamfer: float = 0.5, **job: str) -> Plan:
    """Return a plan with the sample body."""
    texts = {
        "job.number": "SC-104", "job.revision": "A", "job.title": "Spray carriage axis, mounting block",
        "block.material": "aluminium 6082-T6", **{key.replace("_", ".", 1): value for key, value in job.items()},
    }  # fmt: skip
    records = {key: Record(key, value, "", "given", "given") for key, value in texts.items()}
    body = Body(LENGTH, WIDTH, HEIGHT, fillet, chamfer)
    return Plan(records, (), body, tuple(features), (), (), (), (), {}, (), (), 2700.0)


def full_features() -> list[Feature]:
    """Return the features of the usual block: 20 cavities."""
    return [
        bearing_bore(), motor_bore(), window(), *threads("bearing", 0.0, 1.0, 75.0, 6.8, 18.0),
        *threads("motor", LENGTH, -1.0, 90.0, 6.8, 17.0), *base_screws(), *dowels(), lifting_thread(),
    ]  # fmt: skip


def usual() -> Plan:
    """Return the usual block: through window along z."""
    return plan_of(full_features())


def with_wide_bore() -> Plan:
    """Return a block whose bore is wider than the window, and so cuts its side walls."""
    return plan_of([bearing_bore(33.0), motor_bore(28.0), window()])


def with_bore_as_wide_as_window() -> Plan:
    """Return a block whose bore touches both side walls of the window."""
    return plan_of([bearing_bore(30.0), motor_bore(), window()])


def with_pocket() -> Plan:
    """Return a block whose window has a floor."""
    return plan_of([bearing_bore(), motor_bore(26.0), window(floor=20.0), *dowels()])


def with_deep_bore() -> Plan:
    """Return a block whose bore reaches below the floor of the window."""
    return plan_of([bearing_bore(29.0), motor_bore(), window(floor=30.0)])


def across() -> Plan:
    """Return a block whose window runs across, off the shaft axis."""
    return plan_of([bearing_bore(), motor_bore(), window("y", floor=27.0), lifting_thread(), *dowels()])


def sharp_edged() -> Plan:
    """Return a block without outer fillets."""
    return plan_of(full_features(), fillet=0.0, chamfer=1.0)


def with_relief() -> Plan:
    """Return a block with a relief across the base that takes in screws, part of screws and the window."""
    return plan_of([*full_features(), relief(low_x=65.0, high_x=100.0)])


def with_closed_relief() -> Plan:
    """Return a block with a relief inside the base."""
    return plan_of([bearing_bore(), motor_bore(), window(floor=20.0), *base_screws(), relief(clipped=True)])


def plain() -> Plan:
    """Return the uncut body without edge breaks."""
    return plan_of([], fillet=0.0, chamfer=0.0)


def split() -> Plan:
    """Return a window as wide as the block: it parts the block in two."""
    whole = Pocket("z", (25.0, -60.0, 0.0), (116.0, 60.0, HEIGHT), 0.0, True, True)
    return plan_of([lifting_thread(), replace(window(), pocket=whole)])


SAMPLES = {
    function.__name__: function
    for function in (
        usual, with_wide_bore, with_bore_as_wide_as_window, with_pocket, with_deep_bore, across, sharp_edged,
        with_relief, with_closed_relief, plain,
    )
}  # fmt: skip
