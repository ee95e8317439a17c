"""DXF and PDF of one sheet, each drawn by a library that is not ours, look the same."""

from __future__ import annotations

import io
from importlib.resources import files

import pytest

from blockgen.outputs.drawing.to_dxf import dxf_bytes
from blockgen.outputs.drawing.to_pdf import pdf_bytes
from tests.outputs.drawing.sample_sheets import view_sheet

pytestmark = pytest.mark.slow

DOTS = 4
"""Dots a mm."""


def ink_of_pdf(sheet):
    import numpy as np
    import pypdfium2

    page = pypdfium2.PdfDocument(pdf_bytes([sheet], "t", "", ""))[0]
    return np.asarray(page.render(scale=DOTS * 25.4 / 72).to_pil().convert("L")) < 160


def ink_of_dxf(sheet):
    """Draw the layout through its window; lines are drawn whole, since the library stretches dashes in windows."""
    import ezdxf
    import matplotlib as mpl
    import numpy as np
    from ezdxf.addons.drawing import Frontend, RenderContext, config
    from ezdxf.addons.drawing.matplotlib import MatplotlibBackend
    from ezdxf.fonts import fonts
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    fonts.font_manager.build([str(files("blockgen.outputs.drawing") / "fonts")], support_dirs=False)
    document = ezdxf.read(io.StringIO(dxf_bytes(sheet, "s").decode("utf-8")))
    figure = mpl.figure.Figure(figsize=(sheet.width / 25.4, sheet.height / 25.4), dpi=DOTS * 25.4)
    canvas, axes = FigureCanvasAgg(figure), figure.add_axes((0, 0, 1, 1))
    looks = config.Configuration(
        background_policy=config.BackgroundPolicy.WHITE,
        color_policy=config.ColorPolicy.BLACK,
        line_policy=config.LinePolicy.SOLID,
        lineweight_scaling=72 / 25.4,
    )
    backend = MatplotlibBackend(axes, adjust_figure=False)
    Frontend(RenderContext(document), backend, looks).draw_layout(document.paperspace(sheet.name), finalize=False)
    axes.set(xlim=(0, sheet.width), ylim=(0, sheet.height))
    axes.axis("off")
    canvas.draw()
    return np.asarray(canvas.buffer_rgba())[:, :, :3].mean(axis=2) < 160


def test_dxf_and_pdf_have_their_ink_at_the_same_places():
    from scipy.ndimage import binary_dilation

    drawn, printed = ink_of_dxf(view_sheet()), ink_of_pdf(view_sheet())
    height, width = (min(a, b) for a, b in zip(drawn.shape, printed.shape, strict=True))
    drawn, printed = drawn[-height:, :width], printed[-height:, :width]
    # 1 mm on each side: half of the widest gap of the dashes, their butt ends, and a dot for rounding
    for one, other in ((drawn, printed), (printed, drawn)):
        alone = one & ~binary_dilation(other, iterations=4)
        assert alone.sum() <= 10
