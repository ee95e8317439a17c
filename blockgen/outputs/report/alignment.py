"""The section of the alignment: circles against the allowance, contributors as bars, what would better it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.alignment_rows import chance
from blockgen.outputs.report.alignment_picture import alignment_picture
from blockgen.outputs.report.bars import share_bar
from blockgen.outputs.report.markup import Child, Markup, element, joined
from blockgen.outputs.report.tables import content, facts, table
from blockgen.outputs.report.values import Document, figure, plain

_SPREADS = (
    ("offset", "Offset"), ("offset_static", "Offset that stands still"), ("offset_rotating", "Offset that turns"),
    ("angle", "Angle"), ("angle_static", "Angle that stands still"), ("angle_rotating", "Angle that turns"),
)  # fmt: skip
_COLUMNS = ("At the coupling", "Half below", "95 % below", "99.73 % below", "Worst", "Allowed", "Chance of more")
_STEPS = ("One step tighter", "95 % then", "Gain", "Cost", "How")
_ARRANGED = ("Arrangement", "95 % below", "Worst", "Chance of more", "Setups", "Fitted features", "To be held")


def alignment(document: Document) -> Markup:
    """Return the section."""
    found = document["alignment"]
    if "offset" not in found:
        return content(element("p", "Not worked out."))
    whose = f" With {document['family'][0]['motor']}." if "family" in document else ""
    lead = element(
        "p", "At the coupling's centre, x = ", plain(found["centre"], "mm", 2), f": {found['method']}.{whose}"
    )
    pictures = element("div", _picture(found, "offset", "mm"), _picture(found, "angle", "deg"), class_="pair")
    return content(
        lead, pictures, _spreads(found), _use(found),
        element("h3", "What offset and angle come from"), _shares(found),
        table("What one step tighter would buy", _STEPS, _decisions(found), right=_STEPS[1:3]),
        table(
            "This block beside a separate motor plate and a foot-mounted unit, cold and without load", _ARRANGED,
            _arranged(found), right=_ARRANGED[1:6],
        ),
    )  # fmt: skip


def _picture(found: Mapping[str, Any], which: str, unit: str) -> Markup:
    limit = found[which]["limit"]
    against = "no allowance is given" if limit is None else f"allowed {show.significant(limit)} {unit}"
    caption = f"Where the {which} of the motor shaft against the journal ends up, to scale; {against}."
    return element(
        "figure", alignment_picture(found[which], f"{which.capitalize()} of the shafts"), element("figcaption", caption)
    )


def _spreads(found: Mapping[str, Any]) -> Markup:
    rows = (_spread(title, found[key]) for key, title in _SPREADS)
    return table("Offset and angle of the shafts", _COLUMNS, rows, right=_COLUMNS[1:])


def _spread(title: str, of: Mapping[str, Any]) -> tuple[Child, ...]:
    levels = (figure(of[level], f"{of[level]:.4f}") for level in ("p50", "p95", "p9973", "worst"))
    limit = of["limit"]
    return (
        f"{title}, {of['unit']}",
        *levels,
        "-" if limit is None else figure(limit, f"{limit:.3g}"),
        chance(of["exceeding"]),
    )


def _use(found: Mapping[str, Any]) -> Markup:
    use, back, heat = found["coupling_use"], found["reaction"], found["heat"]
    pairs: list[tuple[str, Child]] = [
        ("Use of the coupling, likely", figure(use["likely"], show.significant(use["likely"], 3))),
        ("Use of the coupling, worst", figure(use["worst"], show.significant(use["worst"], 3))),
        ("Axial movement, worst", plain(found["axial"]["worst"], "mm")),
        ("Force of the coupling on the shafts", figure(back["force"], show.quantity(back["force"], "N"))),
        ("Moment on the journal", figure(back["journal_moment"], show.quantity(back["journal_moment"], "N*m"))),
        ("Moment on the motor shaft", figure(back["motor_moment"], show.quantity(back["motor_moment"], "N*m"))),
    ]
    if found["ball_life_ratio"] is not None:
        pairs.append(
            (
                "Life of the balls over that in line",
                figure(found["ball_life_ratio"], show.significant(found["ball_life_ratio"], 3)),
            )
        )
    if heat:
        pairs.append(
            ("Growth of the height by heat", figure(heat["height_error"], show.quantity(heat["height_error"], "mm")))
        )
    return facts(pairs)


def _shares(found: Mapping[str, Any]) -> Markup:
    """Return the contributors: share of the variance as a bar, and in words."""
    parts = (("Offset", found["shares"], "mm"), ("Angle", found["shares_angle"], "deg"))
    return element("div", *(_contributors(*part) for part in parts), class_="pair")


def _contributors(title: str, shares: list[dict[str, Any]], unit: str) -> Markup:
    items = joined(element("li", *_share(share, unit)) for share in shares)
    heading = element("h4", f"{title}: share of the variance")
    return element("div", heading, element("ol", items, class_="shares") if shares else element("p", "Nothing."))


def _share(share: dict[str, Any], unit: str) -> Iterator[Markup]:
    turns = " (turns)" if share["rotating"] else ""
    yield element("span", f"{show.plain_id(share['id'])}{turns}", class_="title")
    yield share_bar(share["of_variance"])
    yield element("span", figure(share["of_variance"], f"{100 * share['of_variance']:.1f} %"), class_="margin")
    greatest = figure(share["greatest"], f"{show.significant(share['greatest'], 3)} {unit}")
    yield element("small", "at most ", greatest, f", {100 * share['of_worst']:.1f} % of the worst case")


def _decisions(found: Mapping[str, Any]) -> Iterator[tuple[Child, ...]]:
    for row in found["decisions"]:
        causes = ", ".join(show.plain_id(cause) for cause in row["causes"])
        yield (
            causes,
            figure(row["p95"], f"{row['p95']:.4f} mm"),
            figure(row["gain"], f"{row['gain']:.4f} mm"),
            row["cost"],
            row["reason"],
        )


def _arranged(found: Mapping[str, Any]) -> Iterator[tuple[Child, ...]]:
    for row in found.get("arrangements", ()):
        held = "; ".join(f"{one['what']} {one['value']}" for one in row["held"])
        yield (
            f"{row['title']} ({row['remark']})", figure(row["p95"], f"{row['p95']:.3f} mm"),
            figure(row["worst"], f"{row['worst']:.3f} mm"), chance(row["exceeding"]), str(row["setups"]),
            str(row["fitted_features"]), held,
        )  # fmt: skip
