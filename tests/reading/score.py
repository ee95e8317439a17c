"""Recall and precision of each value over motors drawn by chance.

Run: python -m tests.reading.score [COUNT] [FIRST SEED] [free]   (free: all surfaces as free-form ones)
"""

from __future__ import annotations

import sys
import time
from collections import Counter

from blockgen.errors import InputError
from blockgen.reading.part import reading_of
from blockgen.reading.read_file import StepModel
from tests.reading.made_motors import as_free_form, drawn, made, posed, truth

TOLERANCE = 0.01


def agrees(value, true):
    if isinstance(true, str) or value is None or isinstance(value, str):
        return value == true
    return abs(value - true) <= TOLERANCE


def measure(seeds, free=False, tell=print):
    wanted, got, right, sure_wrong = Counter(), Counter(), Counter(), Counter()
    for seed in seeds:
        motor = drawn(seed)
        shape = posed(made(motor), seed)
        shape = as_free_form(shape) if free else shape
        try:
            reading = reading_of(StepModel(shape, "mm", 1), "x", "motor")
        except InputError as error:
            reading = None
            tell(f"{seed}: {error}")
        for key, true in truth(motor).items():
            wanted[key] += 1
            value = None if reading is None else reading.value(key)
            got[key] += value is not None
            right[key] += agrees(value, true)
            if reading is not None and not agrees(value, true):
                sure = next((f.confidence for f in reading.found if f.key == key), "-")
                sure_wrong[key] += sure == "high"
                tell(f"{seed}: {key} is {true}, read {value} ({sure}); {motor.shape} {sorted(motor.more)}")
    return wanted, got, right, sure_wrong


def main():
    numbers = [int(a) for a in sys.argv[1:] if a.isdigit()]
    count, first = (*numbers, *(200, 1)[len(numbers) :])
    start = time.perf_counter()
    wanted, got, right, sure_wrong = measure(range(first, first + count), "free" in sys.argv)
    print(f"{count} motors in {time.perf_counter() - start:.0f} s")
    print(f"{'key':20} {'n':>4} {'recall':>7} {'precision':>9} {'high but wrong':>14}")
    for key in wanted:
        shares = f"{right[key] / wanted[key]:7.3f} {right[key] / max(got[key], 1):9.3f}"
        print(f"{key:20} {wanted[key]:4} {shares} {sure_wrong[key]:14}")


if __name__ == "__main__":
    main()
