"""The full eigenvalue problem of a held or free solid, with rigid masses on faces: for comparison only."""

from __future__ import annotations

import numpy as np


def lowest(system, density, count, shift=0.0, beds=(), added=()):
    """Return the lowest eigenvalues (rad/s)^2 of a system by subspace iteration about a shift.

    Args:
        system: A ``System``.
        density: t/mm3.
        count: How many.
        shift: (rad/s)^2; below zero for a free body.
        beds: Beds that hold it, as ``System.hold`` takes them.
        added: (patch, mass matrix) of rigid bodies whose motion is that of a patch.
    """
    import ngsolve

    space = system.space
    trial, test = space.TnT()
    form = ngsolve.BilinearForm(space)
    form += density * trial * test * ngsolve.dx
    form.Assemble()
    beds = list(beds)
    if shift:
        beds.append((form, -shift))
    system.hold(beds)
    maps = [(np.linalg.solve(patch.gram, patch.columns.T), mass) for patch, mass in added]

    def inertia(columns):
        given, found = form.mat.CreateRowVector(), form.mat.CreateColVector()
        out = np.empty_like(columns)
        for index in range(columns.shape[1]):
            given.FV().NumPy()[:] = columns[:, index]
            found.data = form.mat * given
            out[:, index] = found.FV().NumPy()
        for rigid, mass in maps:
            out += rigid.T @ (mass @ (rigid @ columns))
        return out

    vectors = np.random.default_rng(1).standard_normal((space.ndof, count + 6))
    values = np.zeros(count)
    for _ in range(30):
        pressed = inertia(vectors)
        vectors = system.solve(pressed)
        stiff, mass = vectors.T @ pressed, vectors.T @ inertia(vectors)
        root = np.linalg.inv(np.linalg.cholesky(mass))
        found, turn = np.linalg.eigh(root @ stiff @ root.T)
        vectors = vectors @ (root.T @ turn)
        if np.allclose(found[:count], values, rtol=1e-7, atol=0):
            break
        values = found[:count]
    return values + shift
