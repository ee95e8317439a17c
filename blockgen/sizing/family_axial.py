"""One length for several motors: an axial layout for each of them, with length and walls in common."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from blockgen.errors import Conflict, Cure, InfeasibleError
from blockgen.sizing.axial import EPSILON, Bound, Cycle, Layout, slope
from blockgen.sizing.cures import describe
from blockgen.sizing.family import FIRST, named, renamed
from blockgen.sizing.layout import AxialTask, require_feasible
from blockgen.sizing.rounding import up

_SHAFT = "motor.shaft_length"
_SMOOTH = "motor.shaft_smooth_length"
_RANK = 5  # as a shaft of another length has it for a single motor


class ApartError(InfeasibleError):
    """Each motor has a length on these walls; they have none in common."""


@dataclass(frozen=True, slots=True)
class Motor:
    """One motor of a family: its table, its name in words, and the thinnest wall in mm that it alone would do with."""

    entry: str
    title: str
    floor: float


@dataclass(frozen=True, slots=True)
class SharedTask(AxialTask):
    """The layout of the first motor, which also asks what the other motors need of the same block.

    Args:
        others: The layouts of the further motors by their tables.
        motors: All motors, the first one first.
    """

    others: tuple[tuple[str, AxialTask], ...] = ()
    motors: tuple[Motor, ...] = ()

    def with_walls(self, bearing: float, motor: float) -> AxialTask:
        """Return the same task with other walls, mm."""
        walls = {"bearing_wall": bearing, "motor_wall": motor}
        others = tuple((entry, task.with_walls(bearing, motor)) for entry, task in self.others)
        return replace(self, facts={**self.facts, **walls}, others=others)

    def nominal(self) -> Layout:
        """Solve with nominal values."""
        return common([(FIRST, AxialTask.nominal(self)), *((e, task.nominal()) for e, task in self.others)])

    def toleranced(self) -> Layout:
        """Solve with every bound tightened by the tolerances of its own terms."""
        return common([(FIRST, AxialTask.toleranced(self)), *((e, task.toleranced()) for e, task in self.others)])

    def shortfall(self) -> str:
        """Return in words what is missing in the worst case of the tolerances."""
        for entry, task in self.each():
            if not task.workable():
                return renamed(AxialTask.shortfall(task), entry)
        tight = self.toleranced()
        what = f"{_words(tight.low_bounds)} against {_words(tight.high_bounds)}"
        missing = tight.low - tight.high
        return f"no length is feasible in the worst case of the tolerances, {missing:.2f} mm missing: {what}"

    def each(self) -> Iterator[tuple[str, AxialTask]]:
        """Yield the layout of each motor alone."""
        yield FIRST, AxialTask(self.bounds, self.facts, self.tolerances, self.floors)
        yield from self.others

    def require(self, given_length: float | None, floors: Mapping[str, float]) -> Layout:
        """Return the nominal layout that all motors have in common.

        Raises:
            InfeasibleError: a motor has none alone, or two have none in common, or not the given length.
        """
        for entry, task in self.each():
            try:
                require_feasible(task, given_length, floors)
            except InfeasibleError as error:
                raise named(error, entry, self._with_wall(entry)) from error
        layout = self.nominal()
        if not layout.feasible:
            raise self._apart()
        return layout

    def _title(self, entry: str) -> str:
        return next((motor.title for motor in self.motors if motor.entry == entry), entry)

    def _with_wall(self, entry: str) -> str:
        """Return a motor in words, with the wall that another one asks for where it alone would do with a thinner."""
        thick = max(self.motors, key=lambda motor: motor.floor)
        own = next(motor for motor in self.motors if motor.entry == entry)
        if own.floor < thick.floor - EPSILON:
            return f"{own.title} with the {thick.floor:g} mm of motor wall that {thick.title} needs"
        return own.title

    def _apart(self) -> ApartError:
        """Return the conflict of the motor that asks for the longest block with the one that allows the shortest."""
        layouts = {entry: task.nominal() for entry, task in self.each()}
        long = max(layouts, key=lambda entry: layouts[entry].low)
        short = min(layouts, key=lambda entry: layouts[entry].high)
        tasks = dict(self.each())
        deficit = layouts[long].low - layouts[short].high
        facts = {renamed(key, e): value for e in (long, short) for key, value in tasks[e].facts.items()}
        bounds = (*_of(layouts[long].low_bounds, long), *_of(layouts[short].high_bounds, short))
        told = describe(Cycle(bounds, deficit), facts)
        words = (
            f"{self._title(long)} asks for a block of at least {layouts[long].low:.2f} mm, {self._title(short)} allows "
            f"at most {layouts[short].high:.2f} mm: {deficit:.2f} mm missing"
        )
        cures = _cures(bounds, facts, deficit, (long, short), (self._title(long), self._title(short)))
        return ApartError([Conflict(words, told.deficit, told.facts, told.keys)], cures)


def common(layouts: Sequence[tuple[str, Layout]]) -> Layout:
    """Return the lengths that several layouts have in common; coupling and grips stay those of the first.

    A layout that is impossible whatever the length leaves nothing in common.
    """
    low = max(layouts, key=lambda pair: pair[1].low)
    high = min(layouts, key=lambda pair: pair[1].high)
    missing = max(_missing_anyway(layout) for _, layout in layouts)
    greatest = min(high[1].high, low[1].low - missing) if missing > EPSILON else high[1].high
    return Layout(
        low[1].low, greatest, _of(low[1].low_bounds, low[0]), _of(high[1].high_bounds, high[0]), layouts[0][1].limits
    )


def _missing_anyway(layout: Layout) -> float:
    at = layout.limits
    return max(at["c_min"] - at["c_max"], at["d_min"] - at["d_max"])


def _of(bounds: Sequence[Bound], entry: str) -> tuple[Bound, ...]:
    """Return bounds under the keys that they have in the family."""
    return tuple(replace(b, terms=tuple((renamed(key, entry), factor) for key, factor in b.terms)) for b in bounds)


def _words(bounds: Sequence[Bound]) -> str:
    return " together with ".join(bound.name for bound in bounds)


def _cures(
    bounds: Sequence[Bound],
    facts: Mapping[str, float],
    deficit: float,
    motors: tuple[str, str],
    titles: tuple[str, str],
) -> tuple[Cure, ...]:
    """Return another shaft length of either motor; the sizing proves them."""
    found = []
    for entry, title in zip(motors, titles, strict=True):
        key = renamed(_SHAFT, entry)
        rate = slope(Cycle(tuple(bounds), deficit), key)
        if not rate:
            continue
        before = facts[key]
        step = up(deficit / abs(rate), 0.1) * (-1 if rate > 0 else 1)
        after = round(before + step, 6)
        kind = f"{'longer' if step > 0 else 'shorter'} shaft of {title}"
        smooth = renamed(_SMOOTH, entry)
        follows = facts[smooth] < before  # a shaft that is smooth all along is so at any length
        changes = ((key, after), (smooth, round(facts[smooth] + step, 6))) if follows else ((key, after),)
        text = f"{kind}: {key} {before:g} mm -> {after:g} mm ({step:+.3g} mm{', its smooth part with it' * follows})"
        found.append(Cure(key, kind, before, after, "mm", text, _RANK, verified=True, changes=changes))
    return tuple(found)
