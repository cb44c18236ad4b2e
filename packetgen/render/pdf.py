"""Sets a document in the PDF engine: tagged, bookmarked, fonts embedded, for several papers at once.

Pages are laid out on the area that the papers share and centred on each, so all papers have the same
pages with the same numbers. The only module that knows the engine.
"""

import io
import logging
import os
from collections.abc import Mapping
from datetime import date, datetime, time
from functools import partial
from importlib.resources import files

import pydyf

from packetgen.render.chart_pages import ChartPage
from packetgen.render.faces import font_files
from packetgen.render.pdf_charts import add_charts

# ISO 216 (A4) and ANSI/ASME Y14.1 size A (Letter), mm.
PAPERS_MM: Mapping[str, tuple[float, float]] = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
_POINTS_PER_MM = 72 / 25.4
_VERSION = "1.7"
_OWN = "asset:"


class EngineComplaint(Exception):
    """The engine warned or failed; a packet with a warning is not published."""


def load_engine() -> None:
    """What takes a second at the first document, done beforehand."""
    import weasyprint  # noqa: F401


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
    # Takes a second to load, and only builds need it.
    from weasyprint import HTML, Attachment
    from weasyprint.urls import FatalURLFetchingError

    complaints = _Complaints()
    logger = logging.getLogger("weasyprint")
    logger.addHandler(complaints)
    result: dict[str, bytes] = {}
    try:
        laid_out = HTML(string=html, base_url="asset:", url_fetcher=_fetcher(assets)).render(
            pdf_variant="pdf/ua-1"
        )
        finisher = partial(
            _finish,
            charts=charts,
            page_mm=page_mm,
            papers_mm=papers_mm,
            identifier=identifier,
            result=result,
        )
        # The engine would write the document once more: into nothing.
        day = datetime.combine(dated, time())
        laid_out.write_pdf(
            _Nowhere(),
            finisher=finisher,
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
        raise EngineComplaint("; ".join(complaints.lines))
    return result


def _finish(
    laid_out: object,
    pdf: pydyf.PDF,
    charts: Mapping[str, ChartPage],
    page_mm: tuple[float, float],
    papers_mm: Mapping[str, tuple[float, float]],
    identifier: bytes,
    result: dict[str, bytes],
) -> None:
    """Adds what the engine cannot, then writes the document for each paper."""
    add_charts(laid_out, pdf, charts)
    _print_links(pdf)
    pages = [item for item in pdf.objects if _is_page(item)]
    pdf.objects = [
        _Baked.of(item) if isinstance(item, pydyf.Stream) else item for item in pdf.objects
    ]
    written_once = list(pdf.objects)
    for paper, size_mm in papers_mm.items():
        for page in pages:
            _set_paper(page, page_mm, size_mm)
        # The writer adds objects of its own and counts positions on: each paper starts afresh.
        pdf.objects, pdf.current_position = list(written_once), 0
        target = io.BytesIO()
        pdf.write(target, _VERSION, identifier, compress=True)
        result[paper] = target.getvalue()
    pdf.objects = written_once[:1]


class _Nowhere(io.RawIOBase):
    def write(self, data: bytes) -> int:  # type: ignore[override]
        return len(data)


class _Baked(pydyf.Stream):
    """A stream whose bytes are compressed once, though they are written for every paper."""

    @classmethod
    def of(cls, stream: pydyf.Stream) -> "_Baked":
        baked = cls()
        baked.number, baked.generation, baked.free = stream.number, stream.generation, stream.free
        baked.bytes = stream.data
        return baked

    @property
    def data(self) -> bytes:
        return self.bytes


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


def _is_page(item: pydyf.Object) -> bool:
    return isinstance(item, pydyf.Dictionary) and item.get("Type") == "/Page"


def _set_paper(
    page: pydyf.Dictionary, page_mm: tuple[float, float], size_mm: tuple[float, float]
) -> None:
    side, head = ((paper - common) / 2 for paper, common in zip(size_mm, page_mm))
    box = pydyf.Array(
        round(edge * _POINTS_PER_MM, 3)
        for edge in (-side, -head, page_mm[0] + side, page_mm[1] + head)
    )
    for name in ("MediaBox", "TrimBox", "BleedBox"):
        page[name] = box


def _print_links(pdf: pydyf.PDF) -> None:
    """Sets the flag that link areas may be printed (ISO 32000-1, 12.5.3): PDF/UA asks for it."""
    for item in pdf.objects:
        if isinstance(item, pydyf.Dictionary) and item.get("Subtype") == "/Link":
            item["F"] = 4
