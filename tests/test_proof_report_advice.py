"""An editor says of a pattern what a buyer would complain of, and praises only what is so."""

import re
from dataclasses import replace

import pytest

from packetgen.chart.review_symbols import praise_of_symbols
from packetgen.diagnostics import Place, Problems
from packetgen.digest import afresh
from packetgen.faults import FAULTS, Level
from packetgen.faults.review import REVIEW
from packetgen.model import Colour, KeyLine, Knot, Photo, Stitch, ThreadCard, Trim
from packetgen.pipeline import proof, review
from packetgen.reckon.cover import ROOM_MM, printed_mm, px_per_inch
from packetgen.reckon.figures import figures
from packetgen.reckon.review_buying import complain_of_little
from packetgen.reckon.review_cloth import complain_of_cloths
from packetgen.reckon.review_colours import complain_of_alike
from packetgen.reckon.review_edges import complain_of_bare_edges
from packetgen.reckon.review_praise import praise_of_pattern, praise_of_series
from tests.content_builder import FINISH, MOSS, PATTERN, build
from tests.stitching import HERE, card, option, pattern, piece, series, thread_set
from tests.test_wrong_input import JARGON, LONGEST
from tests.wrong_input_review import CALM, CASES, SHORT_SKEINS

MANY = "m" * 40, "t" * 40, "s" * 40


def said(complain, of) -> list[str]:
    problems = Problems()
    complain(of, problems)
    return [str(problem) for problem in problems]


def praised(of, *codes, board=None) -> dict[str, str]:
    """Short → in full, of what is well done in a pattern."""
    return {
        one.short: one.words
        for one in praise_of_pattern(of, series(of.pattern, finish=board), codes)
    }


# --- every piece of advice --------------------------------------------------------------------------


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.slip)
def test_a_slip_is_told_and_nothing_else(case, tmp_path):
    found = review(proof(build(tmp_path / "content", dict(case.changes))))
    lines = [
        str(problem)
        for chapter in found.chapters
        for problem in chapter.problems
        if problem.code in REVIEW
    ]
    assert lines == list(case.lines)
    for line in lines:
        message = line.partition(": advice: ")[2]
        assert 0 < len(message) <= LONGEST and not JARGON.search(message)


def test_every_message_of_the_review_is_provoked_and_all_are_advice(tmp_path):
    codes = set()
    for number, case in enumerate(CASES):
        found = review(proof(build(tmp_path / str(number), dict(case.changes))))
        codes |= {problem.code for chapter in found.chapters for problem in chapter.problems}
    assert set(REVIEW) <= codes
    assert {FAULTS[code].level for code in REVIEW} == {Level.ADVICE}


def test_a_build_is_not_told_what_only_an_editor_says(tmp_path):
    checked = proof(build(tmp_path / "content", {FINISH: ("border: 6 mm", "border: 45 mm")}))
    assert not {problem.code for problem in checked.problems} & set(REVIEW)
    assert "fit-tight" in {
        one.code for chapter in review(checked).chapters for one in chapter.problems
    }
    assert not {problem.code for problem in checked.problems} & set(REVIEW)


# --- single rules -----------------------------------------------------------------------------------


def test_a_colour_is_hardly_used_below_a_fiftieth_of_a_unit():
    """A skein of 8 m with six strands holds 48 m; a fiftieth is 96 cm. One cross takes its thread and two
    tails of 4 cm in either strand, less than that; forty in a row take more."""
    of = figures(pattern(*MANY[:2], "s" + "m" * 39), piece(900, 900))
    strand = {need.colour.number: need.strand.generous_m for need in of.cloths[0].needs[0][1]}
    assert strand["C1"] < 0.96 < strand["T1"]
    (line,) = said(complain_of_little, (of,))
    assert line.startswith(
        "tests:1:1: advice: 1 stitch of C1 soot would take a whole skein, for 0.2 m"
    )


def test_a_skein_that_another_pattern_of_the_series_uses_is_not_wasted():
    little, much = (
        figures(replace(pattern(*rows), id=name), piece(900, 900))
        for name, rows in (("little", (*MANY[:2], "s" + "m" * 39)), ("much", MANY))
    )
    assert len(said(complain_of_little, (little,))) == 1
    assert said(complain_of_little, (little, much)) == []


def test_a_skein_of_which_a_whole_series_uses_next_to_nothing_is_told_in_each_pattern():
    def in_file(name):
        plain = pattern(*MANY[:2], "s" + "m" * 39)
        key = tuple(replace(line, place=Place(f"{name}.yaml")) for line in plain.key)
        return figures(replace(plain, key=key), piece(900, 900))

    lines = said(complain_of_little, (in_file("one"), in_file("other")))
    assert [line.partition(":")[0] for line in lines] == ["one.yaml", "other.yaml"]


def test_another_thread_set_uses_no_skein_of_this_one():
    """Whoever stitches with one set buys nothing of the other."""
    little = figures(pattern(*MANY[:2], "s" + "m" * 39), piece(900, 900))
    other_set = replace(thread_set(), id="other")
    plain = pattern(*MANY)
    key = tuple(replace(line, threads={"other": line.threads["bramble"]}) for line in plain.key)
    much = figures(replace(plain, thread_sets=(other_set,), key=key), piece(900, 900))
    assert len(said(complain_of_little, (little, much))) == 1


def test_knots_of_a_colour_are_counted_as_they_are():
    of = figures(pattern(*MANY[:2], knots=(Knot("s", (2.0, 2.0), HERE),)), piece(900, 900))
    (line,) = said(complain_of_little, (of,))
    assert "1 knot of C1 soot" in line


def test_a_colour_of_another_card_is_not_offered_and_not_taken_for_one():
    """A braid shines where cotton does not, however near they are on the card."""
    glint = ThreadCard(
        "glint",
        "Glint",
        "viscose",
        1,
        40,
        "reel",
        50.0,
        False,
        {"G1": Colour("G1", "glint", "#678a38")},
        True,
    )
    plain = pattern(*MANY[:2], "s" + "m" * 39)
    lines = tuple(
        replace(line, threads={"bramble": (glint.colours["G1"],)}, cards={"bramble": (glint,)})
        if line.mark == "s"
        else line
        for line in plain.key
    )
    of = figures(replace(plain, key=lines), piece(900, 900))
    (line,) = said(complain_of_little, (of,))
    assert "no other colour of Glint in the key would do for it" in line
    assert said(complain_of_alike, of) == []


@pytest.mark.parametrize(
    ("px", "mm", "sharp"),
    [
        ((1600, 1200), (168, 126), 242),
        ((1000, 1000), (150, 150), 169),
        ((200, 100), (52.9, 26.5), 96),
    ],
)
def test_a_photograph_is_printed_as_large_as_the_cover_lets_it(px, mm, sharp):
    """By hand: 1,600 px on 168 mm are 242 to the inch; the cover is 150 mm high; 200 px are not enlarged
    beyond 96 to the inch, which is 52.9 mm."""
    assert printed_mm(*px) == pytest.approx(mm, abs=0.05)
    assert round(px_per_inch(Photo(b"", *px))) == sharp


def test_a_large_photograph_is_made_smaller_before_it_is_printed():
    assert px_per_inch(Photo(b"", 6400, 4800)) == px_per_inch(Photo(b"", 1600, 1200))


@pytest.mark.slow
@pytest.mark.parametrize("lines", [1, 2, 3, 5])
def test_title_picture_and_facts_fill_one_cover_however_long_the_title_is(demo, lines):
    """As the PDF engine lays it out: a line more for the picture than it is given, where a long title
    leaves it less than the most, and there would be a second page."""
    weasyprint = pytest.importorskip("weasyprint")
    from packetgen.render import pdf
    from packetgen.render.cover_room import picture_room_mm, title_lines
    from packetgen.render.packet import packet
    from packetgen.render.pictures import cover_jpeg
    from packetgen.render.templates import environment

    (each,) = demo.reckoned
    pdf._use_no_system_fonts()
    figure = each.figures[0]
    of = replace(
        figure, pattern=replace(figure.pattern, title=("Spades and Robins " * 10)[: 24 * lines])
    )
    assert len(title_lines(each.series, of.pattern)) == lines
    room_mm = picture_room_mm(each.series, of)
    assert (room_mm < ROOM_MM[1]) == (lines > 1)
    source = packet(each.series, of, cover_jpeg(figure, afresh), environment())
    head, _, body = source.html.partition("<body")
    cover = body[body.index('<section class="cover">') :].partition("</section>")[0]

    def pages(picture_mm: float) -> int:
        sized = cover.replace(
            f"max-height: {room_mm}mm", f"height: {picture_mm}mm; max-width: none"
        )
        html = f"{head}<body>{sized}</section></body></html>"
        fetcher = pdf._fetcher(source.assets)
        return len(weasyprint.HTML(string=html, url_fetcher=fetcher).render().pages)

    assert pages(room_mm) == 1
    if lines > 1:
        assert pages(room_mm + 4) == 2


# --- praise -----------------------------------------------------------------------------------------


def test_wood_on_every_side_is_praised_by_the_narrowest():
    """By hand: 40 × 3 stitches at 14 count are 72.6 × 5.4 mm, with 5 mm of border 82.6 × 15.4 mm; on
    200 × 180 mm that leaves 58.7 mm at the sides."""
    assert praised(figures(pattern(*MANY), piece()))["fits on its cloth"] == (
        "It fits The Board on its cloth, with 58.7 mm of wood or more on each side."
    )
    tight = piece(88, 180)
    assert "fits on its cloth" not in praised(figures(pattern(*MANY), tight), board=tight)


def test_one_cloth_that_is_tight_spoils_the_praise_of_all():
    both = (option(14), option(28))
    narrow = piece(88, 180)
    assert not any(
        short.startswith("fits") for short in praised(figures(pattern(*MANY, cloths=both), narrow))
    )
    wide = praised(figures(pattern(*MANY, cloths=both), piece()))
    assert "fits on both cloths" in wide
    three = (option(14), option(16), option(28))
    assert "fits on all 3 cloths" in praised(figures(pattern(*MANY, cloths=three), piece()))


def test_a_cover_that_is_everywhere_the_same_is_one_share():
    one = praised(figures(pattern(*MANY), piece()))["covers well"]
    assert re.match(r"Full crosses cover \d+ % of the cloth", one)
    two = praised(figures(pattern(*MANY, cloths=(option(14), option(16))), piece()))["covers well"]
    low, high = map(int, re.match(r"Full crosses cover (\d+) to (\d+) % of", two).groups())
    assert low < high
    assert two.endswith("; 45 to 76 % counts as well covered.")  # the limits of reckon.coverage


def test_a_stitch_alone_spoils_the_praise():
    assert "no stitch alone" in praised(figures(pattern("mm", "tt"), piece()))
    assert "no stitch alone" not in praised(figures(pattern("mm", "t."), piece()))


def test_enough_thread_is_praised_with_what_is_left_over():
    of = figures(pattern(*MANY), piece())
    most = max(need.strand.generous_m for need in of.cloths[0].needs[0][1])
    (words,) = (
        words for short, words in praised(of).items() if short.startswith("one of each colour")
    )
    assert f"Bramble (one skein, {int((1 - most / 48) * 100)} % to spare)" in words
    short = thread_set(
        of=card(length_m=most / 6 / 0.95)
    )  # a twentieth to spare is too little to praise
    of = figures(pattern(*MANY, sets=(short,)), piece())
    assert not any(short.startswith("one of each colour") for short in praised(of))


OF_SYMBOLS = "colours that eyes may take for one have unlike symbols on the chart"


def test_colours_are_praised_only_when_all_eyes_tell_them_apart():
    assert "colours told apart by any eyes" in praised(figures(pattern(*MANY), piece()))
    red, green = Colour("R", "brick path", "#a9522f"), Colour("G", "box hedge", "#43642c")
    key = tuple(
        KeyLine(mark, Stitch.FULL, {"bramble": (colour,)}, {}, HERE)
        for mark, colour in (("m", red), ("t", green))
    )
    of = figures(pattern("mm", "tt", key=key), piece())
    assert "colours told apart by any eyes" not in praised(of)
    assert OF_SYMBOLS in praised(of)
    assert OF_SYMBOLS not in praised(of, "symbols-alike")


def test_of_clear_symbols_the_two_most_alike_are_told_by_the_names_of_their_colours():
    found = [one for one in praise_of_symbols(figures(pattern(*MANY), piece())) if one.symbols]
    ((praise),) = found
    (_, one), (_, other) = praise.symbols
    assert praise.short == f"all symbols clear in black and white, even {one} and {other}"
    assert f"those of {one} and {other} (likeness 0." in praise.words
    colours = {line.threads["bramble"][0].name for line in pattern(*MANY).key}
    assert one != other and {one, other} <= colours


def test_settled_symbols_are_praised_when_all_are():
    plain = pattern(*MANY)
    some = tuple(
        replace(line, symbol=name) for line, name in zip(plain.key, ("plus", "bolt", "acorn"))
    )
    settled = figures(replace(plain, key=some), piece())
    assert "symbols settled" in {one.short for one in praise_of_symbols(settled)}
    partly = figures(replace(plain, key=(*some[:2], plain.key[2])), piece())
    assert "symbols settled" not in {one.short for one in praise_of_symbols(partly)}


def test_words_of_ones_own_and_credits_are_praised_and_their_lack_is_not():
    full = praised(figures(pattern(*MANY, photo_alt="A sprig."), piece()))
    assert full["picture in your own words"].endswith("described in your own words.")
    assert "credits" in full
    bare = praised(figures(pattern(*MANY, finisher=""), piece()))
    assert not {"credits", "picture in your own words", "photograph large enough to print"} & set(
        bare
    )


SAME = replace(option(14).cloth, id="same", name="Same")


def _cut(*rows):
    """What is said of cutting for these rows on three cloths."""
    of = figures(pattern(*rows, cloths=(option(14), option(16), option(18))), piece(900, 900))
    return said(lambda one, problems: complain_of_cloths(one, piece(900, 900), False, problems), of)


def test_cloths_that_are_cut_wastefully_are_named_in_one_line():
    assert _cut(*("m" * 119,) * 119) == [
        "tests:1:1: advice: a fat quarter of Cloth 14 and Cloth 18 gives 1 and 2 pieces; "
        "with 3 rows less, or for all designs fold_over: 23 mm in finish.yaml, it would give 2 and 4"
    ]


@pytest.mark.parametrize(("fold_mm", "pieces"), [(25, [1, 2]), (24, [2, 2]), (23, [2, 4])])
def test_so_much_less_to_fold_gives_as_many_pieces(fold_mm, pieces):
    of = pattern(*("m" * 119,) * 119, cloths=(option(14), option(18)))
    found = figures(of, piece(900, 900, fold_over_mm=fold_mm))
    assert [on.finishing_pieces for on in found.cloths] == pieces


def test_the_same_number_on_all_cloths_is_said_once():
    of = figures(
        pattern(*("m" * 119,) * 119, cloths=(option(14), replace(option(14), cloth=SAME))),
        piece(900, 900),
    )
    (line,) = said(
        lambda one, problems: complain_of_cloths(one, piece(900, 900), False, problems), of
    )
    assert (
        "Cloth 14 and Same gives 1 piece; with 1 row less, or for all designs fold_over: 24 mm in finish.yaml, it would give 2"
        in line
    )


@pytest.mark.parametrize("steps", ["Turn 25 mm to the back.", "Turn the cloth to the back."])
def test_steps_that_tell_the_fold_have_to_be_mended_with_it(steps):
    told = replace(piece(900, 900), fold_over_mm=25, steps_markdown=steps)
    of = figures(pattern(*("m" * 119,) * 119, cloths=(option(14), option(18))), told)
    (line,) = said(lambda one, problems: complain_of_cloths(one, told, False, problems), of)
    assert ("mm in finish.yaml and its steps, it" in line) is ("25" in steps)


def test_bare_rows_that_make_a_cut_wasteful_are_told_once_as_bare_rows():
    rows = (*("m" * 119,) * 116, *("." * 119,) * 3)
    assert _cut(*rows) == []
    (line,) = said(
        lambda one, problems: complain_of_bare_edges(one, False, problems), pattern(*rows)
    )
    assert "nothing is worked on rows 117–119" in line


def test_bare_columns_do_not_hide_that_rows_are_too_many():
    (line,) = _cut(*(".." + "m" * 117,) * 119)
    assert "with 3 rows less" in line


def test_a_photograph_is_praised_for_its_size_alone():
    """Whether it is sharp nobody has looked."""
    large = praised(figures(pattern(*MANY, photo=Photo(b"\xff\xd8", 3000, 3000)), piece()))
    words = large["photograph large enough to print"]
    assert "large enough to print, with" in words and "sharp" not in words
    small = praised(figures(pattern(*MANY, photo=Photo(b"\xff\xd8", 300, 300)), piece()))
    assert "photograph large enough to print" not in small


def test_where_trim_is_sewn_round_the_wood_beside_it_is_praised():
    """By hand: 20 stitches at 14 and 5 mm of border are 46.3 mm wide on 200 mm; frill takes 8 mm more a side."""
    of, frilled = pattern(*["m" * 20] * 20), piece(trim=Trim("gathered", 1.5, 20.0, 8.0))
    bare = praise_of_pattern(figures(of, piece()), series(of), ())
    trimmed = praise_of_pattern(figures(of, frilled), series(of, finish=frilled), ())
    assert "with 66.9 mm of wood or more on each side." in bare[0].words
    assert "with 58.9 mm of wood or more on each side beside its trim." in trimmed[0].words


def test_conversions_are_praised_only_where_there_are_some_and_none_is_advised():
    of = figures(pattern(*MANY), piece())
    assert "clean conversions" not in praised(of)
    same = replace(thread_set(), id="teasel")
    assert "clean conversions" not in praised(
        figures(pattern(*MANY, sets=(thread_set(), same)), piece())
    )
    paler = {
        number: replace(one, name=f"pale {one.name}") for number, one in same.card.colours.items()
    }
    other = replace(same, card=replace(same.card, colours=paler))
    two = figures(pattern(*MANY, sets=(thread_set(), other)), piece())
    assert "clean conversions" in praised(two)
    assert "clean conversions" not in praised(two, "conversion-collides")
    number = two.pattern.key[0].threads["teasel"][0].number
    black = {**paler, number: replace(paler[number], hex="#000000")}
    far = replace(same, card=replace(same.card, colours=black))
    key = tuple(
        replace(
            line,
            threads=line.threads
            | {"teasel": tuple(black[one.number] for one in line.threads["teasel"])},
        )
        for line in two.pattern.key
    )
    one_far = replace(two.pattern, thread_sets=(thread_set(), far), key=key)
    assert "clean conversions" not in praised(figures(one_far, piece()))


def test_a_series_is_praised_for_what_all_its_patterns_have():
    def shorts(*patterns, codes=()):
        of = series(*patterns)
        return {
            one.short
            for one in praise_of_series(of, tuple(figures(p, piece()) for p in patterns), codes)
        }

    one, other = pattern("mm", photo_alt="A."), pattern("mm", id="b", title="B", photo_alt="B.")
    assert "all pictures in your own words" in shorts(one, other)
    assert "all pictures in your own words" not in shorts(one, replace(other, photo_alt=""))
    assert "nothing listed for nothing" not in shorts(one, other, codes=("designer-idle",))
    assert "one set of magnets for all" in shorts(one, other)
    assert "one set of magnets for all" not in shorts(one, other, codes=("magnets-no-room",))
    assert "one set of magnets for all" not in shorts(one, other, codes=("magnets-bunched",))


def test_what_is_advised_is_never_praised(tmp_path):
    """The tiny folder with a conversion that merges two colours, and with a tight fit."""
    changes = CALM | {
        PATTERN: ('spool: ["10", "14"]', 'spool: ["12", "14"]'),
        FINISH: ("border: 6 mm", "border: 45 mm"),
        MOSS: SHORT_SKEINS,
    }
    fern = review(proof(build(tmp_path / "content", changes))).chapters[0]
    assert {"conversion-collides", "fit-tight"} <= {one.code for one in fern.advice}
    shorts = {one.short for one in fern.praise}
    assert "clean conversions" not in shorts and not any(one.startswith("fits") for one in shorts)


@pytest.mark.parametrize(
    ("rows", "told"),
    [
        ((".....", ".mmm.", "....."), ""),
        (("....", ".mm.", "....", "...."), "rows 1 and 3–4 and columns 1 and 4"),
        (("mm..", "mm.."), "columns 3–4"),
        (("....", "...."), ""),
    ],
)
def test_one_bare_row_round_a_design_is_meant_and_two_are_told(rows, told):
    problems = Problems()
    complain_of_bare_edges(pattern(*rows), False, problems)
    said = [problem.wrong for problem in problems]
    assert said == [
        f"nothing is worked on {told} of this chart, and they count in its size"
    ] * bool(told)


@pytest.mark.parametrize(
    ("rows", "moved"),
    [
        (("....", ".mm.", "....", "....", "...."), "--down 1"),
        (("mm....", "mm...."), "--right 2"),
        (("......", "......", "......", ".....m"), "--left 2 --up 1"),
        (("....", "....", ".mm.", "....", "....", "...."), ""),  # half a row from the middle
        (("....", "....", "....", ".mm.", "....", "...."), ""),
    ],
)
def test_a_design_that_has_to_stay_as_large_is_told_how_it_comes_to_the_middle(rows, moved):
    """As one whose card the magnets need: nobody is told to cut its bare rows off."""
    problems = Problems()
    complain_of_bare_edges(pattern(*rows, id="eggs"), True, problems)
    said = [problem.right for problem in problems]
    told = f"'packetgen chart shift eggs {moved}' brings it to the middle"
    assert said in ([told], ["bring it to the middle"]) if moved else said == []


@pytest.mark.parametrize("name", ["chart.txt", "chart.csv", "chart.png"])
def test_bare_rows_are_cropped_by_a_command_where_it_writes_such_a_chart(name):
    """So that lines and knots are moved with them."""
    fern = pattern("....", ".mm.", "....", "....", id="eggs")
    problems = Problems()
    placed = replace(fern, grid=replace(fern.grid, place=Place(f"eggs/{name}", 1)))
    complain_of_bare_edges(placed, False, problems)
    (told,) = problems
    assert ("packetgen chart crop eggs" in told.right) == (name != "chart.png")
