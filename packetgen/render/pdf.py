"""Sets a document in the PDF engine: tagged, bookmarked, fonts embedded, for several papers at once.

Pages are laid out on the area that the papers share and centred on each, so all papers have the same
pages with the same numbers. A page that lies on its side is centred on the paper laid so. The only module that knows the engine.
"""

import ctypes.util
import gc
import io
import logging
import os
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from datetime import date, datetime, time
from functools import partial
from hashlib import md5
from importlib.resources import files

import pydyf

from packetgen.render.chart_pages import ChartPage
from packetgen.render.faces import font_files
from packetgen.render.pdf_charts import LaidOut, add_charts

# ISO 216 (A4) and ANSI/ASME Y14.1 size A (Letter), mm.
PAPERS_MM: Mapping[str, tuple[float, float]] = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
_POINTS_PER_MM = 72 / 25.4
_OWN = "asset:"
# Stand for the boxes of an upright and of a turned page until the paper is known, and are as long as any.
_UPRIGHT_BOX, _TURNED_BOX = (b"[" + sign * 46 + b"]" for sign in (b"@", b"="))
_CROSS_REFERENCES = b"<</Type /XRef"


class EngineComplaint(Exception):
    """The engine warned or failed, in its words, one string each; a packet with a warning is not published."""

    def __str__(self) -> str:
        return "\n".join(map(str, self.args))


def load_engine() -> None:
    """What takes long at the first document, done beforehand."""
    with _libraries_by_name():
        import weasyprint  # noqa: F401


@contextmanager
def _libraries_by_name() -> Iterator[None]:
    """The engine tries the names that its libraries have on any system. Python looks for a foreign one by
    starting a compiler (documentation of `ctypes.util.find_library`, on Linux), once for each name; the
    Linux names are among them, and need no search."""
    search = ctypes.util.find_library
    if sys.platform == "linux":
        ctypes.util.find_library = lambda name: None
    try:
        yield
    finally:
        ctypes.util.find_library = search


def documents(
    html: str,
    assets: Mapping[str, bytes],
    identifier: bytes,
    charts: Mapping[str, ChartPage],
    page_mm: tuple[float, float],
    papers_mm: Mapping[str, tuple[float, float]],
    attached: Mapping[str, bytes],
    dated: date,
) -> dict[str, bytes]:
    """One PDF for each paper, from one layout on pages of `page_mm`.

    `assets` are the files that the HTML may name as `asset:NAME`; nothing else is fetched. `charts`
    are painted where the HTML has an element of that id. `attached` files travel inside the document,
    with the date `dated`. Raises EngineComplaint in the engine's words.
    """
    _use_no_system_fonts()
    load_engine()
    from weasyprint import HTML, Attachment
    from weasyprint.urls import FatalURLFetchingError

    complaints = _Complaints()
    logger = logging.getLogger("weasyprint")
    logger.addHandler(complaints)
    written = io.BytesIO()
    day = datetime.combine(dated, time())
    try:
        with _nothing_collected():
            HTML(string=html, base_url="asset:", url_fetcher=_fetcher(assets)).write_pdf(
                written,
                finisher=partial(_finish, charts=charts),
                pdf_variant="pdf/ua-1",
                attachments=[
                    Attachment(
                        file_obj=io.BytesIO(data),
                        name=name,
                        description=name,
                        created=day,
                        modified=day,
                    )
                    for name, data in attached.items()
                ],
            )
    except FatalURLFetchingError as refused:  # no Exception, so that the engine lets it pass
        raise EngineComplaint(str(refused)) from refused
    finally:
        logger.removeHandler(complaints)
    if complaints.lines:
        raise EngineComplaint(*dict.fromkeys(complaints.lines))
    return {
        paper: _on_paper(written.getvalue(), identifier, page_mm, size_mm)
        for paper, size_mm in papers_mm.items()
    }


@contextmanager
def _nothing_collected() -> Iterator[None]:
    """The engine's million small objects all live until the document is done: looking through them for
    garbage again and again is a sixth of the work."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _finish(laid_out: LaidOut, pdf: pydyf.PDF, charts: Mapping[str, ChartPage]) -> None:
    """Adds what the engine cannot, and leaves open what differs from paper to paper."""
    add_charts(laid_out, pdf, charts)
    for place, item in enumerate(pdf.objects):
        if _is(item, "Type", "/Page"):
            pdf.objects[place] = _OpenPage(item)
        elif _is(item, "Subtype", "/Link"):
            item["F"] = 4  # may be printed (ISO 32000-1, 12.5.3): PDF/UA asks for it


def _is(item: pydyf.Object, key: str, value: str) -> bool:
    return isinstance(item, pydyf.Dictionary) and item.get(key) == value


class _OpenPage(pydyf.Dictionary):
    """A page whose paper is not known yet. Its boxes must not be hidden among compressed objects."""

    compressible = False

    def __init__(self, page: pydyf.Dictionary) -> None:
        left, top, right, bottom = page["MediaBox"]
        box = _TURNED_BOX if right - left > bottom - top else _UPRIGHT_BOX
        super().__init__(page | dict.fromkeys(("MediaBox", "TrimBox", "BleedBox"), box))
        self.number, self.generation, self.free = page.number, page.generation, page.free


def _on_paper(
    written: bytes, identifier: bytes, page_mm: tuple[float, float], size_mm: tuple[float, float]
) -> bytes:
    """The document with its pages in the middle of a paper, and with its name (ISO 32000-1, 14.4)."""
    set_out = written
    for left_open, page, size in (
        (_UPRIGHT_BOX, page_mm, size_mm),
        (_TURNED_BOX, page_mm[::-1], size_mm[::-1]),
    ):
        box = _box(page, size)
        set_out = set_out.replace(left_open, f"[{box:{len(left_open) - 2}}]".encode())
    contents = md5(set_out, usedforsecurity=False).hexdigest().encode()
    # The cross references stand last, so that nothing behind their beginning is counted.
    before, begins, after = set_out.rpartition(_CROSS_REFERENCES)
    name = b"/ID [" + pydyf.String(identifier).data + b" (" + contents + b")]"
    return before + begins + name + after


def _box(page_mm: tuple[float, float], size_mm: tuple[float, float]) -> str:
    """The edges of a paper in points, from the corner of the page in its middle."""
    side, head = ((whole - common) / 2 for whole, common in zip(size_mm, page_mm))
    edges_mm = (-side, -head, page_mm[0] + side, page_mm[1] + head)
    return " ".join(f"{edge * _POINTS_PER_MM:.3f}" for edge in edges_mm)


class _Complaints(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(record.getMessage())


def _fetcher(assets: Mapping[str, bytes]) -> object:
    from weasyprint.urls import FatalURLFetchingError, URLFetcher, URLFetcherResponse

    class OwnFilesOnly(URLFetcher):
        """Serves `asset:` names from memory and refuses all else."""

        def fetch(self, url: str, headers: object = None) -> URLFetcherResponse:
            name = url.removeprefix(_OWN)
            found = assets.get(name) or font_files().get(name)
            if found is None or not url.startswith(_OWN):
                raise FatalURLFetchingError(f"a packet may not fetch {url!r}")
            kind = {"svg": "image/svg+xml", "png": "image/png", "jpg": "image/jpeg"}
            content_type = kind.get(name.rpartition(".")[2], "application/octet-stream")
            return URLFetcherResponse(url, found, {"Content-Type": content_type})

    return OwnFilesOnly()


def _use_no_system_fonts() -> None:
    """Hides the machine's fonts: a letter that the project's own faces lack must look the same
    everywhere, not be borrowed from whatever is installed."""
    os.environ["FONTCONFIG_FILE"] = str(files("packetgen") / "fonts" / "fonts.conf")
