"""The document of ``blockgen inspect --json``."""

import json
from math import degrees

import pytest

from blockgen.evidence.verdict import verdict
from blockgen.outputs.inspect_json import inspect_document
from tests.evidence.samples import good, made, measured, rows_of, vectors


def document(values):
    of = made()
    found = verdict(of.plan, measured(values))
    return found, inspect_document(found, "m.csv", of.spec_sha256, of.status)


def test_it_is_json_and_says_what_the_verdict_says():
    found, told = document(good())
    assert json.loads(json.dumps(told, allow_nan=False)) == told
    assert (told["schema"], told["verdict"], told["file"]) == (1, "accept", "m.csv")
    assert told["spec_sha256"] == made().spec_sha256
    assert told["alignment"]["offset"]["p95"] == found.as_built.offset.p95
    assert told["alignment"]["angle"]["p95"] == pytest.approx(degrees(found.as_built.angle.p95))
    assert told["alignment"]["angle"]["limit"] == pytest.approx(1)
    assert [row["id"] for row in told["characteristics"]] == list(rows_of())


def test_turns_and_shim():
    _, told = document(vectors())
    assert told["clocking"]["best"] == 0
    assert [turn["degrees"] for turn in told["clocking"]["turns"]] == pytest.approx([0, 90, 180, 270])
    assert told["shim"] is None
    _, told = document(good())
    assert (told["clocking"]["turns"], told["clocking"]["best"]) == ([], None)
    assert told["shim"]["bearing_end"] == 0
