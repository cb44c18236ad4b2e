"""A build of the demo: everything is there, nothing is given away, and the bytes are the same again."""

import json
import os
import struct
import subprocess
import sys
import time
import zipfile

import pytest

from packetgen.record import ISSUED, SIGNS
from packetgen.render.pdf import PAPERS_MM
from packetgen.render.site_pictures import SHARE_SIZES_PX
from tests.content_builder import PATTERN, TINY
from tests.content_builder import build as write_content
from tests.demo_patterns import RELEASED
from tests.running import meddling
from tests.test_builds import TWO
from tests.test_packet import PATTERNS, SERIES, author_rows
from tests.test_write import tree

pytestmark = pytest.mark.slow


def test_a_packet_on_both_papers_for_each_pattern_a_site_and_a_ledger(built):
    names = set(tree(built))
    for name in PATTERNS:
        for ending in ("-letter.pdf", "-a4.pdf", ".zip"):
            assert f"packets/{SERIES}/{name}{ending}" in names
        assert f"site/{name}/index.html" in names
        assert f"site/{name}/share.png" in names
        for ending in ("-wide.png", "-square.png", "-upright.png"):
            assert f"share/{SERIES}/{name}{ending}" in names
        for ending in ("-listing.txt", "-short-post.txt", "-long-post.txt"):
            assert f"share/{SERIES}/{name}{ending}" in names
        assert f"ledger/{SERIES}/{name}.json" in names
    assert {"site/index.html", "site/404.html", "site/finishing-piece.html"} <= names
    sold = [name for name in names if name.endswith(".pdf") and name.startswith("packets/")]
    assert len(sold) == 2 * len(PATTERNS) == 16


def test_only_what_is_given_away_has_its_packet_on_the_site(demo, built):
    given = {
        figures.pattern.id
        for figures in demo.reckoned[0].figures
        if "packet" in figures.pattern.given_away
    }
    assert given == {"glass-cloche"}
    parts = {f"{SERIES}-parts-{paper}.pdf" for paper in PAPERS_MM}  # of the finishing piece
    paper = {path for path in tree(built / "site") if path.endswith((".pdf", ".zip"))}
    assert parts < paper
    handed_out = paper - parts
    assert handed_out == {f"{name}/{name}-{paper}.pdf" for name in given for paper in PAPERS_MM}
    for path in handed_out:
        sold = built / "packets" / SERIES / path.rpartition("/")[2]
        assert (built / "site" / path).read_bytes() == sold.read_bytes()


def test_a_zip_holds_both_papers(built):
    for name in PATTERNS:
        with zipfile.ZipFile(built / "packets" / SERIES / f"{name}.zip") as archive:
            assert archive.namelist() == [f"{name}-letter.pdf", f"{name}-a4.pdf"]
            for inner in archive.namelist():
                assert archive.read(inner) == (built / "packets" / SERIES / inner).read_bytes()


def test_share_pictures_have_the_size_their_pages_promise(built):
    """A PNG tells its size in its first chunk (W3C PNG specification, IHDR)."""
    for path in [*(built / "share" / SERIES).glob("*.png"), *(built / "site").rglob("share*.png")]:
        head = path.read_bytes()[:24]
        assert head[:8] == b"\x89PNG\r\n\x1a\n"
        shape = next((one for one in ("square", "upright") if one in path.name), "wide")
        assert struct.unpack(">II", head[16:24]) == SHARE_SIZES_PX[shape]


def test_no_public_text_file_holds_a_row_of_a_chart_that_is_sold(demo, built):
    """Rows of at least eight stitches, as the author wrote them; and no private-use symbol at all."""
    figures = demo.reckoned[0].figures
    sold = [of.pattern.id for of in figures if not of.pattern.given_away]
    needles = {row.strip(".") for name in sold for row in author_rows(name)}
    needles = {row for row in needles if len(row) >= 8}
    assert len(needles) > 100
    for folder in ("site", "share"):
        for path, data in tree(built / folder).items():
            assert not path.endswith((".zip", ".json"))
            if path.endswith((".html", ".css", ".js", ".svg", ".txt", ".xml", ".atom", ".ics")):
                text = data.decode("utf-8")
                assert not [row for row in needles if row in text], path
                assert not any(0xE000 <= ord(char) <= 0xF8FF for char in text), path


def test_the_listing_says_what_a_buyer_asks(built):
    text = (built / "share" / SERIES / "foxglove-can-listing.txt").read_text("utf-8")
    assert "Chart: 73 × 82 stitches" in text
    assert "Pipit Aida 14: 5.21 × 5.86 in (13.2 × 14.9 cm)" in text
    assert "Letter and A4" in text


def test_the_ledger_is_json_with_every_figure(built):
    data = json.loads((built / "ledger" / SERIES / "squash-barrow.json").read_text("utf-8"))
    parts = {"$schema", "ledger", "pattern", "assumptions", "formulas", "figures", "character_map"}
    assert set(data) == parts
    of_cloths = [entry for entry in data["figures"] if entry["figure"] == "cell"]
    assert len({entry["of"]["cloth"] for entry in of_cloths if "cloth" in entry["of"]}) == 5
    bought = [entry for entry in data["figures"] if entry["figure"] == "to buy"]
    assert len({entry["of"]["set"] for entry in bought}) == 2
    assert (built / "ledger" / SERIES / data["$schema"]).is_file()


# Every process of Python finds the clocks some four hundred days on.
ANOTHER_DAY = """
import datetime, time
LATER_S = 400.3 * 86400
for name, unit in (("time", 1), ("time_ns", 1_000_000_000)):
    setattr(time, name, lambda real=getattr(time, name), unit=unit: real() + type(real())(LATER_S * unit))
for name in ("localtime", "gmtime"):
    real = getattr(time, name)
    setattr(time, name, lambda at=None, real=real: real(time.time() if at is None else at))
class Kind(type):
    def __instancecheck__(cls, one):
        return isinstance(one, cls.__mro__[1])
class Date(datetime.date, metaclass=Kind):
    today = classmethod(lambda cls: cls.fromtimestamp(time.time()))
class DateTime(datetime.datetime, metaclass=Kind):
    now = classmethod(lambda cls, tz=None: cls.fromtimestamp(time.time(), tz))
    today = classmethod(lambda cls: cls.fromtimestamp(time.time()))
    utcnow = classmethod(lambda cls: cls.utcfromtimestamp(time.time()))
datetime.date, datetime.datetime = Date, DateTime
"""


def test_the_clocks_of_another_day_are_believed(tmp_path):
    """Or else the next test would show less than it says."""
    code = "import datetime, time; print(time.time(), datetime.datetime.now().timestamp())"
    facts = os.environ | meddling(tmp_path, ANOTHER_DAY)
    said = subprocess.run(
        [sys.executable, "-c", code], env=facts, capture_output=True, text=True, check=True
    )
    one, other = map(float, said.stdout.split())
    assert abs(one - other) < 1 and 399 < (one - time.time()) / 86400 < 401


def test_the_same_input_gives_the_same_bytes(tmp_path):
    """Another process, folder, working folder, time zone, locale, hash seed, umask and number of workers, and
    another day on the clocks and on the files."""
    given = TWO | {PATTERN: without_counters(TINY[PATTERN]) + "given_away: [chart, packet]\n"}
    made = []
    for name, zone, seed, workers, umask, clock in (
        ("one", "UTC", "1", 1, 0o022, ""),
        ("another place", "Pacific/Chatham", "77", 2, 0o077, ANOTHER_DAY),
    ):
        content, into = write_content(tmp_path / name / "content", given), tmp_path / name / "out"
        if clock:
            for file in content.rglob("*"):
                os.utime(file, (86400 * 9000, 86400 * 9001))
        facts = {"PYTHONHASHSEED": seed, "TZ": zone, "LC_ALL": "C.UTF-8" if seed == "1" else "C"}
        subprocess.run(
            [
                *(sys.executable, "-m", "packetgen", "build", "--content", content, "--into", into),
                *("--as-of", RELEASED.isoformat(), "--workers", str(workers)),
            ],
            check=True,
            capture_output=True,
            cwd=tmp_path / name,
            env=os.environ | facts | meddling(tmp_path / name / "meddling", clock),
            umask=umask,
        )
        made.append(tree(into))
        del made[-1][SIGNS]  # what a disk says of its own files
    first, second = made
    remembered = [json.loads(one.pop(ISSUED)) for one in made]
    for one in (of for issued in remembered for of in issued.values()):
        del one["ahead"]  # whether the day that was built for was there yet, a clock says
    assert remembered[0] == remembered[1] and len(remembered[0]) == 2
    assert len(first) > 70 and list(first) == list(second)
    assert [path for path in first if first[path] != second[path]] == []
    kinds = {path.rpartition(".")[2] for path in first}
    assert {"pdf", "png", "jpg", "html", "zip", "ics", "json", "atom"} <= kinds


def without_counters(text: str) -> str:
    """A pattern that nobody sells."""
    start, end = text.index("sold_at:"), text.index("revisions:")
    return text[:start] + text[end:]
