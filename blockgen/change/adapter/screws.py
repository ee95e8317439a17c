"""Screws of a plate: which lengths do for a thickness, and whether they are made."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.change.adapter.holes import Group
from blockgen.plan import Fastener, Plan
from blockgen.record import Ledger
from blockgen.sizing.seats import FLANGE_CLASS
from blockgen.standards.screws import cap_screw, preferred_length


@dataclass(frozen=True, slots=True)
class Joint:
    """Equal screws of a plate and what bounds their length.

    Args:
        where: adapter_to_block or motor_to_adapter.
        group: The screws.
        clamped: What they clamp beside the plate, less what their heads are sunk, mm; None where it is not known.
        through_plate: Whether they pass the plate; else they end in it.
        least: Least engagement, mm.
        depth: Depth of the thread they end in, mm; the plate's own where they end in it.
        like: Screws of the same thread in a plan, whose torque and preload hold; None without any.
    """

    where: str
    group: Group
    clamped: float | None
    through_plate: bool
    least: float
    depth: float
    like: Fastener | None

    def grip(self, thickness: float) -> float | None:
        """Return what they clamp under a plate of a thickness in mm, mm; None where it is not known."""
        if self.clamped is None:
            return None
        return self.clamped + (thickness if self.through_plate else 0.0)

    def length(self, thickness: float) -> float | None:
        """Return the shortest usual length in mm; None where none is made or what they clamp is not known."""
        grip, depth = self.grip(thickness), self.depth if self.through_plate else thickness
        return None if grip is None else preferred_length(self.group.thread.size, grip + self.least, grip + depth)

    def fastener(self, thickness: float) -> Fastener:
        """Return the screws for a plate of a thickness in mm."""
        grip, length = self.grip(thickness), self.length(thickness)
        engaged = None if grip is None or length is None else round(length - grip, 3)
        like, thread = self.like, self.group.thread
        return Fastener(
            self.where, cap_screw(thread.size).standard, thread.size, length, FLANGE_CLASS, len(self.group.places),
            like.torque if like else None, like.preload if like else None, engaged, None,
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Screws:
    """Both groups of a plate."""

    joints: tuple[Joint, Joint]

    def missing(self, thickness: float) -> Iterator[str]:
        """Yield the groups, in words, of which no length is made for a thickness in mm."""
        for joint in self.joints:
            if joint.clamped is not None and joint.length(thickness) is None:
                yield joint.group.name.replace("_", " ")

    def are_made(self, thickness: float) -> bool:
        """Tell whether every length that can be chosen is made."""
        return not any(True for _ in self.missing(thickness))

    def fasteners(self, thickness: float) -> tuple[Fastener, ...]:
        """Return both groups for a thickness in mm."""
        return tuple(joint.fastener(thickness) for joint in self.joints)


def screw_lengths(ledger: Ledger, old: Plan, new: Plan, groups: tuple[Group, Group], faced: float) -> Screws:
    """Return the screws of a plate between old block and new motor.

    Args:
        ledger: Ledger of the adapter.
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        groups: Screws into the block, screws of the motor.
        faced: What is faced off the block, mm.
    """
    into_block, of_motor = groups
    block = Joint("adapter_to_block", into_block, None, False, 0.0, 0.0, _like(old))
    if not into_block.tapped:
        depth, least = old.number("motor_thread_depth") - faced, old.number("motor_engagement_least")
        block = Joint("adapter_to_block", into_block, -into_block.sunk, True, least, depth, _like(old))
    motor = Joint("motor_to_adapter", of_motor, None, False, 0.0, 0.0, _like(new))
    if of_motor.tapped and ledger.known("motor.flange_thickness"):
        least = ledger.number("adapter.motor_screws_engagement")
        motor = Joint("motor_to_adapter", of_motor, new.number("motor.flange_thickness"), False, least, 0.0, _like(new))
    return Screws((block, motor))


def _like(plan: Plan) -> Fastener | None:
    return next((fastener for fastener in plan.fasteners if fastener.where == "motor_flange"), None)
