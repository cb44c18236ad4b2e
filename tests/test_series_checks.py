"""A series is looked at as a whole: what is listed for nothing, and what a pattern lacks beside the others."""

import random
import re
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS, Level
from packetgen.model import (
    NO_TRIM,
    Counter,
    DateRule,
    Designer,
    Occasion,
    Paint,
    Photo,
    Revision,
    Sells,
    ToCome,
)
from packetgen.pipeline import proof, review
from packetgen.pipeline.proofs import with_photos_told
from packetgen.reckon.series_checks import EXAMPLE_DAY, complain_of_series
from packetgen.reckon.swaps import swaps
from tests.content_builder import FERN, FINISH, PATTERN, SERIES, TINY, build, picture
from tests.stitching import DESIGNER, pattern, piece, series, thread_set

PHOTO = Photo(b"", 1, 1)


def found(of) -> dict[str, str]:
    """Code → its line, for a series whose patterns all have a photograph and words for it."""
    problems = Problems()
    complain_of_series(of, problems)
    return {problem.code: str(problem) for problem in problems}


def finished(**more):
    """A pattern that lacks nothing."""
    return pattern("mm", **({"photo": PHOTO, "photo_alt": "A sprig in a frame."} | more))


def test_a_series_that_lacks_nothing_is_not_complained_of():
    assert found(series(finished())) == {}


def test_a_trim_that_has_a_colour_needs_a_piece_with_a_trim():
    coloured = series(finished(trim_hex="#7d9b76", trim_place=Place("fern/pattern.yaml", 9, 3)))
    assert found(coloured) == {}
    bare = found(replace(coloured, finish=replace(coloured.finish, trim=NO_TRIM)))
    assert list(bare) == ["trim-idle"]
    assert bare["trim-idle"].startswith(
        "fern/pattern.yaml:9:3: advice: trim_hex is the colour of a trim"
    )


def test_two_patterns_of_one_title_are_an_error_capitals_or_not():
    two = series(finished(), finished(id="other", title="a SPRIG", place=Place("other")))
    assert found(two) == {
        "title-twice": "other:1:1: 'a SPRIG' is also the title of another pattern (sprig); "
        "give one of the two another"
    }
    assert FAULTS["title-twice"].level is Level.ERROR


def test_a_pattern_that_is_here_is_no_longer_to_come():
    here = replace(series(finished()), to_come=(ToCome("A sprig", DESIGNER, finished().occasion),))
    assert "A sprig is listed as still to come" in found(here)["to-come-here"]
    other = replace(here, to_come=tuple(replace(one, title="The Sprig") for one in here.to_come))
    assert "The Sprig is listed as still to come" in found(other)["to-come-here"]


def test_two_designs_for_one_day_are_told_at_the_second():
    """However the day is said; a day that only some years share is let be."""
    lifting = Occasion(
        "Lifting", DateRule("first of May", fixed=(5, 1), whole="May"), Place("onion", 4, 32)
    )
    easter = Occasion("Easter", DateRule("Easter", easter=(0, False)))
    here = series(
        finished(),
        finished(id="fern", title="A Fern", occasion=easter),
        finished(id="onion", title="Onions", occasion=lifting),
    )
    assert found(here) == {
        "day-shared": "onion:4:32: advice: Onions is for the same day as A Sprig (first of May), so the swap "
        "calendar hangs both at once; give one of the two another day, unless they are to hang together"
    }
    coming = replace(series(finished()), to_come=(ToCome("Onions", DESIGNER, lifting),))
    assert "Onions is for the same day as A Sprig" in found(coming)["day-shared"]
    begun = replace(coming.to_come[0], occasion=replace(lifting, name=EXAMPLE_DAY))
    assert "day-shared" not in found(replace(coming, to_come=(begun,))), "begin chose it"
    template = Path(__file__).parents[1] / "templates/begin/pattern.yaml"
    assert f"name: {EXAMPLE_DAY}," in template.read_text("utf-8")


@pytest.mark.parametrize(
    "whole, first, release, waits",
    [
        (
            "March",
            (3, 1),
            date(2027, 3, 5),
            "all of March 2027, which has begun already when the series is out on 2027-03-05",
        ),
        ("March", (3, 1), date(2027, 3, 1), ""),
        ("March", (3, 1), date(2027, 4, 1), ""),
        (
            "winter",
            (12, 1),
            date(2027, 2, 28),
            "all of winter 2026, which has begun already when the series is out on 2027-02-28",
        ),
        ("winter", (12, 1), date(2027, 3, 1), ""),
        ("", (3, 1), date(2027, 3, 5), ""),
    ],
)
def test_a_month_that_has_begun_before_the_release_waits_a_year_and_that_is_told(
    whole, first, release, waits
):
    """A day of its own that is over waits as well, and everybody knows that; of a month one may expect otherwise."""
    occasion = Occasion("Sowing", DateRule("in March", fixed=first, whole=whole))
    released = datetime(release.year, release.month, release.day, tzinfo=UTC)
    of = replace(series(finished(occasion=occasion)), release=released)
    told = found(of).get("occasion-begun", "")
    assert waits in told and bool(told) == bool(waits)
    first_up = swaps(of)[0].turns[0].day
    assert not told or f"first hangs in {whole} {first_up.year}" in told


@pytest.mark.parametrize(
    ("release", "behind"),
    [
        (
            date(2027, 5, 15),
            "just behind the days of 2 designs, the last 2027-05-09, so that no design of the series has its day until 2028-03-01; ",
        ),
        (date(2027, 3, 2), ""),  # one hangs in May
        (date(2027, 5, 9), ""),  # it hangs on the day
        (date(2027, 12, 1), ""),  # spring is near again
        (date(2026, 10, 1), ""),  # long after the last spring, and long before the next
    ],
)
def test_a_release_that_was_moved_behind_the_days_of_all_designs_is_told(release, behind):
    """Both would hang for the first time in the year after."""
    rules = DateRule("1 March", fixed=(3, 1)), DateRule("second Sunday of May", nth=(2, 6, 5))
    spring, may = (
        finished(id=f"design-{n}", title=f"Design {n}", occasion=Occasion("Day", rule))
        for n, rule in enumerate(rules)
    )
    released = datetime(release.year, release.month, release.day, tzinfo=UTC)
    told = found(replace(series(spring, may), release=released)).get("release-behind", "")
    assert behind in told and bool(told) == bool(behind)


def test_a_designer_without_a_pattern_is_told():
    idle = Designer("wend", "Hob Wend", "Naps.", Sells.PDF, None, place=Place("series.yaml", 9, 9))
    both = replace(series(finished()), designers=(DESIGNER, idle))
    assert found(both)["designer-idle"].startswith(
        "series.yaml:9:9: advice: Hob Wend is listed, and no pattern here or to come is by that"
        " designer; name wend in a pattern, here or in 'to_come'; or take the entry out"
    )


WEND = Designer("wend", "Hob Wend", "Naps.", Sells.PDF, "https://hob-wend.example/")
AT_WEND = Counter("Hob's counter", "https://hob-wend.example/sprig")
AT_HER_OWN = Counter(f"{DESIGNER.name}'s counter", "https://counter.example/")


def test_a_design_that_only_another_designer_sells_is_asked_about():
    sold = finished(sold_at=(AT_WEND,), designer_place=Place("sprig/pattern.yaml", 3, 11))
    told = found(replace(series(sold), designers=(DESIGNER, WEND)))
    assert told["designer-other"] == (
        f"sprig/pattern.yaml:3:11: advice: {sold.title} has {DESIGNER.name} as its designer, and only"
        f" Hob Wend sells it; write 'wend' if it is Hob Wend's; else name in 'sold_at' where"
        f" {DESIGNER.name} sells it, and take wend out of the series"
    )
    assert "designer-idle" not in told


@pytest.mark.parametrize(
    ("shop", "sold_at", "told"),
    [
        ("https://own.example/", (AT_WEND,), True),
        (None, (AT_WEND,), False),  # many sell at a friend's
        ("https://own.example/", (AT_WEND, AT_HER_OWN), False),
        ("https://own.example/", (Counter("Hob Wend, on the green", "https://x.example/"),), True),
        ("https://own.example/", (Counter("The Fair", "https://fair.example/"),), False),
    ],
)
def test_a_friend_who_has_designs_of_his_own_may_sell_it_for_one_without_a_shop(
    shop, sold_at, told
):
    hers = replace(DESIGNER, shop=shop)
    one = finished(designer=hers, sold_at=sold_at)
    other = finished(id="other", title="Other", designer=WEND, sold_at=(AT_WEND,))
    both = replace(series(one, other), designers=(hers, WEND))
    assert ("designer-other" in found(both)) is told


def test_a_designer_whose_pattern_is_to_come_is_not_idle():
    idle = Designer("wend", "Hob Wend", "Naps.", Sells.PDF, None)
    coming = ToCome("Onions", idle, Occasion("Lifting", DateRule("in August", fixed=(8, 1))))
    assert found(replace(series(finished()), designers=(DESIGNER, idle), to_come=(coming,))) == {}


def test_a_thread_set_that_no_pattern_takes_is_told():
    other = replace(thread_set(), id="teasel", place=Place("series.yaml", 7, 12))
    two = replace(series(finished()), thread_sets=(thread_set(), other))
    assert found(two)["thread-set-unused"].startswith(
        "series.yaml:7:12: advice: no pattern is charted for the thread set teasel"
    )


def test_a_paint_on_no_part_is_told():
    lime = Paint("lime wash", "#eeeeee", "brush", 10.0, 2.0, 100.0)
    board = piece(paints=(*piece().paints, lime))
    (line,) = found(series(finished(), finish=board)).values()
    assert "no part of The Board is painted with lime wash" in line


def test_an_example_paint_on_no_part_is_told_as_an_example_alone():
    lime = Paint("example lime", "#eeeeee", "brush", 10.0, 2.0, 100.0)
    board = piece(paints=(*piece().paints, lime))
    assert found(series(finished(), finish=board)) == {}


@pytest.mark.parametrize(
    ("left_out", "asked"),
    [
        (
            {"model_stitcher": ""},
            "who stitched the model; add a line, for example credits: {model_stitcher",
        ),
        ({"finisher": ""}, "who finished it; add a line, for example credits: {finisher"),
        ({"model_stitcher": "", "finisher": ""}, "who stitched the model and who finished it;"),
    ],
)
def test_credits_that_are_missing_are_asked_for(left_out, asked):
    (line,) = found(series(finished(**left_out))).values()
    assert asked in line


def test_each_pattern_without_a_photograph_is_told_at_its_own_file():
    """And only of the small one that it needs a photograph."""
    wide = pattern(*["m" * 60] * 60, id="leaf", title="A Leaf", place=Place("leaf"))
    small = pattern("mm", place=Place("sprig"))
    problems = Problems()
    complain_of_series(series(small, wide, finished(id="third", title="A Bud")), problems)
    lines = [str(problem) for problem in problems if problem.code == "photo-missing"]
    hidden = ", from which nobody can copy a chart that is sold"
    asked = "put a photo.jpg beside pattern.yaml, or lay this aside until it is taken"
    assert lines == [
        f"leaf:1:1: advice: there is no photograph of A Leaf, so one is drawn{hidden}; {asked}",
        f"sprig:1:1: advice: there is no photograph of A Sprig, so one is drawn, very small{hidden}; {asked}",
    ]


def test_a_picture_under_another_name_is_told_once_and_not_as_a_photograph_that_is_missing(
    tmp_path,
):
    """Nor is what was laid aside for a missing one called idle."""
    taken = {f"{FERN}/IMG_0412.JPG": picture([["#a04030"]], "JPEG")}
    told = [one.code for one in proof(build(tmp_path / "plain", taken)).problems]
    assert "file-not-read" in told and "photo-missing" not in told
    aside = "laid_aside:\n  - {advice: photo-missing, because: no model yet}\n"
    kept = review(proof(build(tmp_path / "aside", {**taken, PATTERN: TINY[PATTERN] + aside})))
    codes = [one.code for chapter in kept.chapters for one in chapter.problems]
    assert "file-not-read" in codes and "laid-aside-idle" not in codes


def test_a_drawing_as_its_photograph_is_one_line_and_a_build_tells_it_too(tmp_path):
    """Nothing of its few pixels, nor that the reason for no photograph is idle: it will not stay."""
    chance = random.Random(3)
    rows = ["".join(chance.choice("rkb") for _ in range(24)) for _ in range(30)]
    hexes = {"r": "#a04030", "k": "#6b503a", "b": "#78643e"}
    drawn = picture(
        [[hexes[mark] for mark in row for _ in range(6)] for row in rows for _ in range(6)]
    )
    aside = "laid_aside:\n  - {advice: photo-missing, because: no model yet}\n"
    plain = re.sub(r"(?ms)^close_ups:.*?^(?=credits)", "", TINY[PATTERN])
    content = build(
        tmp_path,
        {
            f"{FERN}/chart.txt": "\n".join(rows),
            f"{FERN}/photo.png": drawn,
            PATTERN: plain + aside,
        },
    )
    checked = proof(content)
    codes = [one.code for chapter in review(checked).chapters for one in chapter.problems]
    assert "photo-tells-chart" in codes
    assert not {"photo-small", "laid-aside-idle"} & set(codes)
    assert "photo-tells-chart" not in {one.code for one in checked.problems}
    assert "photo-tells-chart" in {one.code for one in with_photos_told(checked).problems}


def test_a_photograph_wants_words_for_those_who_do_not_see_it():
    assert list(found(series(finished(photo_alt="")))) == ["alt-missing"]


@pytest.mark.parametrize(("day", "early"), [(14, False), (15, False), (16, True)])
def test_a_release_is_not_before_the_first_issue(day, early):
    """The series is released on 15 January 2027; an issue of that very day is in time."""
    revisions = (Revision(date(2027, 1, day), "First issue."),)
    assert ("release-early" in found(series(finished(revisions=revisions)))) == early


def test_what_is_corrected_after_its_release_is_not_released_early():
    revisions = Revision(date(2026, 5, 1), "First issue."), Revision(date(2027, 3, 1), "A knot.")
    assert "release-early" not in found(series(finished(revisions=revisions)))


def test_a_release_before_the_first_issues_of_several_patterns_is_told_once(tmp_path):
    """And at the day of the series, which is the one that was moved."""
    ivy = {path.replace("fern", "ivy"): text for path, text in TINY.items() if FERN in path}
    both = TINY[SERIES].replace("order: [fern]", "order: [fern, ivy]")
    files = build(tmp_path, {**ivy, SERIES: both.replace("release: 2027", "release: 2025")})
    (told,) = (one for one in proof(files).problems if one.code == "release-early")
    assert told.place.path == SERIES
    assert "the first issues of 2 patterns are later, the last of 2026-11-25" in str(told)


@pytest.mark.parametrize(
    ("release", "behind"),
    [
        ("2027-05-08", ""),
        ("2027-05-09", ""),
        ("2027-05-10", "1 day"),
        ("2027-06-09", "31 days"),
        ("2027-06-10", ""),
    ],
)
def test_a_pattern_that_comes_out_when_its_day_is_just_over_is_told(release, behind):
    """The second Sunday of May 2027 is the 9th, as in the calendar of that year."""
    own = finished(
        occasion=Occasion("May day", DateRule("second Sunday of May", nth=(2, 6, 5))),
        release=datetime.fromisoformat(f"{release}T09:00Z"),
        release_place=Place("pattern.yaml", 9, 10),
        revisions=(Revision(date(2027, 1, 1), "First issue."),),
    )
    told = found(series(own)).get("day-missed")
    assert told == (
        f"pattern.yaml:9:10: advice: this pattern is released on {release}, {behind} after the day that it is for, "
        "2027-05-09, so it first hangs for 2028-05-14; look once more at the release, or at 'on' in its occasion"
        if behind
        else None
    )


@pytest.mark.parametrize(
    ("release", "mend"),
    [
        ("2027-03-12", None),
        ("2027-12-03", "should the release be 2027-03-12?"),
        ("2027-10-05", None),  # the tenth of May lies months behind the first issue too
        ("2027-05-03", "should the release be 2027-03-05?"),
    ],
)
def test_a_release_with_day_and_month_exchanged_is_offered_as_it_was_meant(release, mend):
    """Where it lies just behind the first issue then."""
    own = finished(
        revisions=(Revision(date(2027, 3, 5), "First issue.", Place("pattern.yaml", 9, 3)),),
        release=datetime.fromisoformat(f"{release}T00:00Z"),
    )
    told = found(series(own)).get("issue-day-near")
    assert (told or "").rpartition("; ")[2] == (mend or "")


FIRST = (Revision(date(2026, 5, 1), "First issue."),)


@pytest.mark.parametrize(
    ("release", "hint"),
    [
        ("2026-05-01", None),
        ("2028-05-01", None),
        ("2028-05-02", "2 years after 2026-05-01, when it is ready; look at the year of both"),
        ("2072-04-10", "45 years after 2026-05-01, when it is ready; did you mean 2027-04-10?"),
        (
            "2062-04-10",
            "35 years after 2026-05-01, when it is ready; look at the year of both",
        ),  # 2026-04-10 is too early
        (
            "2072-02-29",
            "45 years after 2026-05-01, when it is ready; look at the year of both",
        ),  # 2027 has no such day
    ],
)
def test_a_release_years_after_the_packet_is_ready_is_told(release, hint):
    own = finished(
        revisions=FIRST,
        release=datetime.fromisoformat(f"{release}T00:00Z"),
        release_place=Place("pattern.yaml", 9, 10),
    )
    told = found(series(own)).get("release-far")
    begins = f"pattern.yaml:9:10: advice: the pattern is released on {release}, "
    assert told == (hint and begins + hint)


def test_a_series_is_far_off_when_the_last_of_its_patterns_is_ready_long_before():
    of = replace(
        series(finished(revisions=FIRST), finished(id="b", title="B")),
        release=datetime(2072, 1, 15, tzinfo=UTC),
        release_place=Place("series.yaml", 3, 10),
    )
    assert found(of)["release-far"].startswith(
        "series.yaml:3:10: advice: the series is released on 2072-01-15, 45 years after "
    )
    late = (Revision(date(2071, 5, 1), "First issue."),)
    patterns = (of.patterns[0], replace(of.patterns[1], revisions=late))
    assert "release-far" not in found(replace(of, patterns=patterns))


@pytest.mark.parametrize(
    ("day", "told"),
    [
        ("2031-05-01", None),
        ("2031-05-03", "5 years after the one before it, of 2026-05-01; look at the year of both"),
        ("2072-04-10", "45 years after the one before it, of 2026-05-01; did you mean 2027-04-10?"),
        ("2062-04-10", "35 years after the one before it, of 2026-05-01; look at the year of both"),
    ],
)
def test_a_revision_many_years_after_the_one_before_it_is_told(day, told):
    later = Revision(date.fromisoformat(day), "A mark was wrong.", Place("pattern.yaml", 11, 12))
    begins = "pattern.yaml:11:12: advice: this revision lies "
    of = series(finished(revisions=(*FIRST, later)))
    assert found(of).get("revision-far") == (told and begins + told)


# --- as proof tells them, from the author's own files -------------------------------------------------


def test_proof_tells_where_everything_stands(tmp_path):
    one_set = TINY[PATTERN].replace("[moss, spool]", "[moss]")
    for colours in ('"10"', '"12"', '["10", "14"]'):
        one_set = one_set.replace(f", spool: {colours}", "")
    elder = "  - {id: elder, name: Ash Elder, about: Rests.}\norder:"
    lime = "  - {name: lime, hex: '#eeeeee', put_on_with: brush, covers: 8 m2/l, dries_in: 1 h, tin: 1 l}"
    changes = {
        SERIES: ("order:", elder),
        PATTERN: one_set,
        FINISH: ("trim:", f"{lime}\ntrim:"),
    }
    told = {problem.code: problem.place for problem in proof(build(tmp_path, changes)).problems}
    assert told["designer-idle"] == Place(SERIES, 13, 10)  # her id
    assert told["thread-set-unused"] == Place(SERIES, 7, 12)  # its name
    assert told["credit-missing"] == Place(PATTERN, 23, 10)  # the credits that are there
    assert told["photo-missing"] == Place(PATTERN)
    assert told["paint-unused"] == Place(FINISH, 24, 12)  # its name


def test_a_day_that_two_designs_share_is_told_where_it_is_written(tmp_path):
    """In the series' own file for one that is still to come, and else in the second pattern's."""
    ivy = {path.replace("fern", "ivy"): text for path, text in TINY.items() if FERN in path}
    ivy_file = PATTERN.replace("fern", "ivy")
    ivy[ivy_file] = TINY[PATTERN].replace("Fern by the Tap", "Ivy on the Wall")
    both = TINY[SERIES].replace("order: [fern]", "order: [fern, ivy]")
    alike = both.replace("on: last Monday of August", "on: second Sunday of May")
    assert alike != both
    told = [
        problem
        for problem in proof(build(tmp_path, {**ivy, SERIES: alike})).problems
        if problem.code == "day-shared"
    ]
    at = {problem.place.path: problem for problem in told}
    assert set(at) == {ivy_file, SERIES}
    for path, text in ((ivy_file, ivy[ivy_file]), (SERIES, alike)):
        line = text.split("\n")[at[path].place.line - 1]
        assert line[at[path].place.column - 1 :].startswith("second Sunday of May")
        assert "Fern by the Tap" in str(at[path])


@pytest.mark.parametrize("of_its_own", [True, False])
def test_a_release_before_the_last_revision_is_told_where_a_day_can_be_changed(
    of_its_own, tmp_path
):
    """At the pattern's own release, and where it comes out with its series at the revision."""
    own = "release: 2026-05-01 09:00 Europe/London\nrevisions:"
    changes = {PATTERN: ("revisions:", own)} if of_its_own else {}
    files = build(tmp_path, {SERIES: ("release: 2027", "release: 2026"), **changes})
    (told,) = (one for one in proof(files).problems if one.code == "release-early")
    written = (files / PATTERN).read_text().split("\n")[told.place.line - 1]
    day = "2026-05-01 09:00" if of_its_own else "2026-11-25"
    assert written[told.place.column - 1 :].startswith(day)
    assert (" with its series, and " in str(told)) != of_its_own


def test_a_photographer_without_a_photograph_is_told_in_one_line(tmp_path):
    thanked = "{model_stitcher: A, finisher: B, photographer: C}\nphoto_alt: A fern."
    files = build(tmp_path, {PATTERN: ("{model_stitcher: Hazel Penn}", thanked)})
    codes = {problem.code for problem in proof(files).problems}
    assert codes & {"photographer-idle", "photo-missing"} == {"photographer-idle"}


def test_proof_goes_on_after_advice(tmp_path):
    """A missing photograph stops nobody."""
    checked = proof(build(tmp_path))
    assert checked.sound
    assert "photo-missing" in {problem.code for problem in checked.problems}


def test_proof_is_content_with_a_photograph_that_is_told(tmp_path):
    changes = {
        f"{FERN}/photo.jpg": picture([["#a04030"]], "JPEG"),
        PATTERN: (
            "{model_stitcher: Hazel Penn}",
            "{model_stitcher: A, finisher: B}\nphoto_alt: A fern.",
        ),
    }
    codes = {problem.code for problem in proof(build(tmp_path, changes)).problems}
    assert not codes & {"photo-missing", "alt-missing", "credit-missing"}


def test_proof_fails_a_second_pattern_of_the_same_title(tmp_path):
    twin = {path.replace("fern", "twin"): text for path, text in TINY.items() if FERN in path}
    changes = {**twin, SERIES: ("order: [fern]", "order: [fern, twin]")}
    checked = proof(build(tmp_path, changes))
    assert not checked.sound
    assert [problem.code for problem in checked.problems.errors] == ["title-twice"]
