"""Head and tables of a DXF file: units, properties, layers, line types, lettering styles, the style of dimensions."""

from __future__ import annotations

from math import fsum
from typing import TYPE_CHECKING, Literal

from blockgen.outputs.drawing.lettering import FONTS, FontName
from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH, Arc, Hatch, Item, Line, Pen, Sheet

if TYPE_CHECKING:
    from ezdxf.document import Drawing

APPLICATION = "BLOCKGEN"
"""Name under which the ids of the items stand at the entities (XDATA)."""

DIMENSION_STYLE = "sheet"

DecimalSign = Literal[".", ","]

STYLE: dict[FontName, str] = {"osifont": "letters", "DejaVuSans": "letters_more"}
"""Lettering style by font."""

USUAL_PEN: dict[str, Pen] = {"outline": "outline", "centre_line": "centre", "frame": "border"}
"""Pen of a role that has the layer of the role's own name; thin for the others."""

DECIMALS = 3
"""Decimals of a measured dimension; zeros at the end are left out."""


def layer_name(role: str, pen: Pen) -> str:
    """Return the layer of a role's strokes: the role's name, with the pen's where that is not the usual one."""
    return role if pen == USUAL_PEN.get(role, "thin") else f"{role}_{pen}"


def hatch_layer(role: str) -> str:
    """Return the layer of the hatching of a role."""
    return f"{role}_hatching"


def set_up(document: Drawing, sheet: Sheet, status: str, decimal_sign: DecimalSign) -> None:
    """Enter everything that entities refer to.

    Args:
        document: The document.
        sheet: The sheet.
        status: Status of the design.
        decimal_sign: Sign in numbers.
    """
    # Every dashed entity has a factor of its own that makes the dashes true on paper; nothing else may scale them.
    document.header["$LTSCALE"], document.header["$PSLTSCALE"] = 1.0, 0
    document.header["$LWDISPLAY"] = 1
    for name, text in (("title", sheet.title), ("status", status)):
        document.header.custom_vars.append(name, "".join(c if c.isprintable() else " " for c in text))
    document.appids.new(APPLICATION)
    for pen, dashes in DASHES.items():
        document.linetypes.new(pen, dxfattribs={"description": pen, "length": fsum(dashes)}).setup_pattern(
            [fsum(dashes), *(length if k % 2 == 0 else -length for k, length in enumerate(dashes))]
        )
    for font in FONTS:
        document.styles.new(STYLE[font], dxfattribs={"font": f"{font}.ttf"})
    _add_layers(document, sheet)
    _add_dimension_style(document, 1 / sheet.scale, decimal_sign)


def _add_layers(document: Drawing, sheet: Sheet) -> None:
    layers = {name: pen for item in sheet.items for name, pen in _layers(item).items()}
    for name, pen in sorted(layers.items()):
        width = round(PEN_WIDTH[pen] * 100)
        line_type = pen if pen in DASHES else "Continuous"
        document.layers.new(name, dxfattribs={"color": 7, "linetype": line_type, "lineweight": width})


def _layers(item: Item) -> dict[str, Pen]:
    pens: list[Pen] = [stroke.pen for stroke in item.strokes if isinstance(stroke, (Line, Arc))]
    usual = USUAL_PEN.get(item.role, "thin")
    found = {layer_name(item.role, pen): pen for pen in (usual, *pens)}
    if any(isinstance(stroke, Hatch) for stroke in item.strokes):
        found[hatch_layer(item.role)] = "thin"
    return found


def _add_dimension_style(document: Drawing, factor: float, decimal_sign: DecimalSign) -> None:
    """Add the style after which a reader draws a dimension anew that somebody has moved: ISO 129-1, letters 3.5."""
    style = document.dimstyles.new(DIMENSION_STYLE)
    sizes = {"dimtxt": 3.5, "dimasz": 3.5, "dimexo": 0.0, "dimexe": 2.0, "dimgap": 1.0}
    looks = {"dimtad": 1, "dimtih": 0, "dimtoh": 0, "dimtxsty": STYLE["osifont"], "dimlwd": 25, "dimlwe": 25}
    numbers = {"dimdec": DECIMALS, "dimzin": 8, "dimdsep": ord(decimal_sign), "dimlfac": 1.0, "dimscale": factor}
    style.update_dxf_attribs({**sizes, **looks, **numbers})
