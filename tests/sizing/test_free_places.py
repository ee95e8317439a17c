"""Places for upright holes keep the same walls as the ligament map asks for."""

from functools import partial

from blockgen.mechanics.ligaments import ligament_map
from blockgen.sizing.cavities import Place, TapSize, tapped_hole
from blockgen.sizing.free_places import first_free, rule_of, stands_clear, surroundings
from tests.sizing.strategies import ledger, sized

TAP = TapSize("M8-6H", 8.0, 6.8, 18.0, 24.0, 2.0)


def thread_at(height, spot):
    return tapped_hole(Place("extra_1", "extras", "top", (*spot, height), (0.0, 0.0, -1.0)), TAP)


def test_what_stands_clear_is_clear_on_the_map_too():
    plan, start = sized(), ledger()
    make = partial(thread_at, plan.body.height)
    others = surroundings(plan.features)
    count = 0
    for x in range(4, int(plan.body.length) - 3):
        for y in range(25, int(plan.body.width / 2) - 3):
            hole = make((float(x), float(y)))
            if stands_clear(start, hole, others, plan.body):
                count += 1
                walls = ligament_map([*plan.features, hole], plan.body, rule_of(start))
                short = [w for w in walls if "extra_1" in {w.first, w.second} and w.wall < w.required - 1e-6]
                assert not short, (x, y, short)
    assert count > 0


def test_nothing_is_free_inside_the_window():
    plan, start = sized(), ledger()
    spots = [(plan.body.length / 2, 0.0), (plan.body.length / 2, 5.0)]
    make = partial(thread_at, plan.body.height)
    assert first_free(start, spots, make, surroundings(plan.features), plan.body) is None
