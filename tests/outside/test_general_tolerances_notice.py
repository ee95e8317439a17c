"""ISO 2768-1, Table 1, against a notice of the Japanese ministry of labour that reprints JIS B 0405, the same table.

"日本工業規格 B 0405 (抄)", annex to a notice, www.jaish.gr.jp/horei/hor1-43/hor1-43-3-1-6.html, Table 1. Reached as
an excerpt of a stored copy of that page.
"""

import pytest

from blockgen.standards.iso2768 import general_tolerance

SIZES = (3, 6, 30, 120, 400, 1000, 2000, 4000)
ROWS = {
    "f": (0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5),
    "m": (0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2),
    "c": (0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4),
    "v": (0.5, 1, 1.5, 2.5, 4, 6, 8),
}
"""Rows as printed, by class; the fine class has no last cell, the very coarse one no first."""


@pytest.mark.parametrize("letter", ROWS)
def test_row(letter):
    sizes = SIZES[1:] if letter == "v" else SIZES[: len(ROWS[letter])]
    assert tuple(general_tolerance(size, letter) for size in sizes) == ROWS[letter]
