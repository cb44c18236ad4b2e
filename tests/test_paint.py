"""How much paint the wood takes, and in which order its coats go on."""

import re
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.cautions import CAUTIONS
from packetgen.chart.paint_timeline import paint_timeline
from packetgen.model import Coating, Glue, Paint, PaintWay, Part
from packetgen.reckon.paint import (
    HAND_H,
    front_hex,
    order_of_work,
    paint_cautions,
    paint_needs,
    painted_area_mm2,
)
from packetgen.reckon.precautions import precautions
from packetgen.render.painting import painting
from packetgen.render.templates import environment, fill
from packetgen.units import hours_minutes
from tests.stitching import SAGE, piece

SQUARE = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0), (0.0, 50.0))
CHALK = Paint("chalk white", "#f4f1e8", "spray", 10.0, 1.0, 100.0)
BRICK = Paint("brick", "#a4583a", "brush", 10.0, 0.5, 50.0)


def board(*painted: Coating, name: str = "shelf", pieces: int = 1) -> Part:
    return Part(name, SQUARE, (0.0, 0.0), 6.0, pieces, painted)


def painted_piece(*parts: Part):
    paints = {one.paint.name: one.paint for part in parts for one in part.painted}
    return piece(parts=parts, paints=tuple(paints.values()))


def area(faces: str, pieces: int = 1) -> float:
    coating = Coating(SAGE, 2, faces)
    return painted_area_mm2(board(coating, pieces=pieces), coating)


def test_both_faces_and_the_edges_are_painted():
    """By hand: 100 × 50 mm, 6 mm thick: twice 5,000 and 300 · 6 = 11,800 mm²; the front alone 5,000."""
    assert area("both") == pytest.approx(11_800)
    assert area("front", pieces=3) == pytest.approx(15_000)


def test_back_and_edges_can_be_painted_alone():
    """By hand: the back is 5,000 mm² like the front; the edges are 300 · 6 = 1,800 mm²."""
    assert area("back") == pytest.approx(5_000)
    assert area("edges") == pytest.approx(1_800)
    assert area("front") + area("back") + area("edges") == pytest.approx(area("both"))


@pytest.mark.parametrize(
    ("faces", "words", "area_mm2"),
    [
        ("front", "the edge in front", 2_250),
        ("back", "the edge behind", 2_250),
        ("edges", "both broad faces and the ends", 19_800),
        ("both", "both faces and the edges", 24_300),
    ],
)
def test_of_a_board_seen_from_its_edge_the_painted_sides_are_called_as_who_saws_it_calls_them(
    faces, words, area_mm2
):
    """By hand: a step of 150 × 60 mm, 15 mm thick, seen from its edge of 150 × 15 mm: that edge is 2,250 mm², and
    round it run 330 · 60 mm, the broad faces of 9,000 mm² and the ends of 900 mm², twice each."""
    edge = ((0.0, 0.0), (150.0, 0.0), (150.0, 15.0), (0.0, 15.0))
    coating = Coating(SAGE, 1, faces)
    step = Part("step", edge, (0.0, 0.0), 60.0, 1, (coating,))
    assert painted_area_mm2(step, coating) == pytest.approx(area_mm2)
    assert painting(painted_piece(step)).paints[0].parts == (f"step: 1 coat, {words}",)


def test_paint_is_area_times_coats_over_what_the_label_says():
    """By hand: 200 × 180 mm, 6 mm thick: 72,000 + 4,560 mm² = 0.07656 m²; two coats 0.15312 m²; at
    10 m² in a litre 15.312 ml, and with a tenth left in the brush 17.013 ml: one tin of 100 ml."""
    (need,) = paint_needs(piece())
    assert need.volume_ml == pytest.approx(17.0133, abs=1e-3)
    assert need.tins == 1
    assert need.coats == 2


def test_a_spray_loses_more_than_a_brush():
    (need,) = paint_needs(
        piece(
            parts=(replace(piece().parts[0], painted=(Coating(CHALK, 2, "both"),)),),
            paints=(CHALK,),
        )
    )
    assert need.volume_ml == pytest.approx(15.312 / 0.6, abs=1e-3)


def test_a_part_may_have_two_paints():
    """By hand: sage on the front, 2 · 5,000 mm² at 10 m² a litre is 1 ml, 1.111 with a tenth lost; brick on
    the edges, 1,800 mm² once is 0.18 ml, 0.2 with a tenth lost."""
    needs = paint_needs(painted_piece(board(Coating(SAGE, 2, "front"), Coating(BRICK, 1, "edges"))))
    assert [need.paint.name for need in needs] == ["soft sage", "brick"]
    assert [need.volume_ml for need in needs] == pytest.approx([1.1111, 0.2], abs=1e-4)


def test_the_other_way_of_putting_a_paint_on_has_a_quantity_of_its_own():
    """By hand: 11,800 mm² twice is 0.0236 m²; brushed at 10 m² a litre 2.36 / 0.9 ml, sprayed at 4 m² a
    litre 5.9 / 0.6 = 9.833 ml: two tins of 5 ml."""
    either = replace(SAGE, or_with=PaintWay("spray", 4.0, 1.0, 5.0))
    (need,) = paint_needs(painted_piece(board(Coating(either, 2, "both"))))
    assert [by.way.put_on_with for by in need.ways] == ["brush", "spray"]
    assert [by.volume_ml for by in need.ways] == pytest.approx([2.6222, 9.8333], abs=1e-4)
    assert [by.tins for by in need.ways] == [1, 2]


def test_what_shows_is_the_last_paint_on_the_front():
    """An undercoat is covered, and a paint on edges or back does not show; bare wood has its own colour."""
    covered = board(
        Coating(BRICK, 1, "both"), Coating(SAGE, 1, "front"), Coating(CHALK, 1, "edges")
    )
    assert front_hex(covered) == SAGE.hex
    assert front_hex(board(Coating(CHALK, 1, "back"))) not in (CHALK.hex, SAGE.hex)


# --- the order of work ---


def test_one_paint_goes_on_while_another_dries():
    """By hand, with a quarter of an hour a coat: sage (2 h) takes longest and starts; brick (½ h) goes on
    from 0:15 to 0:30, is dry at 1:00 and gets its second coat at once; sage follows at 2:15."""
    work = order_of_work(
        painted_piece(board(Coating(SAGE, 2, "both")), board(Coating(BRICK, 2, "both"), name="pot"))
    )
    assert [(c.paint.name, c.number, c.starts_h, c.dry_h) for c in work] == [
        ("soft sage", 1, 0.0, 2.25),
        ("brick", 1, 0.25, 1.0),
        ("brick", 2, 1.0, 1.75),
        ("soft sage", 2, 2.25, 4.5),
    ]
    assert [c.last for c in work] == [False, False, True, True]


def test_a_second_paint_waits_until_the_first_is_dry_to_its_last_coat():
    """Chalk goes on the edges of the shelf only when both coats of sage on its front are dry, but on the leg
    at once."""
    shelf = board(Coating(SAGE, 2, "front"), Coating(CHALK, 1, "edges"))
    leg = board(Coating(CHALK, 1, "both"), name="leg")
    work = order_of_work(painted_piece(shelf, leg))
    dry = max(c.dry_h for c in work if c.paint is SAGE)
    chalked = {c.parts[0].part.name: c.starts_h for c in work if c.paint is CHALK}
    assert chalked["shelf"] == dry == 4.5
    assert chalked["leg"] < dry


FACES = st.sampled_from(("front", "back", "edges"))


@st.composite
def pieces(draw):
    """Parts with one to three paints each."""
    paints = [
        replace(SAGE, name=f"paint {n}", dries_in_h=draw(st.sampled_from((0.0, 0.5, 1.0, 3.0))))
        for n in range(4)
    ]
    parts = []
    for number in range(draw(st.integers(1, 5))):
        chosen = draw(st.lists(st.sampled_from(paints), min_size=1, max_size=3, unique=True))
        painted = tuple(Coating(p, draw(st.integers(1, 3)), draw(FACES)) for p in chosen)
        parts.append(board(*painted, name=f"part {number}"))
    return piece(parts=tuple(parts), paints=tuple(paints))


@given(pieces())
def test_every_coat_goes_on_once_and_on_dry_wood(of):
    """Whatever is painted: every part gets all its coats, each after the one before is dry, and the hands do
    one thing at a time."""
    work = order_of_work(of)
    wanted = {
        (part.name, place, number)
        for part in of.parts
        for place, coating in enumerate(part.painted)
        for number in range(1, coating.coats + 1)
    }
    dry: dict[str, float] = {}
    got, free = set(), 0.0
    for coat in work:
        assert coat.starts_h >= free and coat.done_h == coat.starts_h + HAND_H
        free = coat.done_h
        for painted in coat.parts:
            name = painted.part.name
            assert coat.starts_h >= dry.get(name, 0.0)
            dry[name] = coat.dry_h
            place = painted.part.painted.index(painted.coating)
            assert (name, place, coat.number) not in got
            got.add((name, place, coat.number))
    assert got == wanted


@given(pieces())
def test_work_is_never_longer_than_one_coat_after_another(of):
    """Drying side by side can only save time."""
    work = order_of_work(of)
    in_turn = sum(HAND_H + coat.paint.dries_in_h for coat in work)
    assert max(coat.dry_h for coat in work) <= in_turn + 1e-9


# --- what is printed ---


def test_the_ways_of_painting_bring_their_cautions():
    """A spray, a brush and solvents are warned of although no author lists them; only where they are used."""
    sprayed = painted_piece(board(Coating(CHALK, 1, "both")))
    oil = replace(SAGE, cleaned_with="solvent")
    oiled = painted_piece(board(Coating(oil, 1, "both")))
    assert paint_cautions(sprayed) == ("spray paint",)
    assert paint_cautions(oiled) == ("brush paint", "solvents")
    assert set(paint_cautions(oiled)) <= set(precautions(oiled))
    gist = painting(sprayed).cautions[0].gist
    assert all(word in gist for word in ("outdoors", "mask", "flames"))
    assert CAUTIONS["spray paint"].text.startswith(gist)


def test_parts_painted_alike_are_listed_together():
    of = painted_piece(
        board(Coating(SAGE, 2, "both"), name="slat"),
        board(Coating(SAGE, 2, "both"), name="foot", pieces=2),
        board(Coating(SAGE, 1, "front"), name="shelf"),
    )
    page = painting(of)
    assert page.paints[0].parts == (
        "slat, foot (2 pieces): 2 coats, both faces and the edges",
        "shelf: 1 coat, front",
    )
    assert [(c.coat, c.parts) for c in page.coats] == [
        ("first coat", "slat, foot (2 pieces), shelf (front)"),
        ("second coat", "slat, foot (2 pieces)"),
    ]
    assert page.losses == "10 % of the paint stays in the brush"


def test_each_coat_is_told_with_the_faces_that_it_goes_on():
    """A step of 100 × 50 mm that lies flat, 60 mm deep, so that its edge is seen: sage all over, then brick in front."""
    flat = replace(board(Coating(SAGE, 2, "both"), Coating(BRICK, 1, "front")), thickness_mm=60.0)
    rail = board(Coating(SAGE, 2, "both"), name="rail")
    told = [(one.name, one.parts) for one in painting(painted_piece(flat, rail)).coats]
    assert told == [("soft sage", ""), ("soft sage", ""), ("brick", "shelf (the edge in front)")]
    fronts = (board(Coating(BRICK, 1, "front"), name=name) for name in ("left", "right"))
    assert [one.parts for one in painting(painted_piece(*fronts)).coats] == ["all its parts, front"]


def test_where_nothing_need_be_waited_for_the_packet_has_a_dash():
    """The stain goes on first and need not dry."""
    stain = replace(BRICK, name="stain", dries_in_h=0.0)
    of = painted_piece(board(Coating(stain, 1, "both")))
    of = replace(of, glues=(Glue("wood glue", 0.0, "the board"),))
    page = fill(environment(), "packet/painting.html", finish=of, painting=painting(of))
    assert "0 h" not in page and page.count(">–</td>") == 2
    assert "it holds at once" in page


@pytest.mark.parametrize(
    ("hours", "said"), [(0, "0 h"), (0.25, "15 min"), (2.25, "2 h 15 min"), (24, "24 h")]
)
def test_hours_are_said_to_the_minute(hours, said):
    assert hours_minutes(hours) == said


def test_the_timeline_shows_every_coat_at_its_hour():
    """Two bars a coat, the black one a quarter of an hour long; all at one scale."""
    work = order_of_work(painted_piece(board(Coating(SAGE, 2, "both"))))
    drawn = paint_timeline(work)
    assert drawn.count("<rect") == 2 * len(work) == 4
    assert ">soft sage<" in drawn and ">2<" in drawn
    assert drawn == paint_timeline(work)


def test_of_a_long_list_of_parts_every_word_stands_before_its_bars():
    names = ("left stake", "right stake", "upper rail", "lower rail")
    stakes = (board(Coating(SAGE, 2, "both"), name=name) for name in names)
    of_board = board(Coating(BRICK, 1, "both"), Coating(SAGE, 2, "front"), name="board")
    drawn = paint_timeline(order_of_work(painted_piece(of_board, *stakes)))
    words = re.findall(r"<text[^>]*>([^<]*)<", drawn)
    assert "soft sage: left stake, right stake, upper rail and lower rail" in " ".join(words)
    assert max(len(line) for line in words) <= 33  # of 3.2 mm, in 56 mm


def test_no_bar_of_the_timeline_lies_over_another():
    """The board takes brick once before its two coats of sage; the ledge takes sage from the start, and so dries while
    the board is painted with it: a row for each of the two."""
    work = order_of_work(
        painted_piece(
            board(Coating(BRICK, 1, "both"), Coating(SAGE, 2, "front"), name="board"),
            board(Coating(SAGE, 2, "both"), name="ledge"),
        )
    )
    of_sage = sorted((one.starts_h, one.dry_h) for one in work if one.paint == SAGE)
    assert any(
        dry > after for (_, dry), (after, _) in pairwise(of_sage)
    )  # else nothing is shown here
    drawn = paint_timeline(work)
    assert ">soft sage: ledge<" in drawn and ">soft sage: board<" in drawn and ">brick<" in drawn
    bars = re.findall(
        r'<rect fill="#ffffff" height="5.0".*? width="([\d.]+)" x="([\d.]+)" y="([\d.]+)"', drawn
    )
    assert len(bars) == len(work)
    for width, x, y in bars:
        others = [(float(w), float(at)) for w, at, row in bars if row == y and at != x]
        assert all(
            at >= float(x) + float(width) - 0.02 or at + w <= float(x) + 0.02 for w, at in others
        )


@pytest.mark.parametrize(("name", "said"), [("front", "the part front"), ("lid", "lid")])
def test_a_part_called_like_a_face_is_said_to_be_a_part(name, said):
    """'Where: front' would be read as one side of the wood."""
    wood = painted_piece(
        board(Coating(SAGE, 2, "both"), name=name), board(Coating(BRICK, 1, "both"), name="rail")
    )
    assert said in {coat.parts for coat in painting(wood).coats}
