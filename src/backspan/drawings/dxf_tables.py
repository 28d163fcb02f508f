"""Layers, line types, lettering and signs of a DXF file."""

from __future__ import annotations

from typing import TYPE_CHECKING

from backspan.drawings.scene import BLACK, PENS, Layer, Pen, SymbolName

if TYPE_CHECKING:
    from ezdxf.document import Drawing

STYLE, BOLD = "Lettering", "Lettering bold"
FONT, BOLD_FONT = "arial.ttf", "arialbd.ttf"
DIMENSIONS = "Dimensions"
FOREGROUND = 7
# The pen widths a DXF file knows, in hundredths of a millimetre.
PEN_WIDTHS = (13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100)


def add_tables(document: Drawing, *, text_height: float) -> None:
    """Every layer by its trade name, its line type, one lettering, one dimension style."""
    document.styles.add(STYLE, font=FONT)
    document.styles.add(BOLD, font=BOLD_FONT)
    for layer in Layer:
        pen = PENS[layer]
        line_type = "Continuous"
        if pen.dashes:
            line_type = layer.upper().replace(" ", "_")
            document.linetypes.add(line_type, pattern=_pattern(pen), description=str(layer))
        entry = document.layers.add(
            str(layer), color=FOREGROUND, linetype=line_type, lineweight=pen_width(pen.width)
        )
        if pen.colour != BLACK:
            entry.rgb = rgb(pen.colour)
    style = document.dimstyles.new(DIMENSIONS)
    share = text_height / 2.5
    for name, value in (
        ("dimtxt", text_height),
        ("dimtsz", 1.1 * share),
        ("dimexo", 1.2 * share),
        ("dimexe", 1.5 * share),
        ("dimgap", 0.8 * share),
        ("dimasz", 2.0 * share),
    ):
        style.set_dxf_attrib(name, value)
    style.set_dxf_attrib("dimtad", 0)
    style.set_dxf_attrib("dimtxsty", STYLE)


def pen_width(width: float) -> int:
    """The known pen width nearest to `width` millimetres, in hundredths of a millimetre."""
    return min(PEN_WIDTHS, key=lambda known: (abs(known - width * 100), known))


def rgb(colour: str) -> tuple[int, int, int]:
    """Red, green and blue of a #rrggbb colour."""
    return (int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16))


def _pattern(pen: Pen) -> list[float]:
    signed = [dash if place % 2 == 0 else -dash for place, dash in enumerate(pen.dashes)]
    return [sum(pen.dashes), *signed]


def block_name(name: SymbolName) -> str:
    """The name of the block of a sign."""
    return str(name).replace(",", "").replace(" ", "_").upper()
