"""The derivation of a value, a check or a feature as a tree to print; what has been shown once is not shown again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from blockgen.checks.finding import Finding
from blockgen.console.page import Branch
from blockgen.outputs import show
from blockgen.outputs.summary_json import source
from blockgen.plan import Feature, Plan
from blockgen.record import Input, Record


@dataclass(slots=True)
class Tree:
    """Trees of one page.

    Args:
        plan: What was decided.
        shown: Keys of the records and sources that stand on the page already.
    """

    plan: Plan
    shown: set[str] = field(default_factory=set)

    def record(self, record: Record) -> Branch:
        """Return a value with its rule, source and inputs."""
        label = show.joined((f"{record.key} = {show.amount(record)}", show.limits(record)), "  ")
        label += f"  [{record.origin}]"
        if record.key in self.shown:
            return Branch(f"{label}  (see above)")
        self.shown.add(record.key)
        lines = _lines(
            {
                "rule": "" if record.origin == "given" or _is_from_preset(record) else record.rule,
                "numbers": show.substitution(record),
                "source": self._source(record),
            }
        )
        return Branch(label, lines, self._inputs(record.inputs))

    def check(self, finding: Finding) -> Branch:
        """Return a check with value, limit, margin, what it says, and its inputs."""
        lines = _lines(
            {
                "value": show.quantity(finding.value, finding.unit),
                "limit": show.quantity(finding.limit, finding.unit),
                "margin": show.margin(finding.margin),
                "says": finding.explanation,
                "source": finding.source,
            }
        )
        label = f"{finding.id}: {finding.title}  [{show.verdict(finding.verdict)}]"
        return Branch(label, lines, self._inputs(finding.inputs))

    def feature(self, feature: Feature) -> Branch:
        """Return a feature with its call-out, and the derivation of each of its sizes."""
        mouth = ", ".join(show.number(c, 3) for c in feature.position)
        size = show.deviations(feature.fit, feature.upper, feature.lower)
        lines = _lines(
            {
                "call-out": feature.call_out,
                "mouth": f"x, y, z = {mouth} mm on {feature.face}",
                "size": show.joined((f"diameter {show.number(feature.diameter)} mm", size), " "),
                "depth": "through" if feature.through else f"{show.number(feature.depth)} mm",
                "group": feature.group,
            }
        )
        keys = {name: key for name, key in feature.keys.items() if key in self.plan.records}
        below = tuple(self._named(name, self.plan.records[key]) for name, key in keys.items())
        return Branch(f"{feature.id}: {show.plain_id(feature.kind)}", lines, below)

    def _named(self, name: str, record: Record) -> Branch:
        branch = self.record(record)
        return replace(branch, label=f"{show.plain_id(name)}: {branch.label}")

    def _inputs(self, inputs: Mapping[str, Input]) -> tuple[Branch, ...]:
        return tuple(self._input(name, of) for name, of in inputs.items())

    def _input(self, name: str, of: Input) -> Branch:
        if of.ref is not None and of.ref in self.plan.records:
            return self.record(self.plan.records[of.ref])
        return Branch(f"{name} = {show.with_unit(of.value, of.unit)}  [{of.origin}]")

    def _source(self, record: Record) -> str:
        """Return the source; of a preset that was told before only its name."""
        text = source(record) + (f", line {record.line}" if record.line is not None else "")
        if not _is_from_preset(record):
            return text
        if text in self.shown:
            return f"{text.partition(':')[0]} (see above)"
        self.shown.add(text)
        return text


def _is_from_preset(record: Record) -> bool:
    """Tell whether a value was taken from a preset, whose source says so too."""
    return record.rule.startswith("taken from preset ")


def _lines(about: Mapping[str, str]) -> tuple[str, ...]:
    return tuple(f"{name + ':':9} {text}" for name, text in about.items() if text)
