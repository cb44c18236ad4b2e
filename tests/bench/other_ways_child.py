"""What `other_ways` does in processes of its own: prepare what all ways are handed, and two of the ways."""

import json
import pickle
import sys
from pathlib import Path


def prepare(folder: Path, name: str) -> None:
    """Leaves figures, picture, words, chart, faces and the spreadsheet in `folder`."""
    from packetgen.chart.editions import COLOUR
    from packetgen.chart.sheet import look_of
    from packetgen.digest import afresh
    from packetgen.model import BARE
    from packetgen.pipeline import jobs, proof  # noqa: F401 - jobs lets read-only mappings be pickled
    from packetgen.render.faces import font_files
    from packetgen.render.packet import packet, symbols_of
    from packetgen.render.pictures import cover_jpeg
    from packetgen.render.templates import environment
    from tests.bench.by_spreadsheet import write
    from tests.bench.packet_words import blocks
    from tests.bench.plain_pages import plain
    from tests.demo_patterns import CONTENT

    checked = proof(CONTENT)
    series, figures = next(
        (each.series, one)
        for each in checked.reckoned
        for one in each.figures
        if one.pattern.id == name
    )
    (folder / "figures.pickle").write_bytes(pickle.dumps((series, figures)))
    (folder / "cover.jpg").write_bytes(cover_jpeg(figures, afresh))
    for file, data in font_files().items():
        if "-ext" not in file:  # others would take these for the whole face
            (folder / ".fonts" / file).write_bytes(data)
    words = blocks(packet(series, figures, b"", environment()).html)
    (folder / "words.json").write_text(json.dumps(words), "utf-8")
    pages = plain(figures)
    (folder / "pages.json").write_text(json.dumps(pages), "utf-8")
    look = look_of(figures.pattern, symbols_of(figures), COLOUR.manner)
    cells = [
        [("", "") if mark == BARE else (look.cells[mark], look.symbols[mark]) for mark in row]
        for row in figures.pattern.grid.rows
    ]
    write(cells, pages["pages"][0]["cell"], words, folder, folder / "packet.xlsx")


def ours(folder: Path) -> None:
    from packetgen.pipeline import jobs  # noqa: F401 - reads read-only mappings back
    from packetgen.render.packet import packet
    from packetgen.render.pdf import PAPERS_MM, documents
    from packetgen.render.templates import environment

    series, figures = pickle.loads((folder / "figures.pickle").read_bytes())
    source = packet(series, figures, (folder / "cover.jpg").read_bytes(), environment())
    made = documents(
        source.html,
        source.assets,
        b"packet",
        source.charts,
        source.edition.page_mm,
        {"a4": PAPERS_MM["a4"]},
        source.attached,
        source.dated,
    )
    (folder / "ours.pdf").write_bytes(made["a4"])


def typst(folder: Path) -> None:
    from tests.bench.by_typst import draw_packet

    chart, words = (
        json.loads((folder / f"{name}.json").read_bytes()) for name in ("pages", "words")
    )
    (folder / "typst.pdf").write_bytes(draw_packet(chart, words, folder))


if __name__ == "__main__":
    task, where, *rest = sys.argv[1:]
    {"prepare": prepare, "ours": ours, "typst": typst}[task](Path(where), *rest)
