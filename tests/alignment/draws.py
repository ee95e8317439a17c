"""A million seeded draws of a sum of scatters: the independent measure of the exact laws."""

import math

import numpy as np

from blockgen.alignment.scatter import clearance, disc

COUNT = 1_000_000


def example(fim=0.08, arms=(40, 50)):
    """Return the offsets of the worked example of a one-piece block; ``fim`` is that of motor spigot and face."""
    motor, bearing = arms
    return [
        clearance(0.0, 0.060, 0.030), clearance(0.0, 0.041, 0.025), disc(0.02 / 2), disc(0.02 / 90 * motor),
        disc(0.01 / 90 * bearing), disc(0.01 / 2), disc(0.01 / 90 * bearing), disc(fim / 2), disc(fim / 90 * motor),
    ]  # fmt: skip


def lengths(scatters, seed, count=COUNT):
    """Return the lengths of sums drawn at random."""
    rng = np.random.default_rng(seed)
    total = np.zeros(count, complex)
    for scatter in scatters:
        total += _drawn(scatter, rng, count)
    return np.abs(total)


def _drawn(scatter, rng, count):
    kind, _, axis = scatter.law.partition("_")
    if kind == "known":
        return complex(*scatter.vector)
    if axis:
        line = scatter.size * (rng.uniform(-1, 1, count) if kind == "uniform" else rng.standard_normal(count))
        return line * (1j if axis == "z" else 1)
    if kind == "gaussian":
        return scatter.size * (rng.standard_normal(count) + 1j * rng.standard_normal(count))
    direction = np.exp(2j * np.pi * rng.random(count))
    if kind == "disc":
        return scatter.size * np.sqrt(rng.random(count)) * direction
    spread = scatter.hole_tolerance * rng.random(count) + scatter.shaft_tolerance * rng.random(count)
    return np.maximum(scatter.low + spread, 0) / 2 * direction


def off_by(drawn, radius, probability):
    """Return how many of its own standard errors the drawn share within a radius is off a probability."""
    share = float(np.mean(drawn <= radius))
    return abs(share - probability) / math.sqrt(probability * (1 - probability) / len(drawn))
