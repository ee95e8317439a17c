"""ISO 2768-2 against a public reprint of JIS B 0419, the same tables.

"普通幾何公差", kikai-seizu.s-projects.net/general-geometrical-tolerance.html, tables of straightness and flatness,
perpendicularity, symmetry and circular run-out. Reached as an excerpt of a stored copy of that page. Where the table
joins cells, the value is repeated here.
"""

import pytest

from blockgen.standards.iso2768 import geometrical_tolerance

FLATNESS_TO, OTHERS_TO = (10, 30, 100, 300, 1000, 3000), (100, 300, 1000, 3000)
TABLES = {
    "flatness": (FLATNESS_TO, {
        "H": (0.02, 0.05, 0.1, 0.2, 0.3, 0.4),
        "K": (0.05, 0.1, 0.2, 0.4, 0.6, 0.8),
        "L": (0.1, 0.2, 0.4, 0.8, 1.2, 1.6),
    }),
    "perpendicularity": (OTHERS_TO, {"H": (0.2, 0.3, 0.4, 0.5), "K": (0.4, 0.6, 0.8, 1), "L": (0.6, 1, 1.5, 2)}),
    "symmetry": (OTHERS_TO, {"H": (0.5, 0.5, 0.5, 0.5), "K": (0.6, 0.6, 0.8, 1), "L": (0.6, 1, 1.5, 2)}),
    "run_out": ((3000,), {"H": (0.1,), "K": (0.2,), "L": (0.5,)}),
}  # fmt: skip


@pytest.mark.parametrize("letter", "HKL")
@pytest.mark.parametrize("characteristic", TABLES)
def test_row(characteristic, letter):
    lengths, rows = TABLES[characteristic]
    assert tuple(geometrical_tolerance(characteristic, length, letter) for length in lengths) == rows[letter]
