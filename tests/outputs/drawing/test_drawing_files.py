"""The files of a whole drawing, read back by other libraries: dimensions, true size, pages, words."""

import hashlib
import io
import math
import os
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from blockgen.geometry.curves import ArcCurve
from blockgen.outputs.drawing.crowded import LEAST_SPACE
from blockgen.outputs.drawing.paper import TRIMMED
from blockgen.outputs.drawing.to_dxf import dxf_bytes
from blockgen.outputs.drawing.to_pdf import pdf_bytes
from blockgen.outputs.drawing.to_svg import svg_text
from tests.geometry.plane import along, distance
from tests.outputs.drawing.made import CASES, NAMES, made
from tests.outputs.drawing.test_drawing import views

pytestmark = pytest.mark.slow

CASE = pytest.mark.parametrize(("name", "projection"), CASES)
MM = 72 / 25.4


@cache
def model(name, projection="first"):
    """Return the entities of the model space by the id that stands with them."""
    import ezdxf

    found = {}
    text = dxf_bytes(made(name, projection)[2].drawing, "x").decode()
    for entity in ezdxf.read(io.StringIO(text)).modelspace():
        identifier = entity.get_xdata("BLOCKGEN")[0].value if entity.has_xdata("BLOCKGEN") else ""
        found.setdefault(identifier, []).append(entity)
    return found


@CASE
def test_measured_values_of_the_dimensions_are_those_of_the_plan(name, projection):
    plan, entities = made(name, projection)[0], model(name, projection)
    read = {i: e for i, (e, *_) in entities.items() if e.dxftype() == "DIMENSION"}
    wanted = {n.id for n in plan.annotations if n.kind in {"distance", "radius"}}
    wanted |= {"bearing_bore.diameter", "motor_bore.diameter"}
    wanted |= {n.id for n in plan.annotations if n.id.endswith("_bore.through_diameter")}
    assert set(read) == wanted
    values = {n.id: n.value for n in plan.annotations}
    for identifier, entity in read.items():
        assert entity.get_measurement() == pytest.approx(values[identifier], abs=1e-6), identifier
        assert entity.dxf.actual_measurement == pytest.approx(values[identifier], abs=1e-6), identifier


@CASE
def test_lines_of_the_views_are_the_curves_of_the_projection_in_true_size(name, projection):
    plan, taken, found = made(name, projection)
    entities = model(name, projection)
    space = LEAST_SPACE / found.drawing.scale
    for view in views(found.drawing):
        shown = taken.section.projection if view.name == "section" else taken.views[view.name]
        curves = [c for c in (*shown.visible, *shown.hidden, *shown.smooth) if c]
        corner = (view.corner[0] / view.scale, view.corner[1] / view.scale)
        shift = (corner[0] - view.low[0], corner[1] - view.low[1])
        drawn = entities[f"view.{view.name}"]
        for entity in drawn:
            for x, y in points(entity):
                assert min(distance(c, (x - shift[0], y - shift[1])) for c in curves) < 1e-5, view.name
        radii = {round(e.dxf.radius, 6) for e in drawn if e.dxftype() in {"CIRCLE", "ARC"}}
        assert radii <= {round(c.radius, 6) for c in curves if isinstance(c, ArcCurve)}
        # what is left out lies beside a line that is drawn: see crowded.py; threads have their chamfer left out
        far = [p for c in shown.visible for p in along(c) if nearest(p, drawn, shift) > max(space, widest(plan))]
        assert far == []


def widest(plan):
    """Return how far the chamfer of a thread reaches beyond its drill, mm."""
    return max((f.profile[0].start_radius - f.profile[0].end_radius for f in plan.features if f.thread), default=0.0)


def points(entity):
    if entity.dxftype() == "LINE":
        (x, y, _), (u, v, _) = entity.dxf.start, entity.dxf.end
        return [(x + s * (u - x), y + s * (v - y)) for s in (0.0, 0.31, 0.5, 1.0)]
    whole = entity.dxftype() == "CIRCLE"
    start, end = (0.0, 360.0) if whole else (entity.dxf.start_angle, entity.dxf.end_angle)
    end += 360.0 if end < start else 0.0
    angles = [math.radians(start + s * (end - start)) for s in (0.0, 0.31, 0.5, 1.0)]
    x, y, _ = entity.dxf.center
    return [(x + entity.dxf.radius * math.cos(a), y + entity.dxf.radius * math.sin(a)) for a in angles]


def nearest(point, drawn, shift):
    x, y = point[0] + shift[0], point[1] + shift[1]
    return min(from_entity((x, y), entity) for entity in drawn)


def from_entity(point, entity):
    if entity.dxftype() == "LINE":
        (x, y, _), (u, v, _) = entity.dxf.start, entity.dxf.end
        length = (u - x) ** 2 + (v - y) ** 2
        share = max(0.0, min(1.0, ((point[0] - x) * (u - x) + (point[1] - y) * (v - y)) / length))
        return math.dist(point, (x + share * (u - x), y + share * (v - y)))
    centre = (entity.dxf.center.x, entity.dxf.center.y)
    if entity.dxftype() == "ARC":
        angle = math.degrees(math.atan2(point[1] - centre[1], point[0] - centre[0]))
        if (angle - entity.dxf.start_angle) % 360 > (entity.dxf.end_angle - entity.dxf.start_angle) % 360:
            return min(math.dist(point, (p.x, p.y)) for p in (entity.start_point, entity.end_point))
    return abs(math.dist(point, centre) - entity.dxf.radius)


@pytest.mark.parametrize("name", NAMES)
def test_pdf_has_a_page_for_each_sheet_in_its_exact_size_and_no_picture(name):
    import pypdf

    found = made(name)[2]
    reader = pypdf.PdfReader(io.BytesIO(pdf_bytes(found.sheets, "t", "a", "s")))
    assert len(reader.pages) == len(found.sheets)
    for page, sheet in zip(reader.pages, found.sheets, strict=True):
        size = (float(page.mediabox.width) / MM, float(page.mediabox.height) / MM)
        assert sorted(size) == pytest.approx(sorted(TRIMMED[sheet.size]), abs=1e-3)
        resources = page["/Resources"]
        assert "/XObject" not in resources or not resources["/XObject"]
        embedded = [f.get_object() for f in resources["/Font"].values() if f.get_object()["/Subtype"] != "/Type1"]
        assert embedded
        assert all("/FontFile2" in font["/FontDescriptor"] for font in embedded)


@pytest.mark.parametrize(("name", "bore"), [("servo", "⌀70 H7"), ("large", "⌀110 H7"), ("stepper", "⌀38.1 H7")])
def test_words_of_the_pdf_can_be_found(name, bore):
    import pypdf

    _, _, found = made(name)
    status = found.words.titles.status
    pages = [
        " ".join(page.extract_text().split())
        for page in pypdf.PdfReader(io.BytesIO(pdf_bytes(found.sheets, "t", "a", "s"))).pages
    ]
    assert bore in pages[0]
    assert all(status in page for page in pages)


def fingerprints(name):
    """Return the sha256 of PDF, DXF and SVG."""
    found = made(name)[2]
    files = (
        pdf_bytes(found.sheets, "t", "a", "s"),
        dxf_bytes(found.drawing, "s"),
        svg_text(found.drawing).encode(),
    )
    return [hashlib.sha256(data).hexdigest() for data in files]


def test_bytes_are_the_same_in_fresh_processes_with_other_hash_seeds():
    code = "from tests.outputs.drawing.test_drawing_files import fingerprints; print(fingerprints('servo'))"
    root = Path(__file__).resolve().parents[3]
    printed = set()
    for seed in ("1", "4242"):
        environment = {**os.environ, "PYTHONHASHSEED": seed, "TZ": f"UTC{seed[0]}"}
        run = subprocess.run([sys.executable, "-c", code], cwd=root, env=environment, capture_output=True, text=True,
                             check=True, timeout=120)  # fmt: skip
        printed.add(run.stdout.strip())
    assert printed == {str(fingerprints("servo"))}
