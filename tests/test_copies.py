"""A design that stands twice in a series is told, also where it was brought in a second time with other marks."""

from dataclasses import replace

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Place, Problems
from packetgen.load.copies import complain_of_copies
from packetgen.model import Knot, Line
from tests.content_builder import CHART, build, picture
from tests.stitching import pattern
from tests.test_builds import IVY, TWO


def told(*patterns) -> list[str]:
    problems = Problems()
    complain_of_copies(patterns, Problems(), problems)
    return [one.place.path for one in problems if one.code == "chart-copied"]


def beside(mark: str) -> dict:
    """A line and a knot in that mark."""
    at = Place("")
    return {
        "lines": (Line(mark, ((1, 1), (2, 2)), False, at),),
        "knots": (Knot(mark, (1.5, 1.5), at),),
    }


def sprig(*rows: str, name: str = "two", marks: str = "mts", **more):
    """The threads moss, clay and soot, in the marks that are given."""
    of = pattern(*rows, id=name, title=name, story_markdown=name, place=Place(name), **more)
    key = (replace(line, mark=mark) for line, mark in zip(of.key, marks))
    return replace(of, key=tuple(key))


ONE = sprig("mmt.", "m.ts", name="one", **beside("s"))


@pytest.mark.parametrize(
    "other",
    [
        sprig("mmt.", "m.ts", **beside("s")),
        sprig("aab.", "a.bc", marks="abc", **beside("c")),
        sprig("tts.", "t.sm", marks="tsm", **beside("m")),  # her own marks changed about
        sprig(
            "mmt.", "m.ts", **beside("t")
        ),  # lines and knots of her own over the chart of another
        sprig("mmt.", "m.ts"),
    ],
)
def test_the_same_stitches_in_the_same_threads_are_one_design_by_whatever_marks(other):
    assert told(ONE, other) == ["two"]


@pytest.mark.parametrize(
    "other",
    [
        sprig("mmt.", "m.tt", **beside("s")),
        sprig("ttm.", "t.ms", **beside("s")),  # the same picture in other colours
        sprig("mmt", "m.t", **beside("s")),
    ],
)
def test_another_stitch_or_thread_makes_another_design(other):
    assert told(ONE, other) == []


def test_designs_without_whole_stitches_are_told_apart_by_their_lines_and_knots():
    one = sprig("....", name="one", **beside("s"))
    assert told(one, sprig("....", **beside("s"))) == ["two"]
    assert told(one, sprig("....", **beside("t"))) == told(one, sprig("....")) == []


def test_bring_tells_of_a_drawing_that_another_pattern_has_already(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    build(tmp_path / "content", TWO | {f"{IVY}/chart.txt": "bbrr\nrk..\n"})
    drawn = CliRunner().invoke(main, ["chart", "picture", "fern", "--into", "fern.png"])
    assert drawn.exit_code == 0, drawn.output
    words = ["bring", "fern.png", "--pattern", "ivy", "--replace"]
    said = CliRunner().invoke(main, words).output
    assert "all whole stitches are the very same as those of" in said and "[chart-copied]" in said
    (tmp_path / "other.png").write_bytes(picture([["#a04030", "#6b503a"]]))
    said = (
        CliRunner()
        .invoke(main, ["bring", "other.png", "--pattern", "ivy", "--replace", "--drop-lines"])
        .output
    )
    assert "Written: " in said and "chart-copied" not in said
    assert (tmp_path / "content" / CHART).is_file()


@pytest.mark.parametrize(
    ("notes", "copied"),
    [
        ("Stitch the frame of the lantern first, then its flame.", ["two/stitching.md"]),
        ("Stitch the lantern before the daisies.", []),  # tells of both
        ("Begin in the middle.", []),  # designs of one series may well be stitched alike
    ],
)
def test_instructions_of_another_design_are_told_where_they_name_that_and_not_their_own(
    notes, copied
):
    titles = {"one": "A Lantern by the Lupins", "two": "Daisies in the Gravel"}
    patterns = [
        replace(
            sprig("mm" if name == "one" else "mt", name=name),
            title=title,
            about=title,
            photo_alt=title,
            notes_markdown=notes,
            place=Place(f"{name}/pattern.yaml"),
        )
        for name, title in titles.items()
    ]
    problems = Problems()
    complain_of_copies(patterns, Problems(), problems)
    assert [one.place.path for one in problems if one.code == "texts-copied"] == copied
