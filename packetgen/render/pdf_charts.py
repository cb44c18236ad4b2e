"""Puts painted chart pages into a document that the PDF engine has laid out: fonts, streams, tags.

The engine leaves an empty box with an anchor and a figure tag for each chart page. What is painted
there becomes the figure's content, so a screen reader hears its alternative text and nothing else.
Object and structure names are those of ISO 32000-1.
"""

from collections.abc import Mapping, Sequence
from typing import Protocol

import pydyf

from packetgen.chart.drawing import REPEAT_SHADE
from packetgen.render.chart_pages import ChartPage
from packetgen.render.chart_paint import FONTS, painted
from packetgen.render.text_face import Face, face

# The alternative text of a chart page begins with this.
CHART_ALT = "Chart page"
_POINTS_PER_MM = 72 / 25.4
_POINTS_PER_PX = 0.75  # of the engine's CSS pixels, 96 to the inch


class LaidOutPage(Protocol):
    """What is asked of the engine's page: its height and, by anchor, where boxes stand, in px."""

    height: float
    anchors: Mapping[str, tuple[float, ...]]


class LaidOut(Protocol):
    """What is asked of the engine's document."""

    pages: Sequence[LaidOutPage]


def add_charts(document: LaidOut, pdf: pydyf.PDF, charts: Mapping[str, ChartPage]) -> None:
    """Paint every chart page at its anchor. `document` is the engine's, for where things stand."""
    places = {
        anchor: (index, position)
        for index, page in enumerate(document.pages)
        for anchor, position in page.anchors.items()
        if anchor in charts
    }
    if not places:
        return
    by_reference = {item.reference: item for item in pdf.objects}
    numbers = {charts[anchor].sheet.tile.number: at[0] + 1 for anchor, at in places.items()}
    pages = [by_reference[reference] for reference in pdf.page_references]
    _add_resources(pdf, by_reference[pages[0]["Resources"]], by_reference)
    figures = {
        item["Pg"]: item
        for item in by_reference.values()
        if isinstance(item, pydyf.Dictionary)
        and item.get("S") == "/Figure"
        and item.get("Alt")
        and item["Alt"].string.startswith(CHART_ALT)
    }
    tags_of_page = _tags_by_page(pdf, by_reference)
    save = pydyf.Stream([b"q"], compress=False)
    pdf.add_object(save)
    for anchor, (index, (x_px, y_px, *_)) in places.items():
        page, figure = pages[index], figures[pages[index].reference]
        tags = tags_of_page[index]
        stream = pydyf.Stream(
            [
                b"Q",
                f"/Figure <</MCID {len(tags)}>> BDC q".encode(),
                _placed(document.pages[index], x_px, y_px),
                painted(charts[anchor], numbers),
                b"Q EMC",
            ],
            compress=True,
        )
        pdf.add_object(stream)
        figure["K"].append(len(tags))
        tags.append(figure.reference)
        page["Contents"] = pydyf.Array([save.reference, page["Contents"], stream.reference])


def _placed(page: LaidOutPage, x_px: float, y_px: float) -> bytes:
    """From the page's points, y upwards, to the box's millimetres, y downwards."""
    x, y = x_px * _POINTS_PER_PX, (page.height - y_px) * _POINTS_PER_PX
    return f"{_POINTS_PER_MM:.6f} 0 0 {-_POINTS_PER_MM:.6f} {x:.4f} {y:.4f} cm".encode()


def _tags_by_page(
    pdf: pydyf.PDF, by_reference: Mapping[bytes, pydyf.Object]
) -> dict[int, pydyf.Array]:
    """For each page the array of its marked contents' elements (ISO 32000-1, 14.7.4.4)."""
    root = by_reference[pdf.catalog["StructTreeRoot"]]
    numbers = by_reference[root["ParentTree"]]["Nums"]
    return {
        key: value
        for key, value in zip(numbers[::2], numbers[1::2], strict=True)
        if isinstance(value, pydyf.Array)
    }


def _add_resources(
    pdf: pydyf.PDF, resources: pydyf.Dictionary, by_reference: Mapping[bytes, pydyf.Object]
) -> None:
    shade = pydyf.Dictionary({"Type": "/ExtGState", "ca": REPEAT_SHADE})
    pdf.add_object(shade)
    resources["ExtGState"]["ChartShade"] = shade.reference
    fonts = by_reference[resources["Font"]]
    for file_name, name in FONTS.items():
        fonts[name.removeprefix("/")] = _font(pdf, face(file_name))


def _font(pdf: pydyf.PDF, of: Face) -> bytes:
    """A composite font whose character codes are the glyph numbers (ISO 32000-1, 9.7)."""
    file = pydyf.Stream([of.data], pydyf.Dictionary({"Length1": len(of.data)}), compress=True)
    pdf.add_object(file)
    to_unicode = pydyf.Stream([_to_unicode(of)], compress=True)
    pdf.add_object(to_unicode)
    descriptor = pydyf.Dictionary(
        {
            "Type": "/FontDescriptor",
            "FontName": f"/{of.name}",
            "Flags": 4,  # symbolic: codes are glyph numbers, not letters of a standard set
            "FontBBox": pydyf.Array(of.box),
            "ItalicAngle": 0,
            "Ascent": of.ascent,
            "Descent": of.descent,
            "CapHeight": of.ascent,
            "StemV": 80,
            "FontFile2": file.reference,
        }
    )
    pdf.add_object(descriptor)
    widths = pydyf.Array([round(advance * 1000 / of.per_em) for advance in of.advances])
    inner = pydyf.Dictionary(
        {
            "Type": "/Font",
            "Subtype": "/CIDFontType2",
            "BaseFont": f"/{of.name}",
            "CIDSystemInfo": pydyf.Dictionary(
                {
                    "Registry": pydyf.String("Adobe"),
                    "Ordering": pydyf.String("Identity"),
                    "Supplement": 0,
                }
            ),
            "FontDescriptor": descriptor.reference,
            "W": pydyf.Array([0, widths]),
            "CIDToGIDMap": "/Identity",
        }
    )
    pdf.add_object(inner)
    outer = pydyf.Dictionary(
        {
            "Type": "/Font",
            "Subtype": "/Type0",
            "BaseFont": f"/{of.name}",
            "Encoding": "/Identity-H",
            "DescendantFonts": pydyf.Array([inner.reference]),
            "ToUnicode": to_unicode.reference,
        }
    )
    pdf.add_object(outer)
    return outer.reference


def _to_unicode(of: Face) -> bytes:
    """Glyph number → character, so that the chart can be read back (ISO 32000-1, 9.10.3)."""
    pairs = sorted((number, char) for char, number in of.glyphs.items() if number)
    first = {number: char for number, char in reversed(pairs)}
    lines = [
        "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
        "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def",
        "/CMapName /Adobe-Identity-UCS def /CMapType 2 def",
        "1 begincodespacerange <0000> <ffff> endcodespacerange",
    ]
    entries = [
        f"<{number:04x}> <{char.encode('utf-16-be').hex()}>"
        for number, char in sorted(first.items())
    ]
    for start in range(0, len(entries), 100):  # a block may hold no more
        block = entries[start : start + 100]
        lines += [f"{len(block)} beginbfchar", *block, "endbfchar"]
    lines.append("endcmap CMapName currentdict /CMap defineresource pop end end")
    return "\n".join(lines).encode()
