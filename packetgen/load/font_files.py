"""A font file that an author gives: opened, and asked whether its maker lets it be handed on.

The only module of the load layer that knows the font library, and it loads that only for a font.
"""

import io
import logging

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import said
from packetgen.model import FontFile

FONT_ENDINGS = (".ttf", ".otf", ".woff2")
# A page with its picture is to weigh less than 300 kB in all.
HEAVY_KB = 200

_UNITS_PER_EM = range(16, 16385)  # OpenType 1.9, head table
_NEEDED = ("head", "hhea", "hmtx", "maxp", "name", "post")
# Bits of OS/2.fsType (ISO/IEC 14496-22 and OpenType 1.9, OS/2 table).
_RESTRICTED, _PREVIEW_AND_PRINT, _EDITABLE = 0x0002, 0x0004, 0x0008
_NO_SUBSETTING, _BITMAPS_ONLY = 0x0100, 0x0200


def read_font(data: bytes, named: str, place: Place, problems: Problems) -> FontFile | None:
    """The font in `data`, not compressed; None where it cannot be read or may not be embedded.

    What is wrong is told at `place`, where the author named the file.
    """
    from fontTools.pens.basePen import NullPen
    from fontTools.ttLib import TTFont

    # The library tells of every record that it cannot read; an author reads the one problem below.
    logging.getLogger("fontTools").setLevel(logging.CRITICAL)
    try:
        font = TTFont(io.BytesIO(data), recalcTimestamp=False, recalcBBoxes=False)
        letters = frozenset(font.getBestCmap() or ())
        embedding = font["OS/2"].fsType
        for table in _NEEDED:
            font[table]  # read here, so that nothing fails when it is set
        # Records of the name table: its count stands in bytes 2 and 3; one that is broken is left out.
        names = int.from_bytes(font.reader["name"][2:4], "big")
        sound = font["head"].unitsPerEm in _UNITS_PER_EM and len(font["name"].names) == names
        glyphs = font.getGlyphSet()
        for glyph in font.getGlyphOrder():
            glyphs[glyph].draw(NullPen())
        font.flavor = None
        plain = io.BytesIO()
        font.save(plain)
    except Exception:  # the library raises all kinds of errors for a file that is no font
        letters, sound = frozenset(), False
    if not letters or not sound:
        problems.add(place, "font-unreadable", name=said(named))
        return None
    refused = _refused(embedding)
    if refused:
        problems.add(place, "font-embedding", name=said(named), refused=refused)
        return None
    if embedding & _PREVIEW_AND_PRINT and not embedding & _EDITABLE:
        problems.add(place, "font-print-only", name=said(named))
    if len(data) > HEAVY_KB * 1000:
        problems.add(
            place, "font-heavy", name=said(named), size=round(len(data) / 1000), limit=HEAVY_KB
        )
    # A font that comes uncompressed goes on byte for byte.
    return FontFile(named, data if data[:4] != b"wOF2" else plain.getvalue(), letters)


def _refused(embedding: int) -> str:
    """What the maker refuses, in words; '' where a packet and a site may carry the font.

    Of several levels the least strict holds (OpenType 1.9, fsType).
    """
    if embedding & _RESTRICTED and not embedding & (_PREVIEW_AND_PRINT | _EDITABLE):
        return "any embedding"
    if embedding & _BITMAPS_ONLY:
        return "embedding of outlines"
    if embedding & _NO_SUBSETTING:
        return "embedding of the letters in use alone"
    return ""
