"""Tests of the scene: what is packed reads back, and the same input gives the same data."""

from __future__ import annotations

import json

import numpy as np
import pytest

from blockgen.evidence.stiffness.field import Field
from blockgen.geometry.interference import placed as standing
from blockgen.outputs.report import scene as module
from blockgen.outputs.report.scene import scene
from tests.geometry.assemblies import assembly
from tests.outputs.report import scene_reader as reader

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def made():
    return assembly()


@pytest.fixture(scope="module")
def shown(made):
    return scene(made.plan, made.block, made.parts)


def test_every_part_stands_where_its_solid_stands(made, shown):
    solids = standing(made.parts)
    assert [part["id"] for part in shown["parts"]] == [part.id for part in made.parts]
    for part in shown["parts"]:
        corners = reader.placed(shown["meshes"][part["mesh"]]["points"], part)
        box = np.concatenate([corners.min(axis=0), corners.max(axis=0)])
        assert box == pytest.approx(part["box"], abs=0.005)
        assert box == pytest.approx(solids[part["id"]].box, abs=0.4), part["id"]  # rounds are cut by their chords


def test_alike_parts_share_one_mesh(shown):
    meshes = {}
    for part in shown["parts"]:
        meshes.setdefault(part["name"], set()).add(part["mesh"])
    assert all(len(numbers) == 1 for numbers in meshes.values())
    assert len(shown["meshes"]) == len(meshes)


def test_triangles_and_edges_name_corners_that_exist(shown):
    for mesh in shown["meshes"]:
        count = len(reader.points(mesh["points"]))
        triangles, edges = reader.integers(mesh["triangles"], 3), reader.integers(mesh["edges"], 2)
        assert triangles.max() < count
        assert edges.max() < count
        assert len(reader.faces(mesh["runs"])) == len(triangles)


def test_triangles_of_a_face_of_the_block_lie_on_that_face(made, shown):
    mesh = shown["meshes"][shown["parts"][0]["mesh"]]
    corners, triangles = reader.points(mesh["points"]), reader.integers(mesh["triangles"], 3)
    numbers = reader.faces(mesh["runs"])
    ids = [face["id"] for face in shown["faces"]]
    for face_id, x in (("bearing_seat", 0.0), ("motor_seat", made.plan.body.length)):
        on_face = corners[triangles[numbers == ids.index(face_id)]]
        assert on_face[..., 0] == pytest.approx(x, abs=0.005)


def test_each_face_names_its_feature_and_keys_that_the_plan_has(made, shown):
    features = {feature.id for feature in made.plan.features}
    told = {face["feature"] for face in shown["faces"]}
    assert told - {None} == features
    for face in shown["faces"]:
        assert face["title"]
        assert set(face["keys"]) <= set(made.plan.records)
    bore = next(face for face in shown["faces"] if face["id"] == "motor_bore.bore")
    assert (bore["feature"], bore["keys"][0], bore["title"]) == ("motor_bore", "motor_bore", "motor bore")


def test_a_field_is_packed_with_its_words(made):
    points = np.array([(0.0, 0.0, 0.0), (10.0, 0.0, 0.0), (0.0, 5.0, 2.0)])
    bent = np.array([(0.0, 0.0, 0.001), (0.0, 0.0, 0.002), (0.0, 0.0, 0.0)])
    places, ways = (tuple(map(tuple, numbers.tolist())) for numbers in (points, bent))
    field = Field(
        "thrust", "tied under the heads", "free", places, ((0, 1, 2),), ((0, 1), (1, 2)), ways, (1.0, 2.5, 0.0), 2.0
    )
    packed = scene(made.plan, made.block, made.parts[:1], field)["field"]
    assert reader.points(packed["points"]) == pytest.approx(points, abs=1e-3)
    assert reader.reals(packed["displacement"]).reshape(-1, 3) == pytest.approx(bent)
    assert reader.reals(packed["stress"]).tolist() == [1.0, 2.5, 0.0]
    assert reader.integers(packed["edges"], 2).tolist() == [[0, 1], [1, 2]]
    assert packed["greatest"] == 2.0
    assert packed["words"] == "thrust; tied under the heads; flanges free"


def test_a_part_of_too_many_triangles_is_meshed_more_coarsely(made, shown, monkeypatch):
    monkeypatch.setattr(module, "MOST", 1000)
    coarse = scene(made.plan, made.block, made.parts)
    one, other = ([len(reader.integers(mesh["triangles"], 3)) for mesh in s["meshes"]] for s in (shown, coarse))
    assert max(other) < max(one)
    assert [b == a for a, b in zip(one, other, strict=True)] == [count <= 1000 for count in one]


def test_it_is_plain_data_of_moderate_size(shown):
    text = json.dumps(shown, allow_nan=False)
    assert json.loads(text) == shown
    assert len(text) < 600_000
