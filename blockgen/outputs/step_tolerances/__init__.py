"""Tolerances that a program reads inside the STEP file: sizes with limits and fits, datums, zones, threads, textures.

The plan's one list of characteristics becomes plain records (``from_plan.py``), and these become entities of ISO
10303-242 that are appended to the text which the kernel wrote (``entities.py``). The kernel's own writer of tolerances
is not used: it writes grades two too high, untyped measures and empty lists that must not be empty. Appended text
also leaves every entity of the geometry as it is.

All lengths are mm, whatever the units of the spec.
"""
