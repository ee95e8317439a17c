"""Flat steel bars against a public account of the standard.

British Stainless Steel Association, "Tolerances to BS EN 10058 for hot rolled flat stainless steel bars",
bssa.org.uk/bssa_articles/tolerances-to-bs-en-10058-for-hot-rolled-flat-stainless-steel-bars. Reached as an excerpt of
that page. The widths named here were typed from it, so that they prove no more than that the table holds them; the
greatest thickness of its tolerance table bounds what was remembered.
"""

from blockgen.standards.stock import bar_sections

FLATS = [bar for bar in bar_sections("steel") if bar.form == "flat bar"]


def test_no_flat_is_thicker_than_the_tolerance_table_goes():
    """Table 2 as summarised there: thickness over 40 up to 80."""
    assert max(bar.thickness for bar in FLATS) == 80


def test_widths_of_the_2018_edition():
    """Changes of the 2018 edition: widths 130 and 140 added; wide flats of 160, 170, 180 and 200."""
    assert {130, 140, 160, 170, 180, 200} <= {bar.width for bar in FLATS}
