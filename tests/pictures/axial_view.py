"""The axial layout of the block: a section through the shaft axis with the mating parts as outlines."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import matplotlib as mpl

mpl.use("Agg")

import matplotlib.pyplot as plt
from matplotlib.patches import Rectangle

from blockgen.plan import Plan

BLOCK = {"facecolor": "#c4cad0", "edgecolor": "#333a40", "hatch": "///", "lw": 1.2}
SHAFT = {"facecolor": "#dfe8ef", "edgecolor": "#333a40", "lw": 1.1}
HUB = {"facecolor": "#efc597", "edgecolor": "#8a5a20", "lw": 1.2}
FLANGE = {"facecolor": "#f3f1ea", "edgecolor": "#77736a", "lw": 1.0, "ls": "--"}


def draw_layout(plan: Plan, path: Path, metadata: Mapping[str, str]) -> None:
    """Draw the section with the sizes that decide the length of the block."""
    figure, axis = plt.subplots(figsize=(12.4, 7.4), dpi=100)
    _block(axis, plan)
    _mating_parts(axis, plan)
    _sizes(axis, plan)
    axis.set_aspect("equal")
    axis.set_axis_off()
    axis.set_xlim(-52, plan.body.length + 52)
    axis.set_ylim(-34, plan.body.height + 17)
    figure.subplots_adjust(left=0, right=1, top=1, bottom=0)
    figure.savefig(path, metadata=dict(metadata))
    plt.close(figure)


def _box(axis: plt.Axes, x: tuple[float, float], z: tuple[float, float], style: Mapping[str, object]) -> None:
    axis.add_patch(Rectangle((x[0], z[0]), x[1] - x[0], z[1] - z[0], **style))


def _block(axis: plt.Axes, plan: Plan) -> None:
    """Draw the two end walls, cut by the plane of the shaft axis, above and below the bores."""
    height, length, axis_z = plan.body.height, plan.body.length, plan.number("shaft_height")
    for end, outside, into in (("bearing", 0.0, 1), ("motor", length, -1)):
        wall, depth = plan.number(f"{end}_wall"), plan.number(f"{end}_bore_depth")
        bore, opening = plan.number(f"{end}_bore") / 2, plan.number(f"{end}_through_bore") / 2
        steps = [(0.0, depth, bore)] + ([(depth, wall, opening)] if depth < wall else [])
        for side in (-1, 1):
            edge = height if side > 0 else 0.0
            outline = [(outside, edge), (outside + into * wall, edge)]
            for start, stop, radius in reversed(steps):
                outline += [(outside + into * stop, axis_z + side * radius)]
                outline += [(outside + into * start, axis_z + side * radius)]
            axis.add_patch(plt.Polygon(outline, **BLOCK))
    window = (plan.number("bearing_wall"), length - plan.number("motor_wall"))
    axis.plot(window, (0, 0), color="#333a40", lw=1.2)
    axis.plot(window, (height, height), color="#333a40", lw=1.2)
    axis.plot((-46, length + 46), (axis_z, axis_z), color="#555555", lw=0.8, dashes=(14, 4, 3, 4), zorder=6)


def _mating_parts(axis: plt.Axes, plan: Plan) -> None:
    length, axis_z = plan.body.length, plan.number("shaft_height")
    start, whole = plan.number("coupling_position"), plan.number("coupling.length")
    hub, radius = plan.number("coupling.hub_length"), plan.number("coupling.outer_diameter") / 2
    reach, shaft = plan.number("screw.journal_reach"), plan.number("motor.shaft_length")

    def round_part(x: tuple[float, float], diameter: float, style: Mapping[str, object]) -> None:
        _box(axis, x, (axis_z - diameter / 2, axis_z + diameter / 2), style)

    for x in ((start, start + hub), (start + whole - hub, start + whole)):
        round_part(x, 2 * radius, HUB)
    round_part((start + hub, start + whole - hub), 1.6 * radius, {**HUB, "facecolor": "#f7e2c9"})
    for x in (start + plan.number("coupling.clamp_position"), start + whole - plan.number("coupling.clamp_position")):
        axis.plot((x, x), (axis_z + radius - 9, axis_z + radius + 5), color="#8a5a20", lw=1.6, dashes=(5, 2, 1, 2))
    for end, outside, out in (("bearing", 0.0, -1), ("motor", length, 1)):
        flange, pilot = plan.number(f"{end}.flange_size"), plan.number(f"{end}.pilot_length")
        thick = out * plan.number(f"{end}.flange_thickness")
        round_part((outside, outside + thick), flange, FLANGE)
        inner = (outside, outside - out * pilot)
        round_part(inner, plan.number(f"{end}.pilot_diameter"), FLANGE)
        back = outside + thick + out * 26
        round_part((outside + thick, back), 0.86 * flange, FLANGE)
    nut = plan.number("bearing.nut_outer_diameter")
    round_part(
        (plan.number("bearing.pilot_length"), plan.number("bearing.nut_reach")), nut, {**SHAFT, "facecolor": "#b9c7d3"}
    )
    round_part((-46, reach), plan.number("screw.journal_diameter"), SHAFT)
    round_part((length - shaft, length + 8), plan.number("motor.shaft_diameter"), SHAFT)


def _sizes(axis: plt.Axes, plan: Plan) -> None:
    length, height, axis_z = plan.body.length, plan.body.height, plan.number("shaft_height")
    start, whole = plan.number("coupling_position"), plan.number("coupling.length")
    reach, shaft = plan.number("screw.journal_reach"), plan.number("motor.shaft_length")
    walls = (plan.number("bearing_wall"), length - plan.number("motor_wall"))
    _size(axis, (0, length), -27, f"length {length:g}", 0)
    _size(axis, (0, walls[0]), -14, f"bearing wall\n{walls[0]:g}", 0)
    _size(axis, walls, -14, f"window {plan.number('window_length'):g}", 0)
    _size(axis, (walls[1], length), -14, f"motor wall\n{length - walls[1]:g}", 0)
    _size(axis, (start, reach), 27, f"grip {plan.number('journal_grip'):g}", axis_z - 6)
    _size(axis, (reach, length - shaft), 27, f"gap {plan.number('shaft_gap'):g}", axis_z - 6)
    _size(axis, (length - shaft, start + whole), 27, f"grip {plan.number('motor_grip'):g}", axis_z - 6)
    _size(axis, (start, start + whole), 13, f"coupling {whole:g}", 27)
    _size(axis, (0, reach), height + 9, f"journal reach {reach:g}", height)
    _size(axis, (length - shaft, length), height + 9, f"motor shaft {shaft:g}", height)
    for text, x, z in (
        ("bearing unit", -25, axis_z + 20),
        ("lock nut", 8, axis_z + 17.5),
        ("screw", -36, axis_z),
        ("motor", length + 24, axis_z + 20),
        ("axes of the\nclamp screws", start + whole / 2, axis_z + 33),
    ):
        axis.text(x, z, text, ha="center", va="center", fontsize=13, zorder=9,
                  bbox={"fc": "white", "ec": "none", "alpha": 0.8, "pad": 1.5})  # fmt: skip


def _size(axis: plt.Axes, x: tuple[float, float], z: float, text: str, origin: float) -> None:
    """Draw one dimension with its extension lines from ``origin``."""
    for place in x:
        axis.plot((place, place), (origin, z + (1.5 if z > origin else -1.5)), color="#555555", lw=0.6, zorder=7)
    axis.annotate("", (x[0], z), (x[1], z), arrowprops={"arrowstyle": "<->", "lw": 0.9, "shrinkA": 0, "shrinkB": 0})
    axis.text((x[0] + x[1]) / 2, z + 1.0, text, ha="center", va="bottom", fontsize=12, zorder=9)
