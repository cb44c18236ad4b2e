"""Makes the symbol font, packetgen/fonts/symbols.ttf, anew after a change of the chart's shapes.

    python -m tests.symbol_font

Every shape is one glyph on one private-use code point. The file lies there finished, since to make it
takes a fifth of a second, which every worker of a build would spend.
"""

from io import BytesIO

from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib.tables._g_l_y_f import Glyph

from packetgen.chart.shapes import NAMES, shape
from packetgen.chart.shapes_cut import Contour
from packetgen.chart.shapes_paper import CELL
from packetgen.chart.symbols import BLANK, FAMILY, code_point
from packetgen.program import PACKAGE

STORED = PACKAGE / "fonts" / "symbols.ttf"
_BORN = 3786912000  # 1 January 2024 in seconds since 1904: fixed, so that bytes repeat


def build_symbol_font() -> bytes:
    """The font as a TrueType file.

    One em is one chart cell: every glyph is 1000 units wide, the ascent is
    1000 and the descent 0, so that text set with `line-height: 1` and a
    font size of one cell fills the cells exactly. The same bytes every time.
    """
    # The space is for typesetters: they take the height of a line from it, and would borrow
    # it, and with it another line height, from another font.
    contours = {
        ".notdef": (),
        "space": (),
        "blank": (),
        **{name: shape(name).contours for name in NAMES},
    }
    builder = FontBuilder(CELL, isTTF=True)
    builder.setupGlyphOrder(list(contours))
    builder.setupCharacterMap(
        {ord(" "): "space", ord(BLANK): "blank", **{ord(code_point(name)): name for name in NAMES}}
    )
    builder.setupGlyf({name: _glyph(lines) for name, lines in contours.items()})
    builder.setupHorizontalMetrics({name: (CELL, _left(lines)) for name, lines in contours.items()})
    builder.setupHorizontalHeader(ascent=CELL, descent=0, lineGap=0)
    builder.setupNameTable(
        {
            "familyName": FAMILY,
            "styleName": "Regular",
            "uniqueFontIdentifier": f"{FAMILY} Regular",
            "fullName": FAMILY,
            "psName": "PottingSymbols-Regular",
            "version": "Version 1.000",
        }
    )
    builder.setupOS2(
        version=4,
        sTypoAscender=CELL,
        sTypoDescender=0,
        sTypoLineGap=0,
        usWinAscent=CELL,
        usWinDescent=0,
        fsSelection=0b11000000,  # regular; line height from the typo figures
        xAvgCharWidth=CELL,
    )
    builder.setupPost(isFixedPitch=1)
    builder.updateHead(created=_BORN, modified=_BORN, lowestRecPPEM=8)
    file = BytesIO()
    builder.save(file)
    return file.getvalue()


def _glyph(contours: tuple[Contour, ...]) -> Glyph:
    pen = TTGlyphPen(None)
    for contour in contours:
        pen.moveTo(contour[0])
        for point in contour[1:]:
            pen.lineTo(point)
        pen.closePath()
    return pen.glyph()


def _left(contours: tuple[Contour, ...]) -> int:
    return min((x for contour in contours for x, _ in contour), default=0)


if __name__ == "__main__":
    STORED.write_bytes(build_symbol_font())
