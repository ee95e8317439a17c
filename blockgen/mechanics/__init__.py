"""Pure formulas in mm, N, MPa and K: one function an equation."""
