"""What an author gets who brings in a design: a chart and a key that pass proof, or one line that says
what is wrong with her file. Nothing of hers is lost."""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

import re
import shlex
import struct
import zlib
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PIL import Image

from packetgen.bring.codes import Codes
from packetgen.cli import main
from packetgen.model import Colour
from packetgen.pipeline import proof
from tests.content_builder import (
    CHART,
    FERN,
    PATTERN,
    TINY,
    build,
    drawn_freely,
    half_seen,
    noise,
    picture,
    picture_that_claims,
)

BRICK, PEAT, LEAF = "#a04030", "#6b503a", "#4f7942"
CLEAR = (0, 0, 0, 0)


@pytest.fixture
def desk(tmp_path, monkeypatch):
    """An author's folder with the tiny content in it; the terminal stands in it."""
    build(tmp_path / "content")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*words: str, code: int = 0):
    result = CliRunner().invoke(main, ["bring", *words])
    if result.exception and not isinstance(result.exception, SystemExit):
        raise result.exception
    assert result.exit_code == code, result.output
    return result


def files(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def rows(path: Path) -> list[str]:
    return [line for line in path.read_text("utf-8").splitlines() if not line.startswith("#")]


# --- looking only ---


def test_without_a_place_to_go_nothing_is_written(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, CLEAR]]))
    before = files(desk)
    said = run("design.png", "--threads", "moss").stdout
    assert files(desk) == before
    assert "E2 brick" in said and "K4 peat" in said and "07" not in said
    assert "3 × 1 stitches, 2 of them worked, in 2 colours" in said
    assert "Nothing is written yet" in said


def test_the_look_shows_the_file_and_the_chart_side_by_side(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT], [LEAF, CLEAR]]))
    run("design.png", "--threads", "moss", "--look", "look.png")
    look = Image.open(desk / "look.png").convert("RGB")
    colours = {f"#{r:02x}{g:02x}{b:02x}" for _, (r, g, b) in look.getcolors(1 << 20)}
    assert {BRICK, PEAT, LEAF} <= colours
    half = look.width // 2
    for side in (
        look.crop((0, 0, half, look.height)),
        look.crop((half, 0, look.width, look.height)),
    ):
        assert len(side.getcolors(1 << 20)) >= 5


# --- into a pattern ---


def test_where_no_thread_comes_near_the_file_of_the_card_is_named(desk):
    """Sky and lemon are far from brick, peat and fern; with brick beside them, some colour is near."""
    advice = "No colour of Moss Stranded comes near. Add your thread's colours to\n  content/threads/moss.yaml."
    (desk / "sky.png").write_bytes(picture([["#30a0f0", "#fff060"]]))
    assert advice in run("sky.png", "--threads", "moss").output
    (desk / "brick.png").write_bytes(picture([["#30a0f0", "#fff060", BRICK]]))
    assert "comes near" not in run("brick.png", "--threads", "moss").output


def test_a_design_comes_into_a_pattern_and_passes_proof(desk):
    """Both thread sets get their numbers; the lines that the old chart had are dropped as was said."""
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, LEAF], [LEAF, LEAF, CLEAR]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    checked = proof(desk / "content")
    assert checked.sound
    (figures,) = checked.reckoned[0].figures
    assert figures.pattern.grid.rows == ("rkf", "ff.")
    threads = {
        line.mark: tuple(colour.number for of in line.threads.values() for colour in of)
        for line in figures.pattern.key
    }
    assert threads == {"r": ("E2", "10"), "k": ("K4", "12"), "f": ("07", "14")}


def test_the_old_files_are_kept_and_never_written_over(desk):
    for number, colour in enumerate((LEAF, PEAT), 1):
        (desk / "design.png").write_bytes(picture([[colour] * number]))
        said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
        assert "The old one is kept: " in said
        assert "What is kept so is never read" in said
    folder = desk / "content" / FERN
    assert (folder / "_before-chart.txt").read_text() == TINY[CHART]
    assert (folder / "_before-pattern.yaml").read_text() == TINY[PATTERN]
    assert rows(folder / "_before-2-chart.txt") == ["f"]
    assert rows(folder / "chart.txt") == ["pp"]
    assert proof(desk / "content").sound


def test_a_chart_that_is_there_stays_unless_its_author_says_so(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT]]))
    before = files(desk)
    there = f"content/{CHART} is there already; --replace exchanges it and keeps the old one"
    said = run("design.png", "--pattern", "fern", code=2)
    assert there in said.stderr and said.stdout == "", "nothing comes before it"
    assert files(desk) == before
    said = run("design.png", "--pattern", "fern", "--look", "look.png", code=2)
    assert there in said.stderr and "2 × 1 stitches" in said.stdout


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (("--pattern", "fern"), 2),  # a chart is there
        (("--pattern", "fern", "--replace"), 1),  # whose backstitch would hang in the air
        (("--threads", "moss", "--into", "old"), 2),  # a folder that has one
    ],
)
def test_of_what_is_refused_no_look_is_written_either(desk, words, code):
    (desk / "old").mkdir()
    (desk / "old" / "chart.txt").write_text("k\n")
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT]]))
    before = files(desk)
    run("design.png", *words, "--look", "look.png", code=code)
    assert files(desk) == before


def test_where_the_look_cannot_be_written_nothing_else_is(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, LEAF], [LEAF, LEAF, CLEAR]]))
    before = files(desk)
    result = CliRunner().invoke(
        main,
        ["bring", "design.png", "--pattern", "fern", "--replace", "--drop-lines"]
        + ["--look", "no-such-folder/look.png"],
    )
    assert result.exception is not None
    assert files(desk) == before


def test_lines_in_a_mark_that_the_new_chart_was_told_to_have_are_lines_of_the_new_chart(desk):
    """She looked first, saw 'f' for fern, and wrote her backstitch in it before the key had it."""
    pattern = desk / "content" / PATTERN
    text = pattern.read_text("utf-8")
    start, end = text.index("backstitch:"), text.index("credits:")
    line = 'backstitch:\n  - {colour: f, path: "1,1 2,1"}\n'
    pattern.write_text(text[:start] + line + text[end:], "utf-8")
    (desk / "design.png").write_bytes(picture([["#4f7942", PEAT]]))
    said = run("design.png", "--pattern", "fern", "--replace").stdout
    assert "\nf  07 fern " in said
    assert "colour: f" in pattern.read_text("utf-8")


def test_lines_that_would_hang_in_the_air_are_told_and_nothing_is_written(desk):
    """The backstitch of the old chart needs a larger one."""
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT]]))
    before = files(desk)
    said = run("design.png", "--pattern", "fern", "--replace", code=1).stderr
    assert (
        f"content/{PATTERN}:" in said
        and "--drop-lines takes away what belongs to the old chart: " in said
    )
    assert "nothing was written" in said
    assert files(desk) == before


def test_only_the_key_of_a_pattern_is_exchanged(desk):
    """Remarks, order and everything else stay as they were written, and so does every line that is
    still stitched with."""
    text = (
        TINY[PATTERN]
        .replace("key:\n", "# what it is stitched with\nkey:\n  # of the pot\n")
        .replace("backstitch:", "# the outline\nbackstitch:")
    )
    (desk / "content" / PATTERN).write_text(text)
    (desk / "design.png").write_bytes(
        picture([[BRICK, LEAF, BRICK, LEAF], [PEAT, LEAF, CLEAR, CLEAR]])
    )
    run("design.png", "--pattern", "fern", "--replace")
    line = '  b: {moss: [E2, "07"], spool: ["10", "14"]}\n'
    new = '  f: {moss: "07", spool: "14"}   # fern\n'
    assert (desk / "content" / PATTERN).read_text() == text.replace(line, new)
    assert rows(desk / "content" / CHART) == ["rfrf", "kf.."]


def test_what_remarks_offer_goes_with_the_mark_that_it_is_offered_for(desk):
    """Where 'r' has gone, or its sign stands for another thread, a line with it would only mislead."""
    start = TINY[PATTERN].index("backstitch:")
    head = TINY[PATTERN][:start]
    gone = (
        "# Instead of r, worked in half stitches:\n# these lean.\n"
        "#  r: {moss: E2, stitch: half}\n"
        "# A stitch over several squares.\n#long_stitch:\n#  - {colour: 'r', path: \"1,1 1,2\"}\n"
        "#close_ups:\n#  - at: 1,1\n#    rows: |\n#      kr\n#      ..\n"
    )
    stays = (
        "# Of my own, for 'r: {'.\n\n"
        '# Instead of k, a blend.\n#  "k": {moss: [K4, "07"]}\n'
        "# A way to sell it.\n#sold_at: [{name: r, url: https://example.org/}]\n"
    )
    (desk / "content" / PATTERN).write_text(head + gone + stays + TINY[PATTERN][start:])
    (desk / "design.png").write_bytes(picture([[PEAT, LEAF, PEAT]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    text = (desk / "content" / PATTERN).read_text()
    assert stays in text
    assert "Instead of r" not in text and "several squares" not in text and "kr" not in text
    assert proof(desk / "content").sound


def test_a_key_between_brackets_is_understood(desk):
    start, end = TINY[PATTERN].index("key:\n"), TINY[PATTERN].index("backstitch:")
    key = 'key: {r: {moss: E2, spool: "10"}, k: {moss: K4, spool: "12"},\n  b: {moss: [E2, "07"], spool: ["10", "14"]}}\n'
    (desk / "content" / PATTERN).write_text(TINY[PATTERN][:start] + key + TINY[PATTERN][end:])
    (desk / "design.png").write_bytes(
        picture([[BRICK, LEAF, BRICK, LEAF], [PEAT, LEAF, CLEAR, CLEAR]])
    )
    run("design.png", "--pattern", "fern", "--replace")
    checked = proof(desk / "content")
    assert checked.sound and [one.mark for one in checked.reckoned[0].figures[0].pattern.key] == [
        "r",
        "k",
        "f",
    ]


@pytest.mark.parametrize("ends", [b"\n", b"\r\n"])
def test_line_ends_stay_those_of_the_author(desk, ends):
    path = desk / "content" / PATTERN
    path.write_bytes(TINY[PATTERN].encode().replace(b"\n", ends))
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    data = path.read_bytes()
    assert data.count(b"\n") == data.count(ends) > 10
    assert proof(desk / "content").sound


def test_a_set_that_is_matched_by_the_tool_gets_no_numbers(desk):
    text = TINY[PATTERN].replace(
        "thread_sets: [moss, spool]\n", "thread_sets: [moss, spool]\nmatched: {spool: moss}\n"
    )
    (desk / "content" / PATTERN).write_text(text)
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    assert '  f: {moss: "07"}   # fern\n' in (desk / "content" / PATTERN).read_text()
    assert proof(desk / "content").sound


def test_a_chart_of_pixels_gives_way_to_one_of_text(desk):
    folder = desk / "content" / FERN
    (folder / "chart.txt").unlink()
    (folder / "chart.png").write_bytes(picture([[BRICK, PEAT], [PEAT, PEAT]]))
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    checked = proof(desk / "content")
    assert checked.sound and checked.reckoned[0].figures[0].pattern.grid.rows == ("f",)
    assert (folder / "chart.png").exists() and "chart: " in (folder / "pattern.yaml").read_text()


def test_kept_symbols_of_marks_that_went_go_too(desk):
    folder = desk / "content" / FERN
    (folder / "symbols.yaml").write_text('symbols:\n  "r": heart\n  "k": disc\n')
    (desk / "design.png").write_bytes(picture([[PEAT, LEAF]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    assert (folder / "symbols.yaml").read_text() == 'symbols:\n  "k": disc\n'
    assert [str(one) for one in proof(desk / "content").problems if "symbol" in one.code] == []


def test_the_same_design_again_changes_nothing(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, LEAF], [LEAF, LEAF, CLEAR]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    before = files(desk)
    said = run("design.png", "--pattern", "fern", "--replace").stdout
    assert "nothing had to be written" in said and files(desk) == before


def test_the_list_at_the_head_of_a_chart_names_the_marks_that_are_there(desk):
    """Also where a colour has become bare cloth. Remarks of the author's own stay, though they look much alike."""
    whole, less = [[BRICK, PEAT, LEAF], [LEAF, LEAF, CLEAR]], [[CLEAR, PEAT, LEAF]]
    chart, into = desk / "content" / CHART, ("--pattern", "fern", "--replace", "--drop-lines")
    (desk / "design.png").write_bytes(picture(whole))
    run("design.png", *into)
    title, *listed, _, _ = chart.read_text().splitlines()
    assert listed == ["# r  E2 brick", "# k  K4 peat", "# f  07 fern"]
    own = ["# r  stood for E2 brick", "# x  E2 brick, of my own"]
    mine = [title, own[0], *listed, own[1], "r.."]
    chart.write_text("\n".join([*mine, ""]))
    (desk / "design.png").write_bytes(picture(less))
    run("design.png", *into)
    assert chart.read_text().splitlines() == [title, own[0], *listed[1:], own[1], ".kf"]
    before = files(desk)
    assert "nothing had to be written" in run("design.png", *into).stdout
    assert files(desk) == before


def test_a_list_in_which_a_mark_lacks_or_has_another_thread_is_made_true(desk):
    chart = desk / "content" / CHART
    chart.write_text("# Mine.\n# k  07 fern\n# z  peat\n# Below.\nk\n")
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    assert chart.read_text() == "# Mine.\n# k  K4 peat\n# r  E2 brick\n# Below.\nrk\n"


def test_a_pattern_or_card_that_is_not_there_is_answered_with_the_nearest(desk):
    (desk / "design.png").write_bytes(picture([[BRICK]]))
    assert "did you mean 'fern'?" in run("design.png", "--pattern", "ferm", code=2).stderr
    assert "did you mean 'moss'?" in run("design.png", "--threads", "mos", code=2).stderr
    assert (
        "did you mean 'spool'?"
        in run("design.png", "--pattern", "fern", "--threads", "spol", code=2).stderr
    )
    assert "--threads CARD" in run("design.png", code=2).stderr


def test_a_design_that_is_too_large_for_the_finishing_piece_is_written_and_told(desk):
    """The piece, or the cloth, can be changed when the design is there."""
    large = np.array([tuple(one) for one in RGB], np.uint8)[np.arange(90 * 91).reshape(91, 90) % 3]
    (desk / "design.png").write_bytes(_as_png(Image.fromarray(large)))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines", code=1)
    assert "It is written; before it can be built, this is to mend:" in said.stderr
    assert f"content/{PATTERN}:" in said.stderr and "has room for" in said.stderr
    assert len(rows(desk / "content" / CHART)) == 91
    assert {one.code for one in proof(desk / "content").problems.errors} == {"does-not-fit"}


REMARKS = """# How corners are counted.
backstitch:
  # The stem.
  - {colour: r, path: "1,1 2,2"}
# Single stitches over several squares.
#long_stitch:
#  - {colour: r, path: "3,6 3,9"}
# What the picture shows.
#photo_alt: A fern.
"""


def test_remarks_on_lines_that_stay_are_kept_and_those_that_went_are_counted(desk):
    """Of the old chart's lines and marks nothing is left to remark; where corners are told of, there is."""
    pattern = desk / "content" / PATTERN
    kept = pattern.read_text().partition("backstitch:")[0]
    pattern.write_text(kept + REMARKS)
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
    text = pattern.read_text()
    for line in ("# How corners are counted.", "# What the picture shows.", "#photo_alt: A fern."):
        assert f"{line}\n" in text
    gone = [line for line in REMARKS.splitlines() if "#" in line and line not in text]
    assert gone == ["  # The stem.", *REMARKS.splitlines()[4:7]]
    old = pattern.with_name("_before-pattern.yaml").relative_to(desk)
    assert (
        f"With the old key went 4 lines of remarks that explained it, kept in {old}; how-to-chart"
        in said
    )
    assert all(line in (desk / old).read_text() for line in gone)


def test_the_list_at_the_head_of_a_chart_loses_a_colour_that_is_brought_in_no_more(desk):
    """An author's own remarks stay, also one that begins with a sign."""
    white = Image.new("RGB", (4, 3), "#a04030")
    white.paste("#4f7942", (0, 0, 4, 1))
    (desk / "design.png").write_bytes(_as_png(white))
    words = ("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    run(*words)
    chart = desk / "content" / CHART
    (green,) = (line for line in chart.read_text().split("\n") if line.endswith(" 07 fern"))
    chart.write_text("# x  marks the gate\n" + chart.read_text())
    run(*words, "--bare", "#4f7942")
    head = [line for line in chart.read_text().split("\n") if line.startswith("#")]
    assert green not in head and "# x  marks the gate" in head
    assert any(line.endswith(" E2 brick") for line in head)


def test_a_folder_of_its_own_is_written_anew_when_asked_and_keeps_what_was_there(desk):
    words = ("grid.csv", "--threads", "moss", "--into", "new")
    (desk / "grid.csv").write_text("E2,K4\n")
    run(*words)
    before = (desk / "new" / "chart.txt").read_text()
    (desk / "grid.csv").write_text("E2,K4,E2\n")
    assert "new/chart.txt is there already; --replace exchanges it" in run(*words, code=2).stderr
    said = run(*words, "--replace").stdout
    assert "Written: new/chart.txt\nThe old one is kept: new/_before-chart.txt\n" in said
    assert (desk / "new" / "_before-chart.txt").read_text() == before
    assert (desk / "new" / "chart.txt").read_text() != before
    assert not (desk / "new" / "_before-key.yaml").exists(), "it is as it was"


def test_a_chart_to_be_replaced_must_be_named(desk):
    (desk / "grid.csv").write_text("E2,K4\n")
    for more in ((), ("--threads", "moss")):
        said = run("grid.csv", "--replace", *more, code=2).stderr
        assert (
            "--replace is of a chart that is there: say which, with --pattern NAME or --into"
            in said
        )


def test_where_no_remark_has_gone_nothing_is_said_of_remarks(desk):
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
    assert "remark" not in said


def test_faults_that_stood_there_before_are_no_hindrance(desk):
    (desk / "content" / FERN / "story.md").write_text("")
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
    assert "1 thing to mend stood there before, in fern/story.md: see packetgen proof." in said
    assert rows(desk / "content" / CHART) == ["f"]


@pytest.mark.parametrize(
    ("more", "where"),
    [
        (
            ("stitching.md",),
            "2 things to mend stood there before, in fern/stitching.md and fern/story.md:",
        ),
        (
            ("stitching.md", "../welcome.md", "../../../threads/more.yaml"),
            "and 1 more file: see packetgen proof.",
        ),
    ],
)
def test_the_files_are_named_in_which_faults_stood_before(desk, more, where):
    folder = desk / "content" / FERN
    for name in ("story.md", *more):
        (folder / name).write_text("")
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
    assert where in said


# --- into a new folder ---


def test_a_new_folder_gets_a_chart_and_a_key(desk):
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT], [CLEAR, LEAF]]))
    run("design.png", "--threads", "moss", "--into", "new")
    assert (desk / "new/chart.txt").read_text() == (
        "# new: one character a stitch, a full stop is bare cloth.\n"
        "# b  E2 brick\n# p  K4 peat\n# f  07 fern\nbp\n.f\n"
    )
    assert (
        (desk / "new/key.yaml")
        .read_text()
        .endswith(
            'key:\n  b: {moss: E2}   # brick\n  p: {moss: K4}   # peat\n  f: {moss: "07"}   # fern\n'
        )
    )
    before = files(desk)
    run("design.png", "--threads", "moss", "--into", "new", code=2)
    assert files(desk) == before


# --- kinds of PNG ---

SQUARE = np.array([[0, 1, 2], [2, 1, 0]])


def _as_png(image: Image.Image, **facts: object) -> bytes:
    data = BytesIO()
    image.save(data, "PNG", **facts)
    return data.getvalue()


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(
    depth: int, colour: int, lines: list[bytes], *extra: bytes, interlaced: bool = False
) -> bytes:
    """A PNG written byte by byte (W3C PNG, chapters 5 and 11), 3 × 2 pixels."""
    head = struct.pack(">IIBBBBB", 3, 2, depth, colour, 0, 0, int(interlaced))
    body = zlib.compress(b"".join(b"\0" + line for line in lines))
    return (
        b"\x89PNG\r\n\x1a\n"
        + _chunk(b"IHDR", head)
        + b"".join(extra)
        + _chunk(b"IDAT", body)
        + _chunk(b"IEND", b"")
    )


RGB = [bytes.fromhex(one[1:]) for one in (BRICK, PEAT, LEAF)]
DEEP = [b"".join(bytes([part, 0x80]) for part in one) for one in RGB]
PALETTE = _chunk(b"PLTE", b"".join(RGB))


def _rows_of(values: list[bytes]) -> list[bytes]:
    return [b"".join(values[n] for n in line) for line in SQUARE.tolist()]


KINDS = {
    "true colour": (png(8, 2, _rows_of(RGB)), "bpf fpb"),
    "true colour of 16 bits": (png(16, 2, _rows_of(DEEP)), "bpf fpb"),
    "true colour with opacity": (
        png(8, 6, _rows_of([RGB[0] + b"\0", RGB[1] + b"\xff", RGB[2] + b"\xff"])),
        ".pf fp.",
    ),
    "true colour of 16 bits with opacity": (
        png(16, 6, _rows_of([DEEP[0] + b"\0\0", DEEP[1] + b"\xff\xff", DEEP[2] + b"\xff\xff"])),
        ".pf fp.",
    ),
    "one colour of it clear": (
        png(
            8,
            2,
            _rows_of(RGB),
            _chunk(b"tRNS", b"".join(b"\0" + RGB[1][n : n + 1] for n in range(3))),
        ),
        "b.f f.b",
    ),
    "one colour of 16 bits clear": (
        png(16, 2, _rows_of(DEEP), _chunk(b"tRNS", DEEP[2])),
        "bp. .pb",
    ),
    "indexed": (png(8, 3, [bytes(line) for line in SQUARE.tolist()], PALETTE), "bpf fpb"),
    "indexed in 2 bits": (png(2, 3, [b"\x18", b"\x90"], PALETTE), "bpf fpb"),
    "indexed, an entry clear": (
        png(8, 3, [bytes(line) for line in SQUARE.tolist()], PALETTE, _chunk(b"tRNS", b"\xff\0")),
        "b.f f.b",
    ),
    "grey": (png(8, 0, [bytes([0, 128, 255]), bytes([255, 128, 0])]), "chw whc"),
    "grey of 16 bits": (
        png(16, 0, [struct.pack(">3H", 0, 32896, 65535), struct.pack(">3H", 65535, 32896, 0)]),
        "chw whc",
    ),
    "grey of 16 bits, white clear": (
        png(
            16,
            0,
            [struct.pack(">3H", 0, 32896, 65535), struct.pack(">3H", 65535, 32896, 0)],
            _chunk(b"tRNS", b"\xff\xff"),
        ),
        "ch. .hc",
    ),
    "grey with opacity": (
        png(8, 4, [bytes([0, 255, 128, 255, 255, 0]), bytes([255, 0, 128, 255, 0, 255])]),
        "ch. .hc",
    ),
    "black and white": (png(1, 0, [b"\xa0", b"\x40"]), "wcw cwc"),
    "interlaced": (
        # Adam7 of 3 × 2 has the first pixel, the third, the second, and then the whole second row.
        png(8, 2, [RGB[0], RGB[2], RGB[1], RGB[2] + RGB[1] + RGB[0]], interlaced=True),
        "bpf fpb",
    ),
}
GREYS = """\
name: Greys
material: cotton
strands: 6
tex: 25
sold_as: skein
length: 8 m
dyed: plain
colours:
  - {number: "1", name: coal, hex: "#000000"}
  - {number: "2", name: haze, hex: "#808080"}
  - {number: "3", name: white, hex: "#ffffff"}
"""


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_png_is_read(desk, kind):
    data, chart = KINDS[kind]
    (desk / "design.png").write_bytes(data)
    (desk / "content/threads/greys.yaml").write_text(GREYS)
    card = "greys" if "grey" in kind or "white" in kind else "moss"
    run("design.png", "--threads", card, "--into", "new")
    assert " ".join(rows(desk / "new/chart.txt")) == chart


def test_half_clear_pixels_are_told(desk):
    clear = (*bytes.fromhex(PEAT[1:]), 100)
    full = (*bytes.fromhex(BRICK[1:]), 200)
    (desk / "design.png").write_bytes(picture([[LEAF, clear], [full, LEAF]]))
    result = run("design.png", "--threads", "moss", "--into", "new")
    assert result.stderr.splitlines() == [
        "./design.png:1:2: advice: 2 stitches half transparent, the first at column 2, row 1; "
        "what is less than half opaque became bare cloth, the rest full stitches: look at them "
        "[bring-half-clear]"
    ]
    assert rows(desk / "new/chart.txt") == ["f.", "bf"]


def test_a_colour_may_stand_for_bare_cloth_and_bare_edges_go(desk):
    white = "#ffffff"
    (desk / "design.png").write_bytes(
        picture([[white] * 4, [white, BRICK, LEAF, white], [white] * 4])
    )
    run("design.png", "--threads", "moss", "--bare", white, "--trim", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bf"]


def test_the_author_may_say_how_large_a_stitch_is(desk):
    """Two squares alone tell nobody."""
    two = Image.new("RGB", (24, 12), BRICK)
    two.paste(PEAT, (12, 0, 24, 12))
    (desk / "design.png").write_bytes(_as_png(two))
    run("design.png", "--threads", "moss", "--cell", "12", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bp"]


def test_stitches_that_hardly_show_are_told_with_the_way_to_say_how_large_they_are(desk):
    (desk / "design.png").write_bytes(half_seen()[1])
    (line,) = wrong(desk, "design.png")
    seen = re.fullmatch(
        r"./design.png:1:1: stitches some (\S+) pixels wide show through in the picture, but not clearly enough "
        r"to be read; say how wide they are, for example --cell \1; --cell 1 where each pixel is a stitch "
        r"\[bring-cell-unsure\]",
        line,
    )
    assert seen and float(seen[1]) == pytest.approx(4.5, rel=0.01)


@pytest.mark.parametrize("number", [0, 1, 19])
def test_a_soft_drawing_without_squares_is_told_so_and_offered_a_width_in_stitches(desk, number):
    """And no size of a square, which nobody can see in it."""
    data = drawn_freely(number)
    (desk / "design.png").write_bytes(data)
    size = "{} × {}".format(*Image.open(BytesIO(data)).size)
    assert wrong(desk, "design.png") == [
        f"./design.png:1:1: no even squares show in its {size} pixels that could be stitches; say how many stitches "
        "wide it shall become, --wide 100; or, if it is drawn in squares, how many pixels wide each is, with "
        "--cell, which is 1 where a pixel is a stitch [bring-no-squares]"
    ]
    assert "100 × " in run("design.png", "--threads", "moss", "--wide", "100").output


def test_a_stitch_may_be_said_to_have_a_fraction_of_a_pixel(desk):
    small, data = half_seen()
    (desk / "design.png").write_bytes(data)
    run("design.png", "--threads", "moss", "--cell", "4.5", "--into", "new")
    chart = rows(desk / "new/chart.txt")
    assert [len(row) for row in chart] == [30] * 30
    signs = np.array([list(row) for row in chart])
    own = [max(set(of := signs[small == kind].tolist()), key=of.count) for kind in range(3)]
    assert len(set(own)) == 3 and (np.array(own)[small] == signs).mean() > 0.97


def test_a_stitch_has_one_pixel_or_at_least_two(desk):
    (desk / "design.png").write_bytes(picture([[BRICK] * 4] * 4))
    said = run("design.png", "--threads", "moss", "--cell", "1.5", code=2).output
    assert "1.5 is too small; 1 is one pixel a stitch, else give 2 or more" in " ".join(
        said.split()
    )


def test_a_pixel_is_a_stitch_where_the_author_says_so(desk):
    (desk / "design.png").write_bytes(half_seen()[1])
    assert "135 × 135 stitches" in run("design.png", "--threads", "moss", "--cell", "1").output


def test_many_colours_without_a_size_of_stitch_are_told(desk):
    (desk / "design.png").write_bytes(noise(30, 30))
    said = run("design.png", "--threads", "moss").output
    assert (
        "./design.png:1:1: advice: no even squares show in its 30 × 30 pixels, so each is read as a stitch; but no key "
        "has room for so many colours; say how many stitches wide it shall become, --wide 10; or how many pixels wide "
        "a square is, with --cell, which is 1 where a pixel is a stitch [bring-one-pixel]"
    ) in said
    assert "bring-one-pixel" not in run("design.png", "--threads", "moss", "--cell", "1").output


def test_an_enlarged_picture_in_a_frame_loses_the_frame(desk):
    chance = np.random.default_rng(7)
    small = chance.integers(0, 3, (14, 17))
    colours = np.array([tuple(one) for one in RGB], np.uint8)[small]
    large = Image.fromarray(colours.repeat(9, 0).repeat(9, 1))
    framed = Image.new("RGB", (large.width + 41, large.height + 31), "#e8e8e8")
    framed.paste(large, (20, 15))
    (desk / "design.png").write_bytes(_as_png(framed))
    said = run("design.png", "--threads", "moss", "--into", "new").stdout
    assert "what lies around the chart is left out" in said and "cut off" not in said
    assert rows(desk / "new/chart.txt") == [
        "".join("bpf"[n] for n in line) for line in small.tolist()
    ]


@pytest.mark.parametrize(
    ("box", "told"),
    [
        ((5, 0, 153, 126), "4 px at the left edge are no whole stitch and have colours"),
        ((0, 0, 149, 126), "5 px at the right edge are no whole stitch"),
        ((0, 3, 153, 124), "6 px at the upper edge and 7 px at the lower edge are no whole"),
        ((0, 0, 153, 126), ""),
    ],
)
def test_a_picture_that_is_cut_off_within_a_stitch_is_told(desk, box, told):
    """What is left over is no margin: it has the colours of the drawing."""
    chance = np.random.default_rng(7)
    small = chance.integers(0, 3, (14, 17))
    colours = np.array([tuple(one) for one in RGB], np.uint8)[small]
    large = Image.fromarray(colours.repeat(9, 0).repeat(9, 1))
    (desk / "design.png").write_bytes(_as_png(large.crop(box)))
    said = " ".join(run("design.png", "--threads", "moss", "--into", "new").stdout.split())
    assert told in said and ("look whether it is cut off there" in said) == bool(told)


# --- tables and grids ---


def test_a_table_may_hold_colours_numbers_names_and_codes(desk):
    (desk / "grid.csv").write_text(f"E2,{PEAT},fern,\nx,.,07,#A04030\n")
    run("grid.csv", "--threads", "moss", "--code", "x=peat", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bxf.", "x.fb"]


@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_a_table_may_come_from_any_spreadsheet(desk, separator):
    (desk / "grid.csv").write_text(f"\ufeffE2{separator}K4\r\n{separator}07\r\n", newline="")
    run("grid.csv", "--threads", "moss", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bp", ".f"]


def test_a_grid_of_signs_says_its_threads_in_its_remarks(desk):
    (desk / "grid.txt").write_text("# mine\n# X  E2 the pot\n# o  K4\nXXo\n Xo\n")
    run("grid.txt", "--threads", "moss", "--into", "new")
    assert (desk / "new/chart.txt").read_text() == "# mine\n# X  E2 the pot\n# o  K4\nXXo\n.Xo\n"
    assert "X: {moss: E2}" in (desk / "new/key.yaml").read_text()


def test_a_grid_in_the_marks_of_the_pattern_needs_no_more(desk):
    (desk / "grid.txt").write_text("bbbb\nrk..\n")
    run("grid.txt", "--pattern", "fern", "--replace")
    assert (desk / "content" / PATTERN).read_text() == TINY[PATTERN]
    assert rows(desk / "content" / CHART) == ["bbbb", "rk.."]


# --- photographs ---


def _photograph(path: Path, size: tuple[int, int] = (90, 60), turned: bool = False) -> None:
    across = np.linspace(0, 255, size[0])
    rgb = np.stack([np.tile(across, (size[1], 1))] * 3, -1).astype(np.uint8)
    exif = Image.Exif()
    exif[0x0112] = 6 if turned else 1
    Image.fromarray(rgb).save(path, "JPEG", exif=exif)


@pytest.mark.parametrize(
    ("cell", "quality", "may_be_wrong"),
    [("12", 95, 0), ("12", 75, 0), ("7.5", 95, 0), ("7.5", 75, 12)],
)
def test_a_jpeg_of_a_drawn_chart_is_read_where_its_author_says_how_large_a_stitch_is(
    desk, cell, quality, may_be_wrong
):
    """None of 560 squares is lost; few with much loss where a stitch is no whole number of pixels (seen: 8)."""
    drawn = np.array([tuple(one) for one in (*RGB, (255, 255, 255))], np.uint8)
    cells = np.random.default_rng(3).integers(0, 4, (10, 14)).repeat(2, 0).repeat(2, 1)
    size = round(28 * float(cell)), round(20 * float(cell))
    larger = Image.fromarray(drawn[cells]).resize(size, Image.Resampling.NEAREST)
    larger.save(desk / "chart.jpg", "JPEG", quality=quality)
    asked = ("--cell", cell, "--bare", "#ffffff")
    said = run("chart.jpg", "--threads", "moss", *asked, "--into", "new").stdout
    assert f"a stitch is {cell} px wide, as you say" in said
    got = np.array([list(row) for row in rows(desk / "new/chart.txt")])
    assert (got != np.array(list("bpf."))[cells]).sum() <= may_be_wrong


def test_what_is_for_charts_is_refused_for_photographs_with_the_way_that_there_is(desk):
    _photograph(desk / "photo.jpg")
    for more in (("--bare", "#ffffff"), ("--trim",), ("--cell", "12")):
        said = run("photo.jpg", "--threads", "moss", "--wide", "50", *more, code=2).stderr
        assert "make clear in an image editor, and save it as PNG, which --wide reads too" in said


def test_what_is_clear_in_a_photograph_is_bare_cloth(desk):
    """The way that its author is told of."""
    rgba = np.full((60, 90, 4), 255, np.uint8)
    rgba[:, :, :3] = tuple(RGB[0])
    rgba[:, 45:] = 0
    (desk / "photo.png").write_bytes(_as_png(Image.fromarray(rgba)))
    run("photo.png", "--threads", "moss", "--wide", "6", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bbb..."] * 4


@pytest.mark.parametrize("turned", [False, True])
def test_a_photograph_becomes_as_wide_as_was_asked_and_stands_upright(desk, turned):
    _photograph(desk / "photo.jpg", turned=turned)
    (desk / "content/threads/greys.yaml").write_text(GREYS)
    said = run("photo.jpg", "--threads", "greys", "--wide", "30", "--into", "new").stdout
    chart = rows(desk / "new/chart.txt")
    assert (len(chart[0]), len(chart)) == ((30, 45) if turned else (30, 20))
    assert "a photograph of" in said and set("".join(chart)) == set("chw")


def test_fewer_colours_than_the_file_names_are_refused(desk):
    (desk / "grid.csv").write_text("E2,K4\n")
    said = run("grid.csv", "--threads", "moss", "--colours", "1", code=2).stderr
    assert "--colours 1: too few, since file and key name 2 themselves; give 2 or more\n" in said


def test_where_no_card_is_named_those_that_there_are_are_offered(desk):
    (desk / "design.png").write_bytes(picture([[BRICK]]))
    assert "--threads CARD; known here: moss, spool\n" in run("design.png", code=2).stderr


# --- what is wrong ---


def wrong(desk: Path, *words: str) -> list[str]:
    """The lines about a file that cannot be read; nothing is written."""
    before = files(desk)
    result = run(*words, "--threads", "moss", "--into", "new", code=1)
    assert files(desk) == before
    *lines, last = result.stderr.splitlines()
    assert last.endswith("to mend; nothing was written.")
    if any(line.endswith("[bring-code-unknown]") for line in lines):
        threads, offered = (
            lines[-2:] if lines[-1].startswith("Say what each is, ") else (lines[-1], "")
        )
        assert threads == "Moss Stranded has: E2 brick, K4 peat, 07 fern."
        lines = lines[: lines.index(threads)]
    return lines


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("robbin.png", "there is no file 'robbin.png' here; did you mean 'robin.png'?"),
        ("in/grid.cvs", "there is no file 'grid.cvs' in 'in'; did you mean 'grid.csv'?"),
        ("barrow.jpg", "there is no file 'barrow.jpg' here; known here: robin.png"),
        ("empty/a.png", "in 'empty'; none there ends in .png or .csv or .txt or .jpg or .jpeg"),
        ("nowhere/a.png", "there is no folder 'nowhere'; look where you are"),
        ("in", "'in' is a folder; give a file in it"),
    ],
)
def test_a_file_that_is_not_there_is_answered_with_the_nearest_of_its_folder(desk, name, told):
    for path in ("robin.png", "in/grid.csv", "in/notes.md", "empty/.hidden.png"):
        (desk / path).parent.mkdir(exist_ok=True)
        (desk / path).touch()
    assert told in run(name, "--threads", "moss", code=2).stderr


def test_content_that_is_not_there_and_threads_that_are_not_are_told(desk):
    (desk / "design.png").write_bytes(picture([[BRICK]]))
    said = run("design.png", "--threads", "moss", "--content", "contnet", code=2).stderr
    assert "there is no folder 'contnet'" in said and "packetgen begin" in said
    said = run("design.png", "--pattern", "fern", "--threads", "x", code=2).stderr
    assert "there is no thread set of this pattern called 'x'; known here: moss, spool\n" in said


def test_what_comes_next_is_told_for_the_folder_that_was_given(desk):
    (desk / "content").rename(desk / "my patterns")
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, LEAF], [LEAF, LEAF, CLEAR]]))
    words = ("--pattern", "fern", "--replace", "--drop-lines", "--content", "my patterns")
    assert "Next: packetgen proof --content 'my patterns', then" in run("design.png", *words).stdout


def test_another_kind_of_file_is_told(desk):
    (desk / "design.gif").write_bytes(b"GIF89a")
    assert wrong(desk, "design.gif") == [
        "./design.gif:1:1: 'design.gif' is no kind of file that a design is read from; "
        "give a PNG, a JPEG, a grid of signs (.txt) or a table (.csv); of a spreadsheet, save it as CSV "
        "(comma separated) and bring that [bring-kind]"
    ]


@pytest.mark.parametrize(
    "data", [b"", b"no picture", picture([[BRICK] * 9] * 9)[:60]], ids=["empty", "words", "cut off"]
)
def test_a_broken_picture_is_told(desk, data):
    (desk / "design.png").write_bytes(data)
    assert wrong(desk, "design.png") == [
        "./design.png:1:1: this is not a PNG picture that can be read; save it again as PNG "
        "[picture-unreadable]"
    ]


@pytest.mark.parametrize("size", [(8000, 8000), (60000, 60000)])
def test_a_picture_that_is_too_large_is_told_before_it_is_unpacked(desk, size):
    (desk / "design.png").write_bytes(picture_that_claims(*size))
    (line,) = wrong(desk, "design.png")
    assert "30 million" in line


def test_a_large_picture_without_stitches_is_told(desk):
    """Noise; a stitch would have to be found in it."""
    (desk / "design.png").write_bytes(noise(1100, 40))
    assert wrong(desk, "design.png") == [
        "./design.png:1:1: the picture has 1100 × 40 pixels, and no size was found at which a stitch is drawn; "
        "one pixel a stitch, 1000 is the most either way; say how many stitches wide it shall become, "
        "--wide 100; or how many pixels wide a square is, with --cell [bring-not-found]"
    ]


def test_a_stitch_larger_than_the_picture_is_told(desk):
    (desk / "design.png").write_bytes(picture([[BRICK] * 4] * 4))
    assert wrong(desk, "design.png", "--cell", "5") == [
        "./design.png:1:1: a stitch of 5 pixels finds no room in a picture of 4 × 4; "
        "give --cell a smaller number, or leave it out [bring-cell-large]"
    ]


def test_a_photograph_needs_a_width_that_can_be(desk):
    _photograph(desk / "photo.jpg", (10, 90))
    assert wrong(desk, "photo.jpg") == [
        "./photo.jpg:1:1: a JPEG is read as a photograph, and nobody has said how wide it shall become; "
        "say how many stitches, --wide 100; or of a drawn chart how many pixels wide a stitch is, with --cell, "
        "better yet saved as PNG [bring-photo-wide]"
    ]
    assert wrong(desk, "photo.jpg", "--wide", "300") == [
        "./photo.jpg:1:1: 300 stitches wide, the picture becomes 2700 high; 1000 is the most; give --wide 111 or less "
        "[bring-photo-high]"
    ]


@pytest.mark.parametrize(
    ("name", "data"), [("d.png", picture([[CLEAR] * 3])), ("d.csv", b",,\n"), ("d.txt", b"...\n")]
)
def test_a_file_of_bare_cloth_is_told(desk, name, data):
    (desk / name).write_bytes(data)
    assert wrong(desk, name) == [
        f"./{name}:1:1: there is no stitch in it, all is bare cloth; "
        "look whether it is the right file, and what stands for bare cloth [bring-all-bare]"
    ]


def test_every_code_that_nobody_can_read_is_told_where_it_stands_first(desk):
    (desk / "grid.csv").write_text("E2,x,x\nferm,#12345,E2\n")
    assert wrong(desk, "grid.csv") == [
        "./grid.csv:1:2: 'x', which stands for 2 stitches, is no colour, with a # and six digits, and no number or name of Moss Stranded; "
        "say with --code which thread it is [bring-code-unknown]",
        "./grid.csv:2:1: 'ferm', which stands for 1 stitch, is no colour, with a # and six digits, and no number or name of Moss Stranded; "
        "say with --code which thread it is; did you mean '07 fern'? [bring-code-unknown]",
        "./grid.csv:2:2: '#12345', which stands for 1 stitch, is no colour, with a # and six digits, and no number or name of Moss Stranded; "
        "say with --code which thread it is [bring-code-unknown]",
    ]


def test_of_a_sign_that_is_no_letter_bare_cloth_is_asked_too(desk):
    (desk / "grid.txt").write_text("--\n-x\n")
    sign, letter = wrong(desk, "grid.txt")[:2]
    assert sign.endswith(
        "; say with --code which thread it is, or --code -=. if it is bare cloth [bring-code-unknown]"
    )
    assert letter.endswith("; say with --code which thread it is [bring-code-unknown]")
    run("grid.txt", "--threads", "moss", "--code", "-=.", "--code", "x=E2")


def test_the_line_to_copy_names_the_headings_that_are_asked_about(desk):
    body = "".join(f"{row},E2,K4,07,E2,{'E2' if row < 5 else 'oops'}\n" for row in range(1, 6))
    (desk / "grid.csv").write_text(f",A,B,C,D,E\n{body}")
    said = run("grid.csv", "--threads", "moss", code=1).stderr
    assert (
        "Say what each is, a full stop for bare cloth, with --headings for the headings: --code oops=… --headings\n"
        in said
    )
    run("grid.csv", "--threads", "moss", "--code", "oops=07", "--headings")


LEGEND = "PK,PU,PK,PU\nPU,,,PK\n,,,\n{}PK,E2,brick,7\nPU,07,fern,\n"


@pytest.mark.parametrize("head", ["", "code,number,name,\n"])
def test_a_legend_below_a_table_is_asked_about_and_gives_the_threads_of_its_codes(desk, head):
    (desk / "grid.csv").write_text(LEGEND.format(head))
    last = 6 if head else 5
    (line,) = wrong(desk, "grid.csv")
    assert line == (
        f"./grid.csv:4:1: rows 4 to {last} look like a legend ('PK', 'E2', …), and each field of a table is a stitch; "
        "add --headings to leave it out and take its threads, or --no-headings where it is stitches [bring-legend]"
    )
    said = run("grid.csv", "--threads", "moss", "--headings").stdout
    assert f"rows 4 to {last} are a legend and left out: PK is E2, PU is 07.\n" in said
    assert said.startswith("4 × 2 stitches, 6 of them worked, in 2 colours\n")
    whole = ("--no-headings", "--code", "PK=E2", "--code", "PU=07", "--code", "7=K4")
    named = ("--code", "code=.", "--code", "number=.", "--code", "name=.") if head else ()
    assert f"4 × {last} stitches" in run("grid.csv", "--threads", "moss", *whole, *named).stdout


def test_a_legend_at_the_right_of_a_table_gives_them_too(desk):
    (desk / "grid.csv").write_text("PK,PU,PK,,code,thread\nPU,,PK,,PK,E2\nPK,,,,PU,07\n")
    (line,) = wrong(desk, "grid.csv")
    assert line.startswith(
        "./grid.csv:1:1: the columns from 5 on look like a legend ('PK', 'E2', …)"
    )
    said = run("grid.csv", "--threads", "moss", "--headings").stdout
    assert said.startswith("3 × 3 stitches, 6 of them worked, in 2 colours\n")
    assert "the columns from 5 on are a legend and left out: PK is E2, PU is 07.\n" in said


@pytest.mark.parametrize(
    "text",
    [
        "-KL\nKL-\n\nK = E2 brick\nL = 07\n- = bare\n",
        "K: E2\nL: fern\n-: .\n\n-KL\nKL-\n",
        "-KL\nKL-\n\nLegend\nK  E2 brick\nL  07 fern\n-  none\n",
    ],
)
def test_a_legend_below_or_above_a_grid_of_signs_gives_their_threads(desk, text):
    (desk / "grid.txt").write_text(text)
    said = run("grid.txt", "--threads", "moss").stdout
    assert said.startswith("3 × 2 stitches, 4 of them worked, in 2 colours\n")
    assert re.search(
        r"lines \d to \d are a legend and left out: K is E2, L is (07|fern), - is", said
    )
    assert "K  E2 brick" in said and "L  07 fern" in said


def test_a_title_above_a_grid_of_signs_is_kept_as_a_remark(desk):
    (desk / "grid.txt").write_text("Jar of beans\n\nrr.\n.rr\n")
    said = run("grid.txt", "--threads", "moss", "--code", "r=E2", "--into", "new").stdout
    assert "line 1 is a title, and kept as a remark" in said and "3 × 2 stitches" in said
    assert "# Jar of beans\n" in (desk / "new" / "chart.txt").read_text()


def test_a_row_of_a_colour_that_comes_nowhere_else_is_no_title(desk):
    (desk / "grid.txt").write_text("kkk\n\nrr.\n.rr\n")
    said = run("grid.txt", "--threads", "moss", "--code", "r=E2", "--code", "k=K4").stdout
    assert "3 × 4 stitches, 7 of them worked, in 2 colours" in said and "title" not in said


def test_rows_of_signs_below_an_empty_line_are_no_legend(desk):
    (desk / "grid.txt").write_text("KLK\nLKL\n\nK L\nL K\n")
    said = run("grid.txt", "--threads", "moss", "--code", "K=E2", "--code", "L=07").stdout
    assert "legend" not in said and "3 × 5 stitches" in said


def test_an_author_s_own_word_on_a_code_goes_before_the_legend(desk):
    (desk / "grid.csv").write_text(LEGEND.format(""))
    said = run("grid.csv", "--threads", "moss", "--headings", "--code", "PU=K4").stdout
    assert "E2 brick" in said and "K4 peat" in said and "07 fern" not in said


def test_headings_and_a_legend_are_one_line_since_one_option_leaves_both_out(desk):
    body = "".join(f"{row},PK,PU,PK,,PU\n" for row in range(1, 6))
    (desk / "grid.csv").write_text(f",A,B,C,D,E\n{body}\n,PK,E2\n,PU,07\n")
    (line,) = wrong(desk, "grid.csv")
    assert line == (
        "./grid.csv:1:1: row 1 ('A', 'B', 'C', …) and column 1 ('1', '2', '3', …) look like headings, and rows 8 to 9 "
        "('PK', 'E2', …) like a legend, and each field of a table is a stitch; add --headings to leave them out, or "
        "--no-headings where they are stitches [bring-headings]"
    )
    said = run("grid.csv", "--threads", "moss", "--headings").stdout
    assert said.startswith("5 × 5 stitches, 20 of them worked, in 2 colours\n")


def test_stitches_below_an_empty_row_are_no_legend(desk):
    (desk / "grid.csv").write_text("E2,07,E2,07\nK4,,,E2\n,,,\nE2,07,K4,\n07,E2,K4,\n")
    assert "4 × 5 stitches" in run("grid.csv", "--threads", "moss").stdout


def test_a_row_and_a_column_of_headings_are_told_in_one_line_and_other_faults_beside_them(desk):
    """As a spreadsheet saves them: the letters of its columns, the numbers of its rows."""
    body = "".join(f"{row},E2,K4,07,E2,{'E2' if row < 5 else 'oops'}\n" for row in range(1, 6))
    (desk / "grid.csv").write_text(f",A,B,C,D,E\n{body}")
    assert wrong(desk, "grid.csv") == [
        "./grid.csv:1:1: row 1 ('A', 'B', 'C', …) and column 1 ('1', '2', '3', …) look like headings, and each field of a "
        "table is a stitch; add --headings to leave them out, or --no-headings where they are stitches [bring-headings]",
        "./grid.csv:6:6: 'oops', which stands for 1 stitch, is no colour, with a # and six digits, and no number or name of Moss Stranded; "
        "say with --code which thread it is [bring-code-unknown]",
    ]


@pytest.mark.parametrize("first", ["row,{}", ",{}", "{},1"])
def test_columns_that_are_counted_are_headings_even_where_a_number_is_a_colour(desk, first):
    """--code makes 2 a colour of hers; a row from 1 to 12 is a heading nevertheless."""
    counted = ",".join(str(column) for column in range(1, 13))
    (desk / "grid.csv").write_text(f"{first.format(counted)}\n{'E2,' * 12}2\n")
    faults = wrong(desk, "grid.csv", "--code", "2=K4")
    if first == "{},1":  # 1 twice: nothing is counted so
        assert all("[bring-code-unknown]" in one for one in faults)
    else:
        assert len(faults) == 1 and "row 1 (" in faults[0] and "looks like headings" in faults[0]


HEADED = {
    "numbers that are all numbers of the card": (
        "1,2,3,4,5\n5,5,5,5,5\n4,4,4,4,4\n",
        ["row 1"],
        ["eeeee", "ddddd"],
    ),
    "letters over codes that nobody has explained": (
        "A,B,C,D,E\nx,x,x,x,x\n",
        ["row 1"],
        ["xxxxx"],
    ),
    "letters past Z": (
        ",".join([chr(65 + n) for n in range(26)] + ["AA", "AB"]) + "\n" + "x," * 27 + "x\n",
        ["row 1"],
        ["x" * 28],
    ),
    "rows that are counted": (
        "".join(f"{row},x,x\n" for row in range(1, 7)),
        ["column 1"],
        ["xx"] * 6,
    ),
    "both, with a word in the corner": (
        "row,1,2,3,4,5\n" + "".join(f"{row},x,x,x,x,x\n" for row in range(1, 6)),
        ["row 1", "column 1"],
        ["xxxxx"] * 5,
    ),
}
FIVE = GREYS[: GREYS.index("  - ")] + "".join(
    f'  - {{number: "{n}", name: {name}, hex: "#{n}0{n}0{n}0"}}\n'
    for n, name in enumerate("abcde", 1)
)


@pytest.mark.parametrize("case", HEADED.values(), ids=HEADED)
def test_what_counts_rows_or_columns_is_told_in_one_line_and_left_out_when_its_author_says_so(
    desk, case
):
    table, where, chart = case
    (desk / "content/threads/five.yaml").write_text(FIVE)
    (desk / "grid.csv").write_text(table)
    asked = ("grid.csv", "--threads", "five", *(("--code", "x=1") if "x" in table else ()))
    lines = run(*asked, code=1).stderr.splitlines()
    assert len(lines) == 2, "nothing else is told of it"
    assert all(f"{one} (" in lines[0] for one in where) and " like headings, and each" in lines[0]
    assert re.search("add --headings to leave (it|them) out, or --no-headings", lines[0])
    said = run(*asked, "--headings", "--into", "new").stdout
    assert all(f"{one} (" in said and "is headings and left out" in said for one in where)
    assert rows(desk / "new" / "chart.txt") == chart


# Columns A to E and rows 1 to 5 of one code, as a spreadsheet saves it, with empty columns beside them.
SHEET = ",A,B,C,D,E,,\n" + "".join(f"{row},x,x,x,x,x,,\n" for row in range(1, 6))


@pytest.mark.parametrize(
    ("end", "also"), [("", ""), (",,,,,,,\n", " and 1 empty row at the end"), (",\n,\n", "s")]
)
def test_what_is_empty_beyond_headings_is_told_and_left_out_with_them(desk, end, also):
    """Spreadsheets save it; here the card has the numbers that count the rows."""
    (desk / "content/threads/five.yaml").write_text(FIVE)
    (desk / "grid.csv").write_text(SHEET + end)
    asked = ("grid.csv", "--threads", "five", "--code", "x=1")
    lines = run(*asked, code=1).stderr.splitlines()
    assert len(lines) == 2 and "row 1 (" in lines[0] and "column 1 (" in lines[0]
    said = " ".join(run(*asked, "--headings", "--into", "new").stdout.split())
    also = " and 2 empty rows at the end" if also == "s" else also
    assert f"2 empty columns at the right{also}, beyond the headings, left out." in said
    assert rows(desk / "new" / "chart.txt") == ["x" * 5] * 5


def test_without_headings_empty_columns_and_rows_are_bare_cloth(desk):
    """Nothing says then that they are none of the design; --trim leaves them out."""
    (desk / "grid.csv").write_text("E2,K4,,\n,E2,,\n,,,\n")
    run("grid.csv", "--threads", "moss", "--into", "new")
    assert rows(desk / "new" / "chart.txt") == ["bp..", ".b..", "...."]


@pytest.mark.parametrize("asked", [(), ("--headings",)])
def test_a_note_in_the_margin_of_counted_columns_is_the_one_thing_told(desk, asked):
    """And not that headings are no colours; the empty columns between do not count."""
    first, *others = SHEET.splitlines()
    others[1] += '"flower here, 3 April",'
    (desk / "grid.csv").write_text("\n".join((first, *others)) + "\n")
    result = run("grid.csv", "--threads", "moss", *asked, "--into", "new", code=1)
    assert [line for line in result.output.splitlines() if "[bring-" in line] == [
        "./grid.csv:3:8: 'flower here, 3 April' stands beyond the headings, which end at 'E'; take it out, or let the "
        "headings go as far, or add --no-headings where each field is a stitch [bring-beyond]"
    ]


def test_a_word_of_a_legend_that_is_no_thread_is_the_one_thing_told(desk):
    grid = "-K-L\nKL-K\n\nK = K4\nL = fern\n- = {}\n"
    (desk / "grid.txt").write_text(grid.format("sky"))
    told = run("grid.txt", "--threads", "moss", "--into", "new", code=1).output
    assert [line for line in told.splitlines() if "[bring-" in line] == [
        "./grid.txt:6:1: lines 4 to 6 look like a legend, and 'sky' is no number or name of Moss Stranded; write its "
        "thread, or - = bare where it is bare cloth [bring-legend-word]"
    ]
    for word in ("cloth", "bare cloth", "."):
        (desk / "grid.txt").write_text(grid.format(word))
        said = run("grid.txt", "--threads", "moss", "--into", f"new-{len(word)}").output
        assert "K is K4, L is fern, - is bare cloth.\n" in said
        assert rows(desk / f"new-{len(word)}" / "chart.txt")[0][0] == "."


BESIDE = "the stitches, and may be"
TAKE = "take it out, or add --no-headings where each field is a stitch [bring-beside]"


@pytest.mark.parametrize(
    ("table", "told"),
    [
        ("Robin,\n" + SHEET, [f"1:1: row 1 ('Robin') stands above {BESIDE} a title"]),
        (
            "Robin,May,,\n,,,\n" + SHEET,
            [
                f"1:1: row 1 ('Robin', 'May'), with the empty row below it, stands above {BESIDE} a title"
            ],
        ),
        (SHEET + "Total,654,,\n", [f"7:1: row 7 ('Total', '654') stands below {BESIDE} a sum"]),
        (
            SHEET + "Total,5,5,5,5,5,,\n,,,\n",
            [f"7:1: row 7 ('Total', '5', '5', …) stands below {BESIDE} a sum"],
        ),
        (
            "Robin\n" + SHEET + "Total,654\n",
            [
                f"1:1: row 1 ('Robin') stands above {BESIDE} a title",
                f"8:1: row 8 ('Total', '654') stands below {BESIDE} a sum",
            ],
        ),
    ],
    ids=["title", "title and an empty row", "sum", "sums of columns", "both"],
)
@pytest.mark.parametrize("card", ["moss", "five"])
def test_a_title_above_a_table_and_a_sum_below_it_are_told_and_no_stitches(desk, table, told, card):
    """One line for each such row, and none about the headings that it hides."""
    (desk / "content/threads/five.yaml").write_text(FIVE)
    (desk / "grid.csv").write_text(table)
    for words in ((), ("--headings",)):
        result = run("grid.csv", "--threads", card, *words, code=1)
        *lines, last = result.stderr.splitlines()
        assert lines == [f"./grid.csv:{one}; {TAKE}" for one in told]
        assert last.endswith("to mend; nothing was written.")


def test_a_short_first_or_last_row_of_stitches_is_no_title_and_no_sum(desk):
    body = "E2,E2,E2,E2,E2\n" * 5
    for first, last in (("E2,\n", ""), ("", "E2\n"), ("E2,K4\n", "K4\n")):
        (desk / "grid.csv").write_text(first + body + last)
        assert "[bring-beside]" not in run("grid.csv", "--threads", "moss").output


def test_what_looks_like_headings_may_be_stitches(desk):
    (desk / "content/threads/five.yaml").write_text(FIVE)
    (desk / "grid.csv").write_text("1,2,3,4,5\n5,5,5,5,5\n")
    run("grid.csv", "--threads", "five", "--no-headings", "--into", "new")
    assert rows(desk / "new" / "chart.txt") == ["abcde", "eeeee"]


def test_a_first_row_is_left_out_where_its_author_calls_it_headings(desk):
    """However few its words are."""
    (desk / "grid.csv").write_text("left,right\nE2,07\n")
    run("grid.csv", "--threads", "moss", "--headings", "--into", "new")
    assert rows(desk / "new" / "chart.txt") == ["bf"]


@pytest.mark.parametrize(("answer", "chart"), [("", ["bbbbb"]), ("n", None)])
def test_on_a_terminal_headings_are_asked_for(desk, monkeypatch, answer, chart):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("A,B,C,D,E\nE2,E2,E2,E2,E2\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input=f"{answer}\n")
    assert "Row 1 ('A', 'B', 'C', …) looks like headings. Leave out [Y/n]: " in result.output
    if chart:
        assert result.exit_code == 0 and rows(desk / "new" / "chart.txt") == chart
    else:
        assert result.exit_code == 130 and "A (1 stitch) is: " in result.output  # nobody answers


def test_faults_below_headings_are_told_where_they_stand(desk):
    body = "".join(f"{row},E2,E2,E2,E2,{'E2' if row < 5 else 'oops'}\n" for row in range(1, 6))
    (desk / "grid.csv").write_text(f",A,B,C,D,E\n{body}")
    (line,) = wrong(desk, "grid.csv", "--headings")
    assert line.startswith("./grid.csv:6:6: 'oops', which stands for 1 stitch")


def test_options_of_another_kind_of_file_are_refused(desk):
    (desk / "design.png").write_bytes(picture([[BRICK]]))
    (desk / "grid.csv").write_text("E2\n")
    for words, why in (
        (("design.png", "--headings"), "--headings is for tables (.csv);"),
        (
            ("grid.csv", "--cell", "4"),
            "--cell is for pictures, in which a stitch is some pixels wide",
        ),
    ):
        said = " ".join(run(*words, "--threads", "moss", code=2).stderr.split())
        assert why in said


def test_numbered_columns_are_headings_before_any_code_is_explained(desk):
    """Each code of the stitches is told beside them, and no number."""
    counted = ",".join(map(str, range(1, 21)))
    (desk / "grid.csv").write_text(f"{counted}\n{','.join(['duck', 'reed'] * 10)}\n")
    headings, *codes = wrong(desk, "grid.csv")
    assert "row 1 ('1', '2', '3', …) looks like headings, and each" in headings
    assert [one.split("'")[1] for one in codes] == ["duck", "reed"]


@pytest.mark.parametrize(
    ("table", "why"),
    [
        ("a,b,c,d,a\nE2,E2,E2,E2,E2\n", "a heading does not come twice"),
        ("a,b,c,d,e\nE2,E2,E2,E2,a\n", "nor below"),
        ("a,b,c,d,E2\nE2,E2,E2,E2,E2\n", "nor is it a colour"),
        ("a,b,c,d\nE2,E2,E2,E2\n", "so few stitches may well be all different"),
        ("a,,,,b,c\nE2,E2,E2,E2,E2,E2\n", "headings have no gaps"),
        ("a,b,c,d,e\nf,g,h,i,j\n", "where nothing is a colour, the card is the wrong one"),
        ("#12,b,c,d,e\nE2,E2,E2,E2,E2\n", "a slip in a colour"),
        ("a,b,c,d,e\n", "below a heading stands something"),
    ],
)
def test_a_first_row_of_stitches_is_never_taken_for_headings(desk, table, why):
    (desk / "grid.csv").write_text(table)
    assert all("[bring-code-unknown]" in line for line in wrong(desk, "grid.csv")), why


def test_a_row_of_headings_whose_codes_are_given_is_stitches(desk):
    (desk / "grid.csv").write_text("a,b,c,d,e\nE2,E2,E2,E2,E2\n")
    codes = [word for code in "abcde" for word in ("--code", f"{code}=07")]
    run("grid.csv", "--threads", "moss", *codes, "--into", "new")
    assert rows(desk / "new" / "chart.txt") == ["aaaaa", "rrrrr"], "b is hers for fern"


def test_below_the_codes_stand_the_threads_of_the_card_and_one_line_to_copy(desk):
    """What is copied and filled in is the whole answer, also where a code has a space in it."""
    (desk / "grid.csv").write_text("y1,o1,E2\ny1,two ducks,o1\n")
    *codes, threads, offered, last = run(
        "grid.csv", "--threads", "moss", code=1
    ).stderr.splitlines()
    assert [line.split("'")[1] for line in codes] == ["y1", "o1", "two ducks"]
    assert threads == "Moss Stranded has: E2 brick, K4 peat, 07 fern."
    assert (
        offered
        == "Say what each is, a full stop for bare cloth: --code y1=… --code o1=… --code 'two ducks'=…"
    )
    assert last == "3 things to mend; nothing was written."
    filled = offered.partition(": ")[2]
    for thread in ("K4", "fern", "brick"):
        filled = filled.replace("…", thread, 1)
    run("grid.csv", "--threads", "moss", *shlex.split(filled), "--into", "new")
    assert rows(desk / "new/chart.txt") == ["pfb", "pbf"]


NOUGHTS = (
    GREYS[: GREYS.index("  - ")].replace("Greys", "Nought Stranded")
    + """\
  - {number: "070", name: rust, hex: "#a0452a"}
  - {number: "085", name: moss, hex: "#4a6b3a"}
  - {number: "007", name: fern, hex: "#7ea35d"}
  - {number: "009", name: loam, hex: "#4a3628"}
  - {number: "101", name: sky, hex: "#9cc4d8"}
"""
)


def test_numbers_robbed_of_their_noughts_by_a_spreadsheet_are_one_line_and_one_to_copy(desk):
    (desk / "content/threads/nought.yaml").write_text(NOUGHTS)
    (desk / "grid.csv").write_text("70,85,101\n7,9,\n")
    line, _, offered, last = run("grid.csv", "--threads", "nought", code=1).stderr.splitlines()
    assert line == (
        "./grid.csv:1:1: '70', '85', '7' and '9' are numbers of Nought Stranded without the noughts before them; add "
        "--code 70=070 --code 85=085 --code 7=007 --code 9=009, or keep the noughts in the table: a spreadsheet does so "
        "in cells of text [bring-noughts]"
    )
    filled = "--code 70=070 --code 85=085 --code 7=007 --code 9=009"
    assert offered == (
        f"Say what each is, a full stop for bare cloth (what is filled in is a guess): {filled}"
    )
    assert last == "1 thing to mend; nothing was written."
    said = run("grid.csv", "--threads", "nought", *filled.split()).stdout
    assert set(re.findall(r"^.  (\d{3}) ", said, re.M)) == {"070", "085", "007", "009", "101"}


def test_a_number_with_and_without_noughts_on_one_card_is_what_it_says(desk):
    """Nothing is wrong with 70 where the card has it; and 7 stands for nothing where both 07 and 007 might be meant."""
    more = '  - {number: "70", name: ash, hex: "#888888"}\n  - {number: "07", name: dew, hex: "#ccddee"}\n'
    (desk / "content/threads/nought.yaml").write_text(NOUGHTS + more)
    (desk / "grid.csv").write_text("70,7\n")
    line, *_ = run("grid.csv", "--threads", "nought", code=1).stderr.splitlines()
    assert line.startswith("./grid.csv:1:2: '7', which stands for 1 stitch, ")


def test_the_line_to_copy_has_the_likely_threads_filled_in(desk):
    (desk / "grid.csv").write_text("brik,xx\nferm,E2\n")
    offered = run("grid.csv", "--threads", "moss", code=1).stderr.splitlines()[-2]
    assert offered.endswith(
        "(what is filled in is a guess): --code brik=E2 --code xx=… --code ferm=07"
    )


def test_of_a_large_card_as_many_threads_are_told_as_a_few_lines_hold(desk):
    card = FIVE[: FIVE.index("  - ")] + "".join(
        f'  - {{number: "{n}", name: bed of row {n}, hex: "#{n:06x}"}}\n' for n in range(100, 300)
    )
    (desk / "content/threads/five.yaml").write_text(card)
    (desk / "grid.csv").write_text("y1\n")
    said = run("grid.csv", "--threads", "five", code=1).stderr
    threads = said[said.index(" has: ") : said.index("Say what each is")].replace("\n  ", " ")
    assert "100 bed of row 100, 101 bed of row 101," in threads
    told = threads.count("bed of row")
    assert 20 < told < 40
    assert f"and {200 - told} more in content/threads/five.yaml." in threads


def test_on_a_terminal_each_code_is_asked_for_once(desk, monkeypatch):
    """A number, a name, a colour; and the name that is nearly the code, for the enter key. What the card has
    not is asked again."""
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("y1,o1,ferm,z\ny1,E2,,\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="K4\nbrik\nbrick\n\n#6b503b\n\n")
    assert result.exit_code == 0, result.output
    for asked in ("y1 (2 stitches) is: ", "ferm (1 stitch) is [07 fern]: ", "z (1 stitch) is: "):
        assert result.output.count(asked) == 1
    assert result.output.count("o1 (1 stitch) is: ") == 2
    assert "Moss Stranded has no 'brik'; did you mean E2 brick?" in result.output
    assert result.output.count("Moss Stranded has: E2 brick, K4 peat, 07 fern.") == 1
    again = "--code y1=K4 --code o1=brick --code ferm=07 --code 'z=#6b503b'"
    assert f"Next time without these questions: add {again}\n" in result.output
    assert rows(desk / "new/chart.txt") == ["zbfz", "zb.."]


def test_a_thread_that_a_code_has_already_is_offered_for_no_other(desk, monkeypatch):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("ferm,fen\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="y\nK4\ny\n")
    assert "ferm (1 stitch) is [07 fern]: " in result.output
    assert "fen (1 stitch) is: " in result.output
    assert rows(desk / "new/chart.txt") == ["fp"]


def test_threads_that_were_mixed_up_in_the_answers_are_seen_before_anything_is_written(
    desk, monkeypatch
):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("y1,o1\n")
    before = files(desk)
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="K4\nE2\nn\n")
    assert result.exit_code == 0 and files(desk) == before
    assert result.output.index("K4 peat") < result.output.index("Write it [Y/n]")
    assert result.output.endswith("Nothing was written.\n")


def test_an_answer_is_taken_back_and_asked_for_anew(desk, monkeypatch):
    """As far as the first; what an answer had taken is offered again."""
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("y1,ferm,o1\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    answers = ("07", "E2", "back", "Back", "K4", "", "E2", "")
    result = CliRunner().invoke(main, words, input="\n".join(answers) + "\n")
    assert result.exit_code == 0, result.output
    assert "y1, ferm, o1. 'back' asks for the last one again." in result.output
    assert result.output.count("y1 (1 stitch) is: ") == 2
    assert "ferm (1 stitch) is: " in result.output and "is [07 fern]: " in result.output
    assert rows(desk / "new/chart.txt") == ["pfb"]


def test_there_is_nothing_before_the_first_question(desk, monkeypatch):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("y1,o1\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="back\n07\nE2\n\n")
    assert "Moss Stranded has no 'back'" in result.output
    assert rows(desk / "new/chart.txt") == ["fb"]


@pytest.mark.parametrize("answer", ["y", "YES"])
def test_a_yes_takes_the_thread_that_is_offered(desk, monkeypatch, answer):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("ferm\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input=f"{answer}\n\n")
    assert result.exit_code == 0, result.output
    assert rows(desk / "new/chart.txt") == ["f"]


def test_a_yes_takes_the_thread_that_was_meant_by_a_slip(desk, monkeypatch):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("ABC\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="ferm\ny\n\n")
    assert "has no 'ferm'; did you mean 07 fern? Type y, or another" in result.output
    assert result.exit_code == 0 and rows(desk / "new/chart.txt") == ["f"]


def test_a_row_of_a_table_that_lacks_fields_is_told(desk):
    (desk / "grid.csv").write_text("07,07,07\n07,07\n07,07,07\n07\n")
    said = " ".join(run("grid.csv", "--threads", "moss", "--into", "new").stdout.split())
    assert (
        "row 2, with 1 row more, has fewer fields than others (2 of 3) and ends in bare cloth"
        in said
    )
    assert rows(desk / "new/chart.txt") == ["fff", "ff.", "fff", "f.."]


@pytest.mark.parametrize("word", [".", "bare", "None"])
def test_a_code_of_a_table_may_stand_for_bare_cloth(desk, word):
    (desk / "grid.csv").write_text("ABC,GRS,ABC\nGRS,ABC,GRS\n")
    codes = ("--code", "ABC=07", "--code", f"GRS={word}")
    said = run("grid.csv", "--threads", "moss", *codes, "--into", "new").stdout
    assert rows(desk / "new/chart.txt") == ["f.f", ".f."]
    assert "'GRS' is bare cloth" in said


def test_a_question_for_a_code_takes_bare_cloth_and_says_what_it_wants(desk, monkeypatch):
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "grid.csv").write_text("ABC,GRS,ABC\n")
    words = ["bring", "grid.csv", "--threads", "moss", "--into", "new"]
    result = CliRunner().invoke(main, words, input="\n07\n.\n\n")
    assert "Error: say a number or name of the list, or a full stop for bare" in result.output
    assert result.exit_code == 0 and rows(desk / "new/chart.txt") == ["f.f"]


def test_a_thread_that_is_called_like_bare_cloth_is_a_thread():
    card = (Colour("1", "bare", "#556b2f"),)
    assert not Codes(card).is_bare("bare")
    assert Codes(card).is_bare(".")


def table_of(said: str) -> list[str]:
    """The table of the threads, without the spaces between its columns."""
    table = said[said.index("   Moss Stranded") :].split("\n\n")[0]
    assert max(map(len, table.splitlines())) <= 80
    return [" ".join(line.split()) for line in table.splitlines()]


def test_a_table_that_is_laid_into_a_patterns_folder_comes_in_by_the_command_that_is_offered(
    desk, monkeypatch
):
    """Its columns and rows are counted, and its codes are her own. The line can be copied as it stands; on a
    terminal the codes are asked for."""
    monkeypatch.setattr("packetgen.cli.bring_questions._on_terminal", lambda: True)
    (desk / "content" / CHART).unlink()
    table = desk / "content" / FERN / "chart.csv"
    table.write_text(",A,B,C\n1,reed,mud,reed\n2,k,,reed\n")
    first = CliRunner().invoke(main, ["proof"]).output.splitlines()[1]
    command = first.partition("bring it in: ")[2].removesuffix(" [bring-table]")
    asked = f"packetgen bring content/{FERN}/chart.csv --pattern fern --replace --headings"
    assert command == asked
    words = [*shlex.split(command)[1:], "--drop-lines"]
    result = CliRunner().invoke(main, words, input="07\nE2\n\n")
    assert result.exit_code == 0, result.output
    assert rows(desk / "content" / CHART) == ["frf", "k.f"], "k is a mark of the key"
    left = f"content/{FERN}/chart.csv is the chart no more, and nothing reads it: take it out"
    assert "pattern.yaml names the chart now: chart.txt.\n" in result.output
    assert left in " ".join(result.output.split())
    assert CliRunner().invoke(main, ["proof"]).exit_code == 0
    (desk / "again.txt").write_text("frf\n")
    said = run("again.txt", "--pattern", "fern", "--replace").stdout
    assert "names the chart" not in said and "no more" not in said, "that was told before"


def test_the_command_that_is_offered_for_a_table_says_without_a_terminal_what_to_add(desk):
    """A --code for each code of her own, which she fills in and types behind it."""
    (desk / "content" / CHART).unlink()
    (desk / "content" / FERN / "chart.csv").write_text("reed,mud,reed\nk,E2,two ducks\n")
    first = CliRunner().invoke(main, ["proof"]).output.splitlines()[1]
    command = first.partition("bring it in: ")[2].removesuffix(" [bring-table]")
    words = [*shlex.split(command)[2:], "--drop-lines"]
    asked = run(*words, code=1).stderr.splitlines()[-2]
    head, _, codes = asked.partition("for bare cloth: ")
    assert head == "Say what each is, a full stop "
    assert codes == "--code reed=… --code mud=… --code 'two ducks'=…", "k is a mark, E2 a number"
    said = shlex.split(codes.replace("…", "07", 1).replace("…", "K4", 1).replace("…", "."))
    run(*words, *said)
    assert rows(desk / "content" / CHART) == ["fkf", "kr."]


def test_what_is_offered_for_a_table_names_the_content_folder_that_was_given(desk):
    build(desk / "my work")
    table = desk / "my work" / FERN / "chart.csv"
    (desk / "my work" / CHART).unlink()
    table.write_text("reed,mud,reed\n")
    said = CliRunner().invoke(main, ["proof", "--content", "my work"]).output
    offered = (
        f"packetgen bring 'my work/{FERN}/chart.csv' --pattern fern --replace --content 'my work'"
    )
    assert f"bring it in: {offered} [bring-table]" in said.splitlines()[1]


def test_the_option_that_leaves_out_a_small_colour_can_be_copied(desk):
    drawn = [[BRICK] * 30] * 15 + [[PEAT] * 30] * 14 + [[PEAT] * 28 + [LEAF] * 2]
    (desk / "design.png").write_bytes(picture(drawn))
    said = run("design.png", "--threads", "moss").stdout
    assert "07 fern has 2 stitches only: --colours 2 leaves it out.\n" in said
    said = run("design.png", "--threads", "moss", "--colours", "2").stdout
    assert "fern → K4 peat: 2 stitches" in said and "only: --colours" not in said


def test_it_is_shown_which_code_became_which_thread(desk):
    """And no difference from colours, since the file has none."""
    (desk / "grid.csv").write_text("reed,two ducks,reed\nmud,two ducks,K4\n")
    codes = ("--code", "reed=07", "--code", "mud=K4", "--code", "two ducks=E2")
    said = run("grid.csv", "--threads", "moss", *codes).stdout
    assert table_of(said) == [
        "Moss Stranded stitches code",
        "b E2 brick 2 two ducks",
        "p K4 peat 2 mud, K4",
        "f 07 fern 2 reed",
        "all 6",
    ]
    assert "CIEDE2000" not in said


def test_of_a_table_of_codes_and_colours_each_line_shows_what_there_is(desk):
    """A code that is said to be a colour has both; the last line speaks of stitches with a colour alone."""
    (desk / "grid.csv").write_text("reed,#6b503a,mud\nreed,#ffffff,reed\n")
    codes = ("--code", "reed=07", "--code", "mud=#6b503a", "--code", "#ffffff=.")
    said = run("grid.csv", "--threads", "moss", *codes).stdout
    assert table_of(said) == [
        "Moss Stranded stitches from the file: mean most code",
        "p K4 peat 2 same to the eye 0.0 0.0 #6b503a, mud",
        "f 07 fern 3 reed",
        "all 5 same to the eye 0.0 0.0",
    ]
    assert "Differences are CIEDE2000" in said


def test_a_code_of_one_sign_stays_the_mark_of_its_thread(desk):
    """If it can be one, and no other thread has it already; else there is a letter of the thread's name."""
    (desk / "grid.csv").write_text("x,x,#\nO,#,two\n")
    codes = ("--code", "x=07", "--code", "O=K4", "--code", "two=K4", "--code", "#=E2")
    said = run("grid.csv", "--threads", "moss", *codes, "--into", "new").stdout
    assert rows(desk / "new/chart.txt") == ["xxb", "ObO"]
    assert table_of(said)[1:4] == ["b E2 brick 2 #", "O K4 peat 2 O, two", "x 07 fern 2 x"]


def test_codes_of_one_sign_are_marks_where_the_key_leaves_them_free(desk):
    """The key has r for brick and k for peat, which stay as long as brick and peat are stitched."""
    (desk / "grid.csv").write_text("r,E2,x\n")
    codes = ("--code", "r=07", "--code", "x=K4")
    run("grid.csv", "--pattern", "fern", *codes, "--replace", "--drop-lines")
    assert rows(desk / "content" / CHART) == ["frk"]
    (desk / "grid.csv").write_text("r,x,x\n")
    run("grid.csv", "--pattern", "fern", *codes, "--replace")
    assert rows(desk / "content" / CHART) == ["fkk"], "fern had f by then"


def test_numbers_and_names_of_the_card_are_not_shown_twice(desk):
    (desk / "grid.csv").write_text("K4,fern,E2\n")
    assert table_of(run("grid.csv", "--threads", "moss").stdout) == [
        "Moss Stranded stitches",
        "b E2 brick 1",
        "p K4 peat 1",
        "f 07 fern 1",
        "all 3",
    ]


def test_many_codes_of_one_thread_find_room_on_several_lines(desk):
    row = [f"bed {number}" for number in range(1, 16)]
    (desk / "grid.csv").write_text(",".join(row) + "\n")
    codes = [word for code in row for word in ("--code", f"{code}=07")]
    table = table_of(run("grid.csv", "--threads", "moss", *codes).stdout)
    told = " ".join(table[1:-1])
    assert told.startswith("f 07 fern 15 bed 1, bed 2, ") and told.endswith("bed 12, 3 more")


def test_codes_that_become_one_thread_are_told_by_their_names(desk):
    (desk / "grid.csv").write_text("wing,wing,bill,E2\n")
    codes = ("--code", "wing=#506b3a", "--code", "bill=#506b3a")
    said = run("grid.csv", "--threads", "moss", *codes).stdout
    assert "wing (2 stitches), bill (1 stitch)." in said


@pytest.mark.parametrize("words", [(), ("--headings",), ("--cell", "4")])
def test_of_a_spreadsheet_it_is_told_to_save_it_as_csv(desk, words):
    (desk / "duck.ods").write_bytes(b"PK")
    (line,) = wrong(desk, "duck.ods", *words)
    assert line.endswith(
        "of a spreadsheet, save it as CSV (comma separated) and bring that [bring-kind]"
    )
    assert len(line) <= 220


def test_a_code_that_is_given_no_thread_is_told(desk):
    (desk / "grid.csv").write_text("x\n")
    assert "no 'K5'" in run("grid.csv", "--threads", "moss", "--code", "x=K5", code=2).stderr
    assert "write the code" in run("grid.csv", "--threads", "moss", "--code", "x", code=2).stderr


def test_blanks_round_a_code_and_its_thread_count_for_nothing(desk):
    (desk / "grid.csv").write_text("RD,two ducks\n")
    codes = ("--code", "RD = 07", "--code", " two ducks =peat ")
    said = run("grid.csv", "--threads", "moss", *codes, "--into", "new")
    assert rows(desk / "new/chart.txt") == ["fp"] and said.stderr == ""


def test_a_code_that_is_itself_a_blank_may_be_said(desk):
    """One that no line takes for bare cloth."""
    (desk / "grid.txt").write_text("b\u2003b\n")
    codes = ("--code", "b=E2", "--code", "\u2003 = 07")
    said = run("grid.txt", "--threads", "moss", *codes)
    assert said.stderr == "" and "1  a blank\n" in said.stdout


@pytest.mark.parametrize("words", ["RD=07,DR=E2", "RD=07, DR=E2", "RD=07 DR=E2", "RD=07;DR=E2"])
def test_codes_that_are_said_with_one_option_are_told_with_what_to_type(desk, words):
    (desk / "grid.csv").write_text("RD,DR,RD\n")
    (line,) = wrong(desk, "grid.csv", "--code", words)
    assert line == (
        f"./grid.csv:1:1: --code {words} is of several codes; "
        "each has a --code of its own: --code RD=07 --code DR=E2 [bring-codes-together]"
    )


def test_of_many_codes_said_with_one_option_as_many_are_shown_as_a_line_holds(desk):
    names = [f"bed{n}" for n in range(30)]
    (desk / "grid.csv").write_text(",".join(names) + ",oops\n")
    several, other = wrong(desk, "grid.csv", "--code", ",".join(f"{one}=K5" for one in names))
    assert "of its own: --code bed0=K5 --code bed1=K5 " in several and len(several) <= 220
    assert several.endswith("K5 … [bring-codes-together]")
    assert "'oops', which stands" in other, "what is wrong besides is told too"


def test_a_code_of_the_file_that_looks_like_several_is_one(desk):
    (desk / "grid.csv").write_text('"RD=07,DR",E2\n')
    run("grid.csv", "--threads", "moss", "--code", "RD=07,DR=K4", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["pb"]


@pytest.mark.parametrize(
    ("given", "right"),
    [
        ("07=RD", "RD=07"),
        ("fern=two ducks", "'two ducks=fern'"),
        (".=RD", "RD=."),
        ("#4f7942=RD", "'RD=#4f7942'"),
    ],
)
def test_a_code_that_is_said_the_wrong_way_round_is_told_in_one_line(desk, given, right):
    """Its code is known by that: of it and of the thread nothing more is asked."""
    (desk / "grid.csv").write_text(f"{given.partition('=')[2]},E2\n")
    (line,) = wrong(desk, "grid.csv", "--code", given)
    assert line == (
        f"./grid.csv:1:1: --code {given} is the wrong way round: the code of the file stands before the '='; "
        f"write --code {right} [bring-code-turned]"
    )
    assert shlex.split(right) == ["=".join(reversed(given.split("=")))]


def test_several_codes_of_one_thread_are_each_turned_round(desk):
    (desk / "grid.csv").write_text("RD,DR,oops\n")
    *turned, other = wrong(desk, "grid.csv", "--code", "07=RD", "--code", "07=DR")
    assert {line.partition("; ")[2] for line in turned} == {
        "write --code RD=07 [bring-code-turned]",
        "write --code DR=07 [bring-code-turned]",
    }
    assert "'oops', which stands for 1 stitch" in other


def test_a_number_that_the_file_lacks_may_be_said_to_be_another_thread(desk):
    """As somebody does who says for several files at once which thread has taken another's place."""
    (desk / "grid.csv").write_text("E2,K4\n")
    run("grid.csv", "--threads", "moss", "--code", "07=E2", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bp"]


@pytest.mark.parametrize(
    ("words", "right"),
    [
        (("--code", "RD", "=", "07", "grid.csv"), "RD=07"),
        (("grid.csv", "--code", "RD", "=07"), "RD=07"),
        (("grid.csv", "--code", "RD=", "07"), "RD=07"),
        (("grid.csv", "--code", "E2=07", "--code", "RD", "=", "two ducks"), "'RD=two ducks'"),
        (("grid.csv", "--code", "RD", "="), "RD=THREAD"),
        (("grid.csv", "--code", "RD", "=", "--trim"), "RD=THREAD"),
        (("--code", "RD", "=", "grid.csv"), "RD=THREAD"),
    ],
)
def test_of_spaces_between_a_code_and_its_thread_it_is_told_to_leave_them_out(desk, words, right):
    (desk / "grid.csv").write_text("RD,E2\n")
    said = " ".join(run(*words, "--threads", "moss", code=2).stderr.split())
    assert said.endswith(f"write --code {right}, without spaces")


def test_a_file_may_stand_behind_a_code_that_is_left_without_its_thread(desk):
    (desk / "grid.csv").write_text("RD,E2\n")
    said = run("--code", "RD=", "grid.csv", "--threads", "moss", code=2).stderr
    assert "--code RD=: write the code, '=' and its thread" in said


def test_of_a_thread_that_is_mistyped_its_own_line_tells_and_no_other(desk):
    (desk / "grid.csv").write_text("RD,DR\n")
    codes = ("--code", "RD=071", "--code", "DR=K4")
    said = run("grid.csv", "--threads", "moss", *codes, code=2)
    (line,) = said.stderr.splitlines()
    assert line.startswith("Error: --code RD=071: Moss Stranded has no '071'; ")
    assert said.stdout == ""


def test_all_that_is_wrong_with_codes_is_told_in_one_go(desk):
    """A thread that the card has not, a slip in the code, no thread at all; and what none of them says."""
    (desk / "grid.csv").write_text("down,canal,o1\ndown,E2,\n")
    codes = ("dwon=07", "canal=K5", "E2=ferm", "o1")
    words = [word for code in codes for word in ("--code", code)]
    said = run("grid.csv", "--threads", "moss", *words, "--into", "new", code=2).stderr
    for line in (
        "./grid.csv:1:1: advice: no stitch has the code 'dwon', of which --code says what it is; "
        "did you mean 'down'? [bring-code-unused]",
        "--code canal=K5: Moss Stranded has no 'K5'; ",
        "--code E2=ferm: Moss Stranded has no 'ferm'; ",
        "--code o1: write the code, '=' and its thread",
        "./grid.csv:1:1: 'down', which stands for 2 stitches, ",
        "./grid.csv:1:3: 'o1', which stands for 1 stitch, ",
        "Say what each is, a full stop for bare cloth: --code down=… --code canal=… --code o1=…\n",
    ):
        assert said.count(line) == 1, f"{line}\n{said}"
    assert "'canal', which stands" not in said, "it is explained, though wrongly"
    assert max(map(len, said.splitlines())) <= 220
    assert not (desk / "new").exists()


def test_a_code_that_no_stitch_has_is_told_and_hinders_nothing(desk):
    """Also where she says it for several files at once. A code that becomes bare cloth is one of the file."""
    (desk / "grid.csv").write_text("w,down,E2\n")
    codes = ("--code", "w=#ffffff", "--code", "down=07", "--code", "m=K4", "--bare", "#ffffff")
    said = run("grid.csv", "--threads", "moss", *codes, "--into", "new").stderr
    (line,) = said.splitlines()
    assert "no stitch has the code 'm', of which --code says what it is; known here: " in line
    assert rows(desk / "new/chart.txt") == [".fb"]


@pytest.mark.parametrize(
    ("words", "right"),
    [
        ("robin.png --bare #ffffff --trim", '--bare "#ffffff", or without #, since your shell'),
        ("grid.csv --code #6b503a=K4 --into new", '--code "#ffffff=.", since your shell'),
    ],
)
def test_a_colour_that_a_shell_took_for_a_remark_is_told(desk, words, right):
    """Unquoted, nothing of it and of what follows reaches the command."""
    said = " ".join(run(*shlex.split(words, comments=True), code=2).stderr.split())
    assert "nothing came after it; a word that begins with # stands in quotes, " + right in said
    assert run("robin.png", "--bare", "ffffff", code=2).stderr.count("nothing came") == 0


@pytest.mark.parametrize(
    ("given", "right"), [("white", "#ffffff"), ("Navy", "#000080"), ("#FFF", "#ffffff")]
)
def test_a_colour_by_its_name_or_in_three_figures_is_told_in_six(desk, given, right):
    """Names and figures are those of W3C's "CSS Color Module Level 4"."""
    (desk / "grid.csv").write_text("E2\n")
    said = " ".join(run("grid.csv", "--bare", given, code=2).stderr.split())
    assert said.endswith(f'{given!r} is not how a colour is written here; write "{right}"')
    said = " ".join(run("grid.csv", "--bare", "reed", code=2).stderr.split())
    assert said.endswith("'reed' is no colour; write for example '#f6f3ea'")


def test_a_word_behind_the_file_is_told_with_the_options_that_it_may_belong_to(desk):
    (desk / "grid.csv").write_text("E2\n")
    said = " ".join(run("grid.csv", "two ducks", code=2).stderr.split())
    assert said.endswith(
        "'two ducks' stands behind it without an option; the pattern it becomes is "
        "--pattern 'two ducks', the thread card --threads 'two ducks'"
    )


def test_the_key_of_a_new_folder_has_the_name_that_the_series_has_for_the_card(desk):
    """Where two series call it otherwise, or none has it, it is the card's own."""
    (desk / "grid.csv").write_text("E2\n")
    series = desk / "content/series/garden-year"
    renamed = (series / "series.yaml").read_text().replace("name: moss", "name: soft")
    pattern = (series / "fern/pattern.yaml").read_text().replace("moss", "soft")
    (series / "series.yaml").write_text(renamed)
    (series / "fern/pattern.yaml").write_text(pattern)
    run("grid.csv", "--threads", "moss", "--into", "new")
    assert "{soft: E2}" in (desk / "new/key.yaml").read_text()
    (desk / "content/series/second").mkdir()
    (desk / "content/series/second/series.yaml").write_text(renamed.replace("soft", "hard"))
    run("grid.csv", "--threads", "moss", "--into", "newer")
    assert "{moss: E2}" in (desk / "newer/key.yaml").read_text()


def test_a_pattern_whose_thread_set_the_series_has_not_is_told_at_its_line(desk):
    """As proof tells it; whatever thread is asked for."""
    (desk / "grid.csv").write_text("E2\n")
    series = desk / "content/series/garden-year/series.yaml"
    named = series.read_text().replace("name: moss,", "name: stranded,").replace("spool", "reel")
    series.write_text(named)
    for asked in ((), ("--threads", "moss"), ("--threads", "stranded")):
        said = run("grid.csv", "--pattern", "fern", "--replace", *asked, code=1).stderr
        assert "fern/pattern.yaml:7:15: there is no thread set 'moss'; known here: reel, " in said
        assert said.endswith("2 things to mend; nothing was written.\n")


def test_codes_are_not_for_pictures(desk):
    (desk / "design.png").write_bytes(picture([[BRICK]]))
    said = run("design.png", "--threads", "moss", "--code", "x=K4", code=2).stderr
    assert "--code is for tables and grids" in said


def test_a_code_that_is_long_is_told_in_a_line_that_is_not(desk):
    (desk / "grid.csv").write_text(f"{'x' * 9000},E2\n")
    (line,) = wrong(desk, "grid.csv")
    assert line.startswith(
        f"./grid.csv:1:1: '{'x' * 39}…', which stands for 1 stitch, is no colour"
    )
    assert len(line) < 300


def test_a_sign_that_nobody_sees_is_told_as_the_tab_that_it_is(desk):
    (desk / "grid.txt").write_text("# b  E2\nb\tb\n")
    assert wrong(desk, "grid.txt") == [
        "./grid.txt:2:2: a tab at column 2, row 1; write '.' for bare cloth [chart-space]"
    ]


@pytest.mark.parametrize(
    ("name", "words"), [("d.txt", "# a \u202e remark\n# b  E2\nb\n"), ("d.csv", "E2,K\u202e4\n")]
)
def test_a_letter_that_nobody_sees_is_told_once_and_nothing_is_written(desk, name, words):
    (desk / name).write_text(words, "utf-8")
    (line,) = wrong(desk, name)
    assert line.startswith(f"./{name}:1:5: here stands a mark that turns the direction of writing")


def test_notes_of_a_picture_that_cannot_be_read_spoil_no_stitch(desk):
    """Exif that is none, and a profile of colours that is none."""
    notes = _chunk(b"eXIf", b"no Exif at all"), _chunk(b"iCCP", b"x\0\0" + zlib.compress(b"none"))
    (desk / "design.png").write_bytes(png(8, 2, _rows_of(RGB), *notes))
    run("design.png", "--threads", "moss", "--into", "new")
    assert " ".join(rows(desk / "new/chart.txt")) == "bpf fpb"


@settings(
    max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(st.binary(max_size=200), st.sampled_from([".png", ".csv", ".txt", ".jpg"]), st.booleans())
def test_no_bytes_bring_the_command_down(desk, data, ending, as_picture):
    """Whatever lies in the file: a chart, or lines that say what is wrong."""
    head = b"\x89PNG\r\n\x1a\n" if as_picture else b""
    (desk / f"any{ending}").write_bytes(head + data)
    result = CliRunner().invoke(main, ["bring", f"any{ending}", "--threads", "moss", "--wide", "9"])
    assert result.exit_code in (0, 1), result.output
    assert "fault in packetgen" not in result.output


# --- there and back ---


def chart_picture(*words: str, code: int = 0) -> str:
    result = CliRunner().invoke(main, ["chart", "picture", *words])
    assert result.exit_code == code, result.output
    return result.output


@pytest.mark.parametrize("px", ["1", "6"])
def test_a_chart_drawn_as_a_picture_comes_back_to_the_letter(desk, px):
    """Remarks and all, so that nothing has to be written."""
    chart_picture("fern", "--px", px, "--into", "fern.png")
    before = files(desk)
    assert "nothing had to be written" in run("fern.png", "--pattern", "fern", "--replace").stdout
    assert files(desk) == before
    (desk / "content" / CHART).write_text("....\n....\n")
    run("fern.png", "--pattern", "fern", "--replace")
    assert (desk / "content" / CHART).read_text() == TINY[CHART]


def test_a_stitch_that_was_changed_in_another_program_is_changed_in_the_chart(desk):
    """Saved there in full colour; the key stays, and with it the backstitch."""
    chart_picture("fern", "--into", "fern.png")
    edited = Image.open(BytesIO((desk / "fern.png").read_bytes())).convert("RGBA")
    edited.putpixel((1, 1), (*RGB[0], 255))
    edited.save(desk / "fern.png")
    said = run("fern.png", "--pattern", "fern", "--replace").stdout
    assert rows(desk / "content" / CHART) == ["rrbb", "rr.."]
    assert (desk / "content" / PATTERN).read_text() == TINY[PATTERN]
    assert "stays on the new one: backstitch, french_knots, beads, close_ups" in said
    assert "The old chart was" not in said, "it is as large"


def test_a_chart_of_another_size_is_told_with_the_size_that_is_gone(desk):
    """With it went perhaps the bare rows that were added since."""
    (desk / "design.png").write_bytes(picture([[LEAF, BRICK]]))
    said = run("design.png", "--pattern", "fern", "--replace", "--drop-lines").stdout
    assert "\nThe old chart was 4 × 2 stitches.\n" in said
    assert "The old chart was" not in run("design.png", "--pattern", "fern", "--replace").stdout


def test_a_picture_has_the_name_of_its_pattern_and_bounds(desk):
    assert "4 × 2 stitches in fern.png" in chart_picture("fern")
    assert Image.open(BytesIO((desk / "fern.png").read_bytes())).size == (4, 2)
    assert "did you mean 'fern'?" in chart_picture("ferns", code=2)


def test_what_is_told_finds_room_on_a_terminal(desk):
    many = [
        [f"#{red:02x}{green:02x}40" for red in range(0, 250, 10)] for green in range(0, 250, 10)
    ]
    (desk / "design.png").write_bytes(picture(many))
    said = run("design.png", "--threads", "moss", "--colours", "2", "--tidy", "30").stdout
    assert max(map(len, said.splitlines())) <= 80
    assert "To keep to the number of colours" in said and "Fall together on" in said


@pytest.mark.parametrize("mode", ["L", "CMYK"])
def test_photographs_without_colour_or_for_printers_are_read(desk, mode):
    (desk / "content/threads/greys.yaml").write_text(GREYS)
    data = BytesIO()
    Image.new("RGB", (40, 20), "#808080").convert(mode).save(data, "JPEG")
    (desk / "photo.jpeg").write_bytes(data.getvalue())
    run("photo.jpeg", "--threads", "greys", "--wide", "10", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["h" * 10] * 5


def test_a_chart_that_is_named_outside_its_folder_is_not_written_there(desk):
    (desk / "content" / PATTERN).write_text(TINY[PATTERN] + "chart: ../chart.txt\n")
    (desk / "content" / CHART).rename(desk / "content" / FERN / "../chart.txt")
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    assert rows(desk / "content" / FERN / "../chart.txt") == ["rrbb", "rk.."]
    assert rows(desk / "content" / CHART) == ["f"] and proof(desk / "content").reckoned


def test_a_pattern_that_is_not_begun_yet_is_told_with_the_command_that_begins_it(desk):
    (desk / "design.png").write_bytes(picture([[LEAF]]))
    said = run("design.png", "--pattern", "leaf-mould-in-november", "--replace", code=2).stderr
    assert said.endswith(
        "Error: there is no pattern called 'leaf-mould-in-november'; known here: fern; a new one is begun first: packetgen "
        "begin --pattern 'Leaf Mould in November'\n"
    )
    near = run("design.png", "--pattern", "ferm", "--replace", code=2).stderr
    assert near.endswith("Error: there is no pattern called 'ferm'; did you mean 'fern'?\n")
    missing = run("design.png", "--threads", "mos", code=2).stderr
    assert missing.endswith("there is no thread card called 'mos'; did you mean 'moss'?\n")


def test_codes_that_gave_way_to_marks_of_the_key_are_named(desk):
    """Brought once with two threads mixed up, and once more as it was meant: the first marks stay."""
    (desk / "grid.csv").write_text("P,H\nH,P\n")
    wrong = ("--code", "P=K4", "--code", "H=07", "--drop-lines", "--replace")
    run("grid.csv", "--pattern", "fern", *wrong)
    right = ("--code", "P=07", "--code", "H=K4", "--replace")
    said = " ".join(run("grid.csv", "--pattern", "fern", *right).stdout.split())
    chart = rows(desk / "content" / CHART)
    marks = dict(zip("PH", chart[0]))
    named = ", ".join(f"{code} is {mark}" for code, mark in marks.items() if code != mark)
    assert named and "The key keeps the marks that it had, so in the chart your " in said
    assert all(f"your {code} is {mark}" in said for code, mark in marks.items() if code != mark)
    assert "To have your codes as marks, write key: {} in pattern.yaml first, " in said
    pattern = desk / "content" / PATTERN
    pattern.write_text(re.sub(r"(?m)^key:\n(  .*\n)+", "key: {}\n", pattern.read_text()))
    run("grid.csv", "--pattern", "fern", *right)
    assert rows(desk / "content" / CHART) == ["PH", "HP"]


def test_lists_that_are_empty_are_nothing_that_lies_on_the_chart(desk):
    path = desk / "content" / PATTERN
    begins, ends = (TINY[PATTERN].index(name) for name in ("backstitch:", "credits:"))
    nothing = "backstitch: []\nfrench_knots: []\n"
    path.write_text(TINY[PATTERN][:begins] + nothing + TINY[PATTERN][ends:])
    (desk / "design.png").write_bytes(picture([[BRICK, PEAT, LEAF]]))
    said = run("design.png", "--pattern", "fern", "--replace").stdout
    assert "Written: " in said and "stays on the new one" not in said


def test_the_list_of_an_example_goes_where_the_key_was_written_by_hand(desk):
    """All marks of the new chart are in the key already, so that nothing but the chart is written."""
    chart = desk / "content" / CHART
    chart.write_text("# One character a stitch.\n# r  example rose\n# k  example kale\nrk\n")
    (desk / "design.png").write_bytes(
        picture([[BRICK, PEAT, BRICK, PEAT], [PEAT, BRICK, PEAT, BRICK]])
    )
    run("design.png", "--pattern", "fern", "--replace", "--drop-lines")
    assert "example" not in chart.read_text()
    assert "# r  E2 brick\n" in chart.read_text()
