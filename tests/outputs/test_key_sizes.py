from dataclasses import replace

from blockgen.outputs.key_sizes import axial_facts, axial_line, key_sizes, worst_first


def test_sizes_are_told_with_limits(plan):
    sizes = dict(key_sizes(plan, 1e6))
    assert sizes["Block, length x width x height"] == "86 x 120 x 100 mm"
    assert sizes["Mass"] == "2.7 kg (EN AW-6082-T6, 2700 kg/m3)"
    assert sizes["Bearing bore / motor bore"] == "50 mm H7 +0.025/0 / 70 mm H7 +0.03/0"
    assert sizes["Screws, base"] == "4 x M10 x 50 - 8.8 (ISO 4762)"


def test_the_axial_line_names_interval_and_choice(plan):
    assert axial_line(plan) == (
        "Seat to seat 80 to 92 mm is possible, - to - mm after tolerances; chosen 86 mm \u00b10.1."
    )


def test_axial_facts_are_those_that_were_decided(plan):
    assert [record.key for _, record in axial_facts(plan)] == ["length_min", "length_max", "length"]
    assert list(axial_facts(replace(plan, records={}))) == []


def test_the_worst_comes_first(findings):
    assert [f.id for f in worst_first(findings)] == ["bad", "near", "open", "good"]
