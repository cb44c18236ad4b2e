"""While the count of a cloth may be a slip, that is told, and not what follows from it."""

from pathlib import Path

from packetgen.pipeline import proof, review
from tests.content_builder import CHART, CLOTH, FERN, FINISH, PATTERN, SERIES, TINY, build

LARGE = {
    f"{FERN}/chart.txt": "\n".join(["rrbb" + "r" * 32, *["rk" + "." * 34] * 34, "rrbb" + "r" * 32])
}


def lines(folder: Path, changes) -> list[str]:
    found = review(proof(build(folder, {**LARGE, **changes})))
    return [str(one) for chapter in found.chapters for one in chapter.problems]


def codes(folder: Path, changes) -> list[str]:
    found = review(proof(build(folder, {**LARGE, **changes})))
    return [one.code for chapter in found.chapters for one in chapter.problems]


def test_a_count_that_is_a_slip_is_told_alone_where_designs_still_fit(tmp_path):
    """Of 60 threads an inch the same cloth is crowded, and its cards are small."""
    fine = TINY[CLOTH].replace("count: 28", "count: 60")
    unnamed = fine.replace("Hopsack 28", "Hopsack")
    follow = {"coverage-crowded", "magnets-no-room", "magnets-none-room"}
    assert follow & set(codes(tmp_path / "unnamed", {CLOTH: unnamed}))
    told = codes(tmp_path / "named", {CLOTH: fine})
    assert "count-other" in told and not follow & set(told)


def test_where_a_design_does_not_fit_by_it_the_count_is_the_one_fault(tmp_path):
    coarse = TINY[CLOTH].replace("count: 28", "count: 10")
    told = lines(tmp_path / "named", {CLOTH: coarse})
    assert [one for one in told if "count is 10" in one or "has room for" in one] == [
        "cloths/hopsack-28.yaml:3:8: the count is 10, and the cloth is called 'Hopsack 28', and by that count "
        "1 design does not fit the finishing piece; if the name is right, write count: 28; else mend the name"
    ]
    assert not [one for one in told if "is covered to" in one]
    unnamed = coarse.replace("Hopsack 28", "Hopsack").replace("over: 2", "over: 1")
    (fault,) = [
        one for one in lines(tmp_path / "unnamed", {CLOTH: unnamed}) if "has room for" in one
    ]
    assert "a smaller design" in fault and "covered" in str(
        lines(tmp_path / "again", {CLOTH: unnamed})
    )


def test_where_the_author_says_that_the_count_is_right_all_is_told(tmp_path):
    aside = "laid_aside:\n  - {advice: count-other, because: 28 is the width of the bolt}\n"
    changes = {
        CLOTH: TINY[CLOTH].replace("count: 28", "count: 10"),
        SERIES: TINY[SERIES] + aside,
    }
    told = lines(tmp_path, changes)
    (fault,) = [one for one in told if "has room for" in one]
    assert "a smaller design" in fault
    assert [one for one in told if "is covered to" in one]


def test_of_several_designs_that_do_not_fit_by_it_the_number_is_told(tmp_path):
    ivy = {path.replace("fern", "ivy"): text for path, text in TINY.items() if FERN in path}
    ivy[PATTERN.replace("fern", "ivy")] = TINY[PATTERN].replace("Fern by the Tap", "Ivy Wall")
    changes = {
        **ivy,
        f"{FERN.replace('fern', 'ivy')}/chart.txt": LARGE[f"{FERN}/chart.txt"],
        SERIES: TINY[SERIES].replace("order: [fern]", "order: [fern, ivy]"),
        CLOTH: TINY[CLOTH].replace("count: 28", "count: 10"),
    }
    told = lines(tmp_path, changes)
    assert len([one for one in told if "by that count 2 designs do not fit" in one]) == 1
    assert not [one for one in told if "has room for" in one]


def test_all_strands_of_a_thread_in_the_needle_are_told_once_and_not_of_every_cloth(tmp_path):
    """Nor is anything laid aside called idle that the slip has hidden."""
    aside = "laid_aside:\n  - {advice: skein-little, because: it is a skein}\n"
    changes = {
        SERIES: TINY[SERIES].replace("card: moss, strands: 2", "card: moss, strands: 6"),
        PATTERN: TINY[PATTERN] + aside,
    }
    told = codes(tmp_path / "told", changes)
    assert "strands-all" in told and "laid-aside-idle" not in told
    assert not [one for one in lines(tmp_path / "lines", changes) if "6 strands of Moss" in one]


def test_designs_that_do_not_fit_by_a_trim_changed_about_are_told_at_the_trim(tmp_path):
    """30 stitches of 14 to the inch are 54.4 mm: with 6 mm of card and 20 of trim on both sides they are too wide for
    100 mm, and would have room with 3."""
    wide = {
        FINISH: TINY[FINISH].replace(
            "trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}",
            "trim: {kind: round, overlap: 3 mm, width: 20 mm}",
        ),
        CHART: "\n".join(["rkbb" + "r" * 26, "rk.." + "r" * 26, *["r" * 30] * 8]),
    }
    told = lines(tmp_path, wide)
    assert [one for one in told if "fit" in one or "has room for" in one] == [
        "finishes/shelf/finish.yaml:24:43: the trim is 20 mm wide, and its ends overlap by no more than 3 mm, and with "
        "that width the designs do not fit the finishing piece; look once more: did 'width' and 'overlap' change places?"
    ]


def test_designs_that_have_no_room_for_one_corner_of_the_panel_are_told_at_the_panel(tmp_path):
    """36 stitches of 14 to the inch are 65.3 mm; 10,100 in place of 100,100 leaves a triangle of 100 × 100 mm, in which
    no square of more than 50 mm lies."""
    slanting = TINY[FINISH].replace("0,0 100,0 100,100 0,100", "0,0 100,0 10,100 0,100")
    told = lines(tmp_path, {FINISH: slanting})
    assert [one for one in told if "fit" in one or "has room for" in one] == [
        "finishes/shelf/finish.yaml:4:12: the panel would be a rectangle but for its corner 10,100, and on that 1 design "
        "does not fit; write 100,100 for it"
    ]
