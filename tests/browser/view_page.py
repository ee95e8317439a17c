"""A small page about the 3D view of the demo, with what the report gives it: summary, anchors, colours."""

from __future__ import annotations

from functools import cache
from types import SimpleNamespace

import numpy as np

from blockgen.evidence.stiffness.field import Field
from blockgen.outputs.report.markup import Markup, anchor, element
from blockgen.outputs.report.page import embedded, script
from blockgen.outputs.report.scene import scene
from blockgen.outputs.report.viewer import viewer
from blockgen.outputs.summary_json import summary
from blockgen.pipeline import design
from tests.examples import SERVO

COLOURS = """
:root { color-scheme: light dark; --paper: #fcfcfa; --raised: #f1f2ee; --ink: #1c2321; --quiet: #4f5a56;
  --rule: #c3c9c4; --link: #14507d; }
@media (prefers-color-scheme: dark) { :root { --paper: #15191a; --raised: #1f2526; --ink: #e7ebe8; --quiet: #adb8b3;
  --rule: #465052; --link: #8fc2ee; } }
body { margin: 0 auto; max-width: 76rem; padding: 1rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 sans-serif; }
figcaption { color: var(--quiet); } a { color: var(--link); }
"""


@cache
def demo():
    """Return design, solid and parts of the demo."""
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    made = design(SERVO)
    block = build_block(made.plan)
    return SimpleNamespace(design=made, plan=made.plan, block=block, parts=parts(made.plan, block))


def bent(block):
    """Return an invented field: the block leans in x as it rises, with stress that grows towards the base."""
    from blockgen.geometry.facets import facets

    made = facets(block.shape)
    high = made.points[:, 2]
    lean = np.stack([1e-7 * high**2, 0 * high, 0 * high], axis=1)
    parts = (made.points, made.triangles, made.edges, lean)
    places, corners, edges, ways = (tuple(map(tuple, of.tolist())) for of in parts)
    stress = tuple((50 - 0.3 * high).tolist())
    words = ("thrust towards the motor", "tied under the screw heads", "free")
    return Field(*words, places, corners, edges, ways, stress, 40.0)


@cache
def html(*, field=False):
    """Return the page."""
    made = demo()
    document = summary(made.plan, made.design.findings, made.design.status, made.design.spec_sha256)
    view = viewer(scene(made.plan, made.block, made.parts, bent(made.block) if field else None))
    rows = [element("p", key, id=anchor("dimension", key)) for key in document["dimensions"]]
    rows += [element("p", feature["id"], id=anchor("feature", feature["id"])) for feature in document["features"]]
    head = element(
        "head", element("meta", charset="utf-8"), element("title", "view"),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("style", Markup(COLOURS + view.style)),
    )  # fmt: skip
    main = element("main", element("h1", "GL-040-11"), element("section", element("h2", "View"), view.markup), *rows)
    body = element("body", main, embedded(document), script(view.script))
    return f"<!DOCTYPE html>\n{element('html', head, body, xmlns='http://www.w3.org/1999/xhtml', lang='en')}"
