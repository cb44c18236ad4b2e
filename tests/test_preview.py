"""`packetgen preview`: an author's pages follow what she saves, and nobody else sees them."""

import os
import shutil
import socket
import time
from pathlib import Path
from urllib.request import urlopen

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.pipeline import proof, public_files
from packetgen.preview.board import Board
from packetgen.preview.kept import Kept
from packetgen.preview.run import start
from packetgen.preview.server import served
from packetgen.render.templates import environment
from tests.content_builder import CHART, FERN, PATTERN, SERIES, TINY, build
from tests.previewing import Preview, previewing

STORY = f"{FERN}/story.md"


@pytest.fixture(scope="module")
def preview(tmp_path_factory):
    """A preview of the tiny folder, with all its pictures drawn."""
    folder = tmp_path_factory.mktemp("at-home")
    with previewing(build(folder / "content")) as running:
        running.page().settled()
        yield running


@pytest.fixture(autouse=True)
def _as_it_was(request):
    """Each test leaves the folder as it found it, and the preview knows of it."""
    yield
    if "preview" not in request.fixturenames:
        return
    running = request.getfixturevalue("preview")
    running.close_pages()
    changed = [path for path in TINY if not _is(running.content / path, TINY[path])]
    if changed:
        page = running.page()
        for path in changed:
            save(running, path, TINY[path])
        page.hears_of(lambda news: "alert" not in news["strip"] and shown(running, STORY))
        running.close_pages()


def _is(file: Path, text: str) -> bool:
    return file.is_file() and file.read_text("utf-8") == text


def shown(running: Preview, path: str) -> bool:
    return TINY[path].strip().encode() in running.get("/fern/")[1]


def save(running: Preview, path: str, text: str) -> None:
    file = running.content / path
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(text, "utf-8")


def states(folder: Path) -> dict[Path, tuple[int, int]]:
    """Every file and folder under the folder: when it was written, and its size."""
    return {p: (p.stat().st_mtime_ns, p.stat().st_size) for p in sorted(folder.rglob("*"))}


# --- pages follow the files ----------------------------------------------------------------------


def test_a_saved_story_is_on_the_page_and_every_open_page_hears_of_it(preview):
    one, other = preview.page(), preview.page()
    before = one.settled()
    assert other.settled() == before
    save(preview, STORY, "It grew behind the new tap.\n")
    news = one.hears()
    assert other.hears() == news
    assert news["version"] != before["version"]
    status, html, _ = preview.get("/fern/")
    assert status == 200
    assert b"It grew behind the new tap." in html
    assert f'data-version="{news["version"]}"'.encode() in html


def test_a_fault_is_told_where_it_stands_and_the_last_good_page_stays(preview):
    page = preview.page()
    good = page.settled()
    save(preview, PATTERN, TINY[PATTERN] + "colour: brick\n")
    line = len(TINY[PATTERN].splitlines()) + 1
    place = f"{preview.content}/{PATTERN}:{line}:1: "
    assert preview.err.until(place).startswith(f"{place}'colour' is not part of a pattern; ")
    news = page.hears()
    assert news["version"] == good["version"]
    assert place in news["strip"] and 'role="alert"' in news["strip"]
    assert "1 thing to mend." in news["strip"]
    status, html, _ = preview.get("/fern/")
    assert status == 200
    assert place.encode() in html and TINY[STORY].strip().encode() in html
    save(preview, PATTERN, TINY[PATTERN])
    mended = page.hears()
    assert mended == good
    assert "alert" not in preview.get("/fern/")[1].decode()
    assert preview.out.until("all is well again").startswith(f"{preview.content}/{PATTERN}: ")


def test_a_changed_chart_is_shown_before_its_picture_is_drawn_and_with_it_after(preview):
    page = preview.page()
    page.settled()
    save(preview, CHART, TINY[CHART].replace("rrbb", "bbrr"))
    first = page.hears()
    assert "Drawing pictures: 0 of " in first["strip"]
    assert page.settled()["version"] != first["version"]
    save(preview, CHART, TINY[CHART])
    back = page.hears()
    assert "Drawing" not in back["strip"], "the pictures of the chart as it was are kept"


def test_editors_may_save_by_renaming_and_leave_their_own_files_about(preview):
    page = preview.page()
    good = page.settled()
    folder = preview.content / FERN
    (folder / ".story.md.swp").write_bytes(b"\0\1")
    (folder / "story.md~").write_text("It grew.\n")
    with pytest.raises(TimeoutError):
        page.hears(1.5)
    page = preview.page()
    assert page.hears() == good
    beside = folder / "_story.next"
    beside.write_text("It grew over the tap.\n", "utf-8")
    os.replace(beside, folder / "story.md")
    page.hears_of(lambda news: news["version"] != good["version"])
    assert b"It grew over the tap." in preview.get("/fern/")[1]
    for name in (".story.md.swp", "story.md~"):
        (folder / name).unlink()


def test_a_file_that_is_written_bit_by_bit_comes_out_whole(preview):
    page = preview.page()
    page.settled()
    text = TINY[PATTERN].replace("A fern uncurls.", "A fern uncurls slowly.")
    with (preview.content / PATTERN).open("w", encoding="utf-8") as file:
        for start in range(0, len(text), 200):
            file.write(text[start : start + 200])
            file.flush()
            time.sleep(0.1)
    page.hears_of(lambda news: b"uncurls slowly" in preview.get("/fern/")[1])
    assert "Traceback" not in "".join(preview.err.all)


def test_a_deleted_folder_is_a_fault_until_it_is_back(preview):
    page = preview.page()
    good = page.settled()
    aside = preview.content.with_name("aside")
    preview.content.rename(aside)
    gone = page.hears_of(lambda news: "alert" in news["strip"])
    assert gone["version"] == good["version"]
    assert preview.get("/fern/")[0] == 200
    shutil.copytree(aside, preview.content)
    assert page.hears_of(lambda news: "alert" not in news["strip"])
    save(preview, STORY, "It grew again.\n")
    page.hears_of(lambda news: b"It grew again." in preview.get("/fern/")[1])
    shutil.rmtree(aside)
    assert "Traceback" not in "".join(preview.err.all)


def test_own_templates_are_followed_too_once_there_are_any(preview):
    page = preview.page()
    page.settled()
    own = preview.content.parent / "templates" / "site" / "404.html"
    own.parent.mkdir(parents=True)
    own.write_text("<body><p>Nothing grows here.</p></body>")
    page.hears_of(lambda news: b"Nothing grows here." in preview.get("/nowhere")[1])
    own.write_text("<p>\n{% if %}</p>")
    news = page.hears_of(lambda news: "alert" in news["strip"])
    assert "templates/site/404.html:2:1: " in news["strip"]
    assert b"Nothing grows here." in preview.get("/nowhere")[1]
    shutil.rmtree(own.parent.parent)
    page.hears_of(lambda news: b"Nothing grows here." not in preview.get("/nowhere")[1])


def test_nothing_is_written(preview):
    home = preview.content.parent
    before = states(home)
    page = preview.page()
    page.settled()
    for path in ("/", "/fern/", "/fern/share.png", "/nowhere"):
        preview.get(path)
    assert states(home) == before
    assert {path.name for path in home.iterdir()} == {"content"}


# --- the pages are those of the site -------------------------------------------------------------


def test_pages_and_their_parts_come_with_their_kinds(preview):
    kinds = {
        "/": "text/html; charset=utf-8",
        "/fern/index.html": "text/html; charset=utf-8",
        "/site.css": "text/css; charset=utf-8",
        "/fern/share.png": "image/png",
        "/favicon.svg": "image/svg+xml",
        "/calendar.ics": "text/calendar; charset=utf-8",
        "/~preview/follow.js": "text/javascript; charset=utf-8",
        "/~preview/strip.css": "text/css; charset=utf-8",
    }
    for path, kind in kinds.items():
        status, data, headers = preview.get(path)
        assert (status, headers["Content-Type"]) == (200, kind), path
        assert data and headers["Cache-Control"] == "no-store"
        assert headers["X-Content-Type-Options"] == "nosniff"


def test_a_page_that_links_to_its_folder_arrives_at_its_page(preview):
    status, _, headers = preview.get("/fern")
    assert (status, headers["Location"]) == (301, "/fern/")
    assert preview.get("/fern/?from=a-letter")[0] == 200


def test_the_head_of_an_answer_can_be_asked_for_alone(preview):
    status, data, headers = preview.get("/fern/", "HEAD")
    assert (status, data) == (200, b"")
    assert int(headers["Content-Length"]) == len(preview.get("/fern/")[1])


def test_what_is_added_to_a_page_is_no_part_of_the_site(preview):
    """The strip and its script stand in the page that is served, and nowhere in a site that is built."""
    picture = preview.get("/fern/mounted-480.jpg")[1]
    built = public_files(proof(preview.content), environment(), keep=lambda name, make: picture)
    pages = {
        path.removeprefix("site/"): html for path, html in built.items() if path.endswith(".html")
    }
    assert len(pages) > 3 and not any("preview" in path for path in built)
    board = Board("a")
    server = served(board, Kept(), 0)
    board.show(pages, advice=("a.md:1:1: advice: rest",))
    for path, html in pages.items():
        assert b"preview" not in html, path
        with urlopen(server.address + path) as answer:
            shown = answer.read()
        start = shown.index(b'<link rel="stylesheet" href="/~preview/')
        end = shown.rindex(b"</script>") + len(b"</script>")
        assert b"advice: rest" in shown[start:end]
        assert shown[:start] + shown[end:] == html, path
    server.close()


# --- and for this computer alone -----------------------------------------------------------------


def test_it_listens_on_loopback_and_nowhere_else(preview):
    """127.0.0.2 is this machine as well, but another of its addresses (RFC 1122, 3.2.1.3)."""
    others = {"127.0.0.2"}
    others |= {
        info[4][0] for info in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)
    }
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as line:
        line.connect(("192.0.2.1", 9))  # sends nothing; says from which address it would be sent
        others.add(line.getsockname()[0])
    with socket.create_connection(("127.0.0.1", preview.port), timeout=5):
        pass
    for other in others - {"127.0.0.1"}:
        with pytest.raises(OSError):
            socket.create_connection((other, preview.port), timeout=5).close()


@pytest.mark.parametrize(
    "host",
    [
        "evil.example",
        "evil.example:80",
        "127.0.0.1.evil.example",
        "localhost@evil.example",
        "",
        "[",
    ],
)
def test_a_name_that_was_made_to_lead_here_is_refused(preview, host):
    for path in ("/", "/fern/", "/~preview/events", "/~preview/follow.js"):
        status, data, _ = preview.get(path, Host=host)
        assert (status, data) == (403, b"This is served to this computer alone.\n")


@pytest.mark.parametrize(
    "request_text",
    [
        "GET / HTTP/1.1\r\nConnection: close\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: localhost\r\nHost: evil.example\r\nConnection: close\r\n\r\n",
        "GET http://evil.example/ HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
    ],
)
def test_a_request_that_does_not_say_whom_it_asks_is_refused(preview, request_text):
    assert preview.said_to(request_text).startswith(b"HTTP/1.1 403 ")


@pytest.mark.parametrize("host", ["localhost", "127.0.0.1", "[::1]", "LOCALHOST"])
def test_this_computer_may_be_called_by_any_of_its_own_names(preview, host):
    assert preview.get("/", Host=f"{host}:{preview.port}")[0] == 200


@pytest.mark.parametrize(
    "path",
    [
        "/../content/threads/moss.yaml",
        "/..%2f..%2fcontent%2fthreads%2fmoss.yaml",
        "/%2e%2e/content/threads/moss.yaml",
        "/fern/../../content/threads/moss.yaml",
        "//etc/passwd",
        "/etc/passwd",
        "/~preview/../rounds.py",
        "/~preview/rounds.py",
        "/%00",
        "/fern\\..\\..\\content",
    ],
)
def test_no_path_leads_out_of_the_site(preview, path):
    answer = preview.said_to(f"GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
    assert answer.startswith(b"HTTP/1.1 404 ")
    head, _, body = answer.partition(b"\r\n\r\n")
    assert body == preview.get("/nowhere")[1]


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE", "PATCH", "OPTIONS"])
def test_pages_are_only_looked_at(preview, method):
    status, _, headers = preview.get("/", method)
    assert (status, headers["Allow"]) == (405, "GET, HEAD")


# --- beginning and ending ------------------------------------------------------------------------


def test_a_folder_with_a_fault_from_the_start_is_shown_once_it_is_mended(tmp_path):
    content = build(tmp_path / "content", {SERIES: ("finish: shelf", "finish: shelv")})
    with previewing(content) as running:
        page = running.page()
        news = page.hears_of(lambda news: "alert" in news["strip"])
        assert news["version"] == ""
        status, html, _ = running.get("/fern/")
        assert status == 503
        assert b"There is nothing to show yet." in html and b"series.yaml:" in html
        save(running, SERIES, TINY[SERIES])
        page.hears_of(lambda news: news["version"])
        assert running.get("/fern/")[0] == 200
        assert running.interrupt() == 0
        assert running.out.until("ended") == "The preview has ended.\n"
        assert "Traceback" not in "".join(running.err.all)


def test_ctrl_c_ends_it_well_at_any_moment(tmp_path):
    """While it reads, while it draws, with pages open."""
    content = build(tmp_path / "content")
    for wait_s in (0.0, 1.0):
        with previewing(content) as running:
            page = running.page()
            page.hears()
            time.sleep(wait_s)
            assert running.interrupt() == 0
            running.out.until("The preview has ended.")
            assert "Traceback" not in "".join(running.err.all)


def test_a_port_in_use_is_one_plain_line(tmp_path):
    content = build(tmp_path / "content")
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        ended = CliRunner().invoke(
            main, ["preview", "--content", str(content), "--port", str(port)]
        )
    assert ended.exit_code == 2 and isinstance(ended.exception, SystemExit)
    assert len(ended.stderr.splitlines()) == 1 and f"port {port}" in ended.stderr
    assert ended.stdout == ""


@pytest.mark.parametrize("day", ["tomorrow", "2026-02-30"])
def test_a_day_that_is_none_is_wrong_usage(day):
    ended = CliRunner().invoke(main, ["preview", "--as-of", day])
    assert ended.exit_code == 2 and "; write for example 2027-01-15" in ended.stderr


def test_previews_run_side_by_side_at_a_port_and_for_a_day_of_choice(preview):
    """Without a day an author sees all of her patterns, released or not; with one what visitors will see."""
    with socket.create_server(("127.0.0.1", 0)) as free:
        port = free.getsockname()[1]
    words = ("--port", str(port), "--as-of", "2026-12-24")
    with previewing(preview.content, *words) as second:
        assert second.port == port != preview.port
        second.page().hears_of(lambda news: news["version"])
        html = second.get("/fern/")[1]
    assert b"Fern by the Tap" in html
    assert TINY[STORY].strip().encode() not in html
    assert TINY[STORY].strip().encode() in preview.get("/fern/")[1]


def test_a_preview_takes_another_port_where_its_usual_one_is_taken():
    with socket.create_server(("127.0.0.1", 0)) as taken:
        server = start(None, taken.getsockname()[1])
        assert server.server_port != taken.getsockname()[1]
        server.close()
