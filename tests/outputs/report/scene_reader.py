"""Reads the arrays of a scene back, as the page does."""

from __future__ import annotations

from base64 import b64decode

import numpy as np


def points(of):
    steps = np.frombuffer(b64decode(of["data"]), dtype="<u2").reshape(-1, 3)
    return np.array(of["low"]) + np.array(of["step"]) * steps


def integers(of, columns):
    return np.frombuffer(b64decode(of["data"]), dtype=f"<u{of['bits'] // 8}").reshape(-1, columns)


def reals(text):
    return np.frombuffer(b64decode(text), dtype="<f4")


def faces(runs):
    return np.repeat([face for face, _ in runs], [many for _, many in runs])


def placed(of, part):
    rows = np.array(part["place"]).reshape(3, 4)
    return points(of) @ rows[:, :3].T + rows[:, 3]
