"""Preload and tightening torque of a screw, and what the joint loses of it.

The equations have the form of VDI 2230-1 as written down from memory; the guideline itself was not at hand. The
tests compare them with published tables. Threads are metric (60 deg): 1 / cos 30 deg stands in the friction terms.
"""

from __future__ import annotations

import math

FLANK_FACTOR = 1 / math.cos(math.radians(30))


def stress_diameter(d2: float, d3: float) -> float:
    """Return the diameter of the stress cross-section, mm.

    Args:
        d2: Pitch diameter, mm.
        d3: Root diameter of the screw, mm.

    Source: VDI 2230 form, from memory: d0 = (d2 + d3) / 2.
    """
    return (d2 + d3) / 2


def stress_area(d2: float, d3: float) -> float:
    """Return the stress cross-section A0 = pi d0^2 / 4, mm2. Source: VDI 2230 form, from memory."""
    return math.pi * stress_diameter(d2, d3) ** 2 / 4


def torsion_factor(pitch: float, d2: float, d3: float, thread_friction: float) -> float:
    """Return the equivalent stress over the tensile stress while the screw is being tightened, at least 1.

    The whole section is taken as plastic in torsion (factor 1.5 for 2).

    Args:
        pitch: Pitch, mm.
        d2: Pitch diameter, mm.
        d3: Root diameter of the screw, mm.
        thread_friction: Coefficient of friction in the thread.

    Source: VDI 2230 form, from memory: sqrt(1 + 3 [1.5 d2/d0 (P/(pi d2) + 1.155 mu)]^2).
    """
    helix = pitch / (math.pi * d2) + FLANK_FACTOR * thread_friction
    return math.sqrt(1 + 3 * (1.5 * d2 / stress_diameter(d2, d3) * helix) ** 2)


def assembly_preload(
    *,
    pitch: float,
    d2: float,
    d3: float,
    yield_strength: float,
    thread_friction: float,
    utilisation: float = 0.9,
) -> float:
    """Return the preload at which the tightened screw reaches a share of its yield strength, N.

    Args:
        pitch: Pitch, mm.
        d2: Pitch diameter, mm.
        d3: Root diameter of the screw, mm.
        yield_strength: Rp0.2 of the screw, MPa.
        thread_friction: Coefficient of friction in the thread.
        utilisation: Share of the yield strength.

    Source: VDI 2230 form, from memory: F_M = 0.9 Rp0.2 A0 / torsion factor.
    """
    return utilisation * yield_strength * stress_area(d2, d3) / torsion_factor(pitch, d2, d3, thread_friction)


def effective_bearing_diameter(head: float, hole: float) -> float:
    """Return the mean diameter Dkm of the ring under the head, mm.

    Args:
        head: Outer diameter of the bearing face, mm.
        hole: Diameter of the clearance hole, mm.

    Source: VDI 2230 form, from memory: Dkm = (dw + dh) / 2.
    """
    return (head + hole) / 2


def torque_arm(pitch: float, d2: float, bearing_diameter: float, thread_friction: float, head_friction: float) -> float:
    """Return tightening torque over preload, mm.

    Source: VDI 2230 form, from memory: 0.159 P + 0.577 d2 mu_G + Dkm/2 mu_K; the factors are 1/(2 pi) and
    1/(2 cos 30 deg), which the guideline rounds to 0.16 and 0.58.
    """
    thread = pitch / (2 * math.pi) + FLANK_FACTOR / 2 * d2 * thread_friction
    return thread + bearing_diameter / 2 * head_friction


def tightening_torque(
    preload: float,
    *,
    pitch: float,
    d2: float,
    bearing_diameter: float,
    thread_friction: float,
    head_friction: float,
) -> float:
    """Return the tightening torque of a preload, N*m.

    Args:
        preload: Assembly preload, N.
        pitch: Pitch, mm.
        d2: Pitch diameter, mm.
        bearing_diameter: Mean diameter under the head, mm.
        thread_friction: Coefficient of friction in the thread.
        head_friction: Coefficient of friction under the head.

    Source: VDI 2230 form, from memory.
    """
    return preload * torque_arm(pitch, d2, bearing_diameter, thread_friction, head_friction) / 1000


def preload_from_torque(
    torque: float,
    *,
    pitch: float,
    d2: float,
    bearing_diameter: float,
    thread_friction: float,
    head_friction: float,
) -> float:
    """Return the preload of a tightening torque, N; the inverse of `tightening_torque`.

    Args:
        torque: Tightening torque, N*m.
        pitch: Pitch, mm.
        d2: Pitch diameter, mm.
        bearing_diameter: Mean diameter under the head, mm.
        thread_friction: Coefficient of friction in the thread.
        head_friction: Coefficient of friction under the head.

    Source: VDI 2230 form, from memory.
    """
    return 1000 * torque / torque_arm(pitch, d2, bearing_diameter, thread_friction, head_friction)


def least_preload(preload: float, scatter: float, embedding_loss: float, thermal_loss: float = 0.0) -> float:
    """Return the preload that surely remains, N; 0 where nothing remains.

    Args:
        preload: Greatest assembly preload, N.
        scatter: Tightening factor alpha_A, greatest over least assembly preload, at least 1.
        embedding_loss: Loss by embedding, N.
        thermal_loss: Loss by unlike expansion, N; negative where the preload grows.

    Raises:
        ValueError: the tightening factor is below 1.

    Source: VDI 2230 form, from memory: F_Vmin = F_M / alpha_A - F_Z - dF_Vth.
    """
    if scatter < 1:
        raise ValueError(f"tightening factor {scatter} is below 1: greatest over least preload is at least 1")
    return max(0.0, preload / scatter - embedding_loss - thermal_loss)


def embedding_loss(embedding: float, screw_resilience: float, clamped_resilience: float) -> float:
    """Return the preload lost when the faces bed in, N.

    Args:
        embedding: Sum of the embedding of all faces, mm.
        screw_resilience: Lengthening of the screw for 1 N, mm/N.
        clamped_resilience: Shortening of the clamped parts for 1 N, mm/N.

    Source: VDI 2230 form, from memory: F_Z = f_Z / (delta_S + delta_P).
    """
    return embedding / (screw_resilience + clamped_resilience)


def thermal_loss(
    expansion_difference: float,
    clamped_length: float,
    temperature_change: float,
    screw_resilience: float,
    clamped_resilience: float,
) -> float:
    """Return the preload lost when screw and clamped parts change temperature together, N; negative is a gain.

    Args:
        expansion_difference: Expansion of the screw less that of the clamped parts, 1/K.
        clamped_length: Clamped length, mm.
        temperature_change: Temperature less that at assembly, K.
        screw_resilience: mm/N.
        clamped_resilience: mm/N.

    Source: VDI 2230 form, from memory, with one temperature and constant moduli.
    """
    slack = expansion_difference * clamped_length * temperature_change
    return slack / (screw_resilience + clamped_resilience)


def screw_resilience(diameter: float, d3: float, shank: float, free_thread: float, modulus: float) -> float:
    """Return the lengthening of a socket head screw in a tapped hole for 1 N, mm/N.

    Head 0.4 d and nut side 0.33 d on the nominal section, engaged thread 0.5 d on the root section.

    Args:
        diameter: Nominal diameter, mm.
        d3: Root diameter, mm.
        shank: Plain length within the clamped length, mm.
        free_thread: Threaded length within the clamped length, mm.
        modulus: Modulus of elasticity, MPa.

    Source: VDI 2230 form, from memory; the shares 0.4, 0.33 and 0.5 are remembered.
    """
    nominal_area = math.pi * diameter**2 / 4
    root_area = math.pi * d3**2 / 4
    return ((0.73 * diameter + shank) / nominal_area + (0.5 * diameter + free_thread) / root_area) / modulus


def clamped_resilience(
    head: float,
    hole: float,
    clamped_length: float,
    modulus: float,
    cone_tangent: float,
) -> float:
    """Return the shortening of wide clamped parts over a tapped hole for 1 N, mm/N.

    One pressure cone opens from the head through the whole clamped length; the outside must not cut it.

    Args:
        head: Outer diameter of the bearing face, mm.
        hole: Diameter of the clearance hole, mm.
        clamped_length: mm.
        modulus: Modulus of elasticity of the clamped parts, MPa.
        cone_tangent: Tangent of half the cone angle, usually 0.5 to 0.6.

    Source: integral of dz / (E A(z)) over that cone; the same form stands in VDI 2230, from memory.
    """
    foot = head + 2 * clamped_length * cone_tangent
    shares = (head + hole) * (foot - hole) / ((head - hole) * (foot + hole))
    return math.log(shares) / (modulus * math.pi * hole * cone_tangent)


def bearing_area(outer: float, hole: float) -> float:
    """Return the area of the ring under a head or washer, mm2.

    Args:
        outer: Outer diameter of the bearing face, mm.
        hole: Diameter of the hole with its chamfer, mm.

    Raises:
        ValueError: the hole is as wide as the bearing face.
    """
    if hole >= outer:
        raise ValueError(f"hole of {hole:g} mm under a bearing face of {outer:g} mm: nothing bears, add a washer")
    return math.pi * (outer**2 - hole**2) / 4


def pressure_under_head(force: float, outer: float, hole: float) -> float:
    """Return the surface pressure under a head or washer, MPa.

    Args:
        force: Greatest force in the screw, N.
        outer: Outer diameter of the bearing face, mm.
        hole: Diameter of the hole with its chamfer, mm.

    Raises:
        ValueError: the hole is as wide as the bearing face.

    Source: VDI 2230 form, from memory: p = F / A_p.
    """
    return force / bearing_area(outer, hole)


def load_factor(screw_resilience: float, clamped_resilience: float) -> float:
    """Return the share of a load on a closed joint that the screw feels, 0 to 1.

    Args:
        screw_resilience: Lengthening of the screw for 1 N, mm/N.
        clamped_resilience: Shortening of the clamped parts for 1 N, mm/N.

    Source: VDI 2230 form, from memory, load introduced under the head: Phi = delta_P / (delta_S + delta_P).
    """
    return clamped_resilience / (screw_resilience + clamped_resilience)


def load_reserve(preload: float, strength: float, area: float, share: float, load: float) -> float:
    """Return how many times a load fits into what a tightened screw can still bear; infinite without a load.

    Args:
        preload: Greatest preload, N.
        strength: Stress allowed, MPa.
        area: Stress area, mm2.
        share: Share of the load that the screw feels.
        load: On the joint at this screw, N.

    Source: handbook form, from memory: n = (S A - F_V) / (Phi F).
    """
    felt = share * load
    return math.inf if felt <= 0 else (strength * area - preload) / felt


def pull_safety(preload: float, load: float, share: float = 0.0) -> float:
    """Return how many times a pull can act before the joint under one screw opens; infinite without one.

    Args:
        preload: Least preload, N.
        load: Pull at this screw, N.
        share: Share of it that the screw feels; 0 is on the safe side.

    Source: handbook form, from memory: n = F_V / ((1 - Phi) F).
    """
    return math.inf if load <= 0 else preload / ((1 - share) * load)


def washer_bearing_diameter(face: float, outer: float, thickness: float) -> float:
    """Return the outer diameter in mm over which a washer spreads the force of a head.

    Args:
        face: Outer diameter of the bearing face of the head, mm.
        outer: Outer diameter of the washer, mm.
        thickness: Of the washer, mm.

    Source: VDI 2230 form, from memory: head + 1.6 x thickness, at most the washer.
    """
    return min(outer, face + 1.6 * thickness)
