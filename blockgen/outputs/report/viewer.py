"""The 3D view as part of a page: its markup, style and script, with the library and the data inside."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from importlib.resources import files
from typing import Any

from blockgen.outputs.report.markup import Markup, element, joined

SCRIPTS = ("meshes.js", "camera.js", "section.js", "facts.js", "viewer.js", "field.js", "controls.js")
"""Our own scripts, in the order in which they are put together."""

LOOKS = (
    ("angle", "At an angle"), ("front", "From the front"), ("back", "From behind"), ("above", "From above"),
    ("below", "From below"), ("motor", "From the motor"), ("bearing", "From the screw"),
)  # fmt: skip

AXES = (
    ("", "no cut"), ("x", "across the shaft (x)"), ("y", "upright along the shaft (y)"),
    ("z", "level along the shaft (z)"),
)  # fmt: skip

HELP = (
    "Drag to turn; drag with Shift or two fingers to move. To zoom, spread two fingers, or click the picture and "
    "use the wheel. Keys: arrows turn, Shift and arrows move, + and - zoom, 0 starts again, Enter chooses what is in "
    "the middle. Click or tap a face to see its feature, its limits and how they came about."
)

WITHOUT_SCRIPT = "The 3D view needs JavaScript. Without it the picture stands still."


@dataclass(frozen=True, slots=True)
class Viewer:
    """The parts of a page that make the view.

    Args:
        markup: The figure and its data, well-formed as HTML and as XML. It stands once in a page; the page's own
            ``<script type="application/json" id="summary-data">`` holds the summary.
        style: CSS; it takes the page's custom properties ``--paper``, ``--raised``, ``--ink``, ``--quiet``, ``--rule``
            and ``--link`` where there are such.
        script: A classic script that stands after the markup. It holds neither the end of a script element nor that
            of a CDATA section.
    """

    markup: Markup
    style: str
    script: str


def viewer(scene: Mapping[str, Any]) -> Viewer:
    """Return the view of a scene.

    Args:
        scene: What ``blockgen.outputs.report.scene.scene`` returns.
    """
    figure = element("figure", *_figure(scene), class_="view", aria_label="3D view of block and parts")
    return Viewer(joined((figure, _data(scene))), _asset("view/viewer.css"), _script())


def _script() -> str:
    own = "\n".join(_asset(f"view/{name}") for name in SCRIPTS)
    return f'{_asset("three.js")}\n(function () {{\n"use strict";\n{own}}})();\n'


def _asset(name: str) -> str:
    return files("blockgen.outputs.report").joinpath("assets", name).read_text(encoding="utf-8")


def _data(scene: Mapping[str, Any]) -> Markup:
    """Return the scene for the script; no sign in it can end the element, in HTML or in XML."""
    plain = json.dumps(scene, ensure_ascii=True, allow_nan=False, separators=(",", ":"))
    safe = plain.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")
    return element("script", Markup(safe), type="application/json", id="scene-data")


def _figure(scene: Mapping[str, Any]) -> Iterator[Markup]:
    yield element("div", *_picture(scene), class_="view-picture")
    yield element("figcaption", HELP, id="view-help")
    chosen = element("p", "Nothing is chosen. Click or tap a face, or take a feature from the list.")
    yield element(
        "div", chosen, class_="view-facts", role="region", aria_live="polite", aria_label="What is chosen", tabindex="0"
    )
    yield element("div", element("form", *_controls(scene), class_="view-form"), class_="view-controls", hidden=True)


def _picture(scene: Mapping[str, Any]) -> Iterator[Markup]:
    still = scene.get("still")
    if still is not None:
        yield element("img", src=still, alt="The block with the parts about it, from the front and above")
    yield element(
        "canvas", tabindex="0", role="application", aria_label="3D view, turned by the arrow keys",
        aria_describedby="view-help",
    )  # fmt: skip
    yield element("span", class_="view-middle")
    yield element("p", "", class_="view-message", role="status", hidden=True)
    yield element("noscript", element("p", WITHOUT_SCRIPT, class_="view-message"))


def _controls(scene: Mapping[str, Any]) -> Iterator[Markup]:
    yield _set("Look", element("div", *_buttons(), class_="view-buttons"), class_="view-wide")
    yield _set("Feature of the block", _features())
    yield _set("Cut", *_cut())
    yield _set("Draw apart", _line(_range("view-apart", "How far", 0, 100, 0), _output("view-apart-shown", "0 %")))
    if scene["field"] is not None:
        yield _set("Under load", *_load(scene["field"]), class_="view-load")
    yield _set("Parts shown", element("div", *_parts(scene), class_="view-parts"), class_="view-wide")


def _set(legend: str, *children: Markup, class_: str | None = None) -> Markup:
    return element("fieldset", element("legend", legend), *children, class_=class_)


def _line(*children: Markup) -> Markup:
    return element("div", *children, class_="view-line")


def _buttons() -> Iterator[Markup]:
    for name, shown in LOOKS:
        yield element("button", shown, type="button", data_look=name)
    yield element("button", "Nearer", type="button", data_zoom="in")
    yield element("button", "Farther", type="button", data_zoom="out")
    yield element("button", "Start again", type="reset")


def _features() -> Markup:
    nothing = element("option", "nothing chosen", value="")
    return element("select", nothing, class_="view-features", aria_label="Feature of the block")


def _cut() -> Iterator[Markup]:
    options = (element("option", shown, value=axis) for axis, shown in AXES)
    yield _line(element("select", *options, class_="view-axis", aria_label="Plane of the cut"))
    yield _line(
        _range("view-place", "Place of the cut, mm", -500, 500, 0, disabled=True), _output("view-place-shown", "")
    )
    yield _box("view-other", "take the other side away", disabled=True)


def _load(field: Mapping[str, Any]) -> Iterator[Markup]:
    yield _box("view-loaded", "show the block as it bends")
    yield element("p", f"{field['words']}. Faint lines: without load.")
    yield _line(_range("view-magnify", "Bending magnified", 0, 100, 50, disabled=True), _output("view-magnified", ""))
    ends = (element("span", "0"), element("span"), element("span", class_="view-scale-end"))
    yield element("p", *ends, class_="view-scale", hidden=True)


def _parts(scene: Mapping[str, Any]) -> Iterator[Markup]:
    labels = [part["label"] for part in scene["parts"]]
    for label, part in {part["label"]: part for part in scene["parts"]}.items():
        many = labels.count(label)
        shown = f"{label} ({many})" if many > 1 else label
        box = element("input", type="checkbox", value=label, checked=True)
        yield element("label", box, element("span", class_="view-swatch", style=f"background:{part['colour']}"), shown)


def _box(class_: str, shown: str, *, disabled: bool = False) -> Markup:
    box = element("input", type="checkbox", class_=class_, disabled=disabled)
    return _line(element("label", box, shown, class_="view-box"))


def _range(class_: str, label: str, low: int, high: int, value: int, *, disabled: bool = False) -> Markup:
    return element(
        "input", type="range", class_=class_, aria_label=label, min=str(low), max=str(high), value=str(value),
        disabled=disabled,
    )  # fmt: skip


def _output(class_: str, shown: str) -> Markup:
    return element("output", shown, class_=class_)
