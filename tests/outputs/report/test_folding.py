"""What is folded on the screen, and what is printed unfolded."""

from blockgen.outputs.report.values import AT_A_GLANCE


def folds_about(shown, identity):
    """Return the classes of all that folds an element away."""
    found, of = [], shown.by_id[identity]
    while of in shown.parents:
        of = shown.parents[of]
        if of.tag.endswith("}details"):
            found.append(set((of.get("class") or "").split()))
    return found


def test_checks_that_hold_are_folded_away_together_and_no_others(contents, shown):
    for check in contents.document["checks"]:
        folds = folds_about(shown, f"check-{check['id']}")
        assert folds == ([{"passed", "paper"}] if check["verdict"] == "pass" else []), check["id"]


def test_the_formula_of_a_check_is_printed_unless_it_holds(contents, shown):
    for check in contents.document["checks"]:
        (fold,) = [of for of in shown.by_id[f"check-{check['id']}"] if of.tag.endswith("}details")]
        assert ("paper" in (fold.get("class") or "")) == (check["verdict"] != "pass"), check["id"]


def test_only_derivations_of_the_sizes_at_a_glance_are_printed(contents, shown):
    printed = {k for k in contents.document["dimensions"] if {"paper"} in folds_about(shown, f"dimension-{k}")}
    assert printed == set(AT_A_GLANCE)
    assert {"group", "paper"} in folds_about(shown, "value-base.friction")
    assert set() in folds_about(shown, "value-base.friction")
