"""Small patterns of every kind of stitch and thread, drawn by hypothesis, and ways of working them."""

from dataclasses import replace

from hypothesis import strategies as st

from packetgen.model import (
    Assumptions,
    Bead,
    BeadCard,
    Colour,
    Corner,
    Daisy,
    Ease,
    Fraction,
    KeyLine,
    Knot,
    Line,
    Pattern,
    Stitch,
    ThreadSet,
)
from tests.stitching import CLAY, HERE, MOSS, SOOT, card, option, pattern

RIME = Colour("M1", "rime", "#b9d2e3")  # the same number as moss has on its own card
GLOW = replace(
    card(strands=1, length_m=11, sold_as="reel"),
    id="glow",
    name="Glow Braid",
    colours={"M1": RIME},
    braid=True,
)
SKEIN = card()
SPOOL = replace(card(strands=1, length_m=45.72, sold_as="spool"), id="spool", name="Spool")
HIP = Colour("07", "hip red", "#b32c2e")
BEADS = BeadCard("drop", "Drop", 2.2, 300, {"07": HIP})

# Mark → how it is worked, its colours, the card that they are of where it is not the set's, own strands.
_KEY = {
    "f": (Stitch.FULL, (MOSS,), None, {}),
    "h": (Stitch.HALF, (CLAY,), None, {}),
    "k": (Stitch.HALF_BACK, (CLAY,), None, {}),
    "b": (Stitch.FULL, (MOSS, SOOT), None, {}),
    "o": (Stitch.FULL, (SOOT,), None, {"skein": 3}),
    "g": (Stitch.FULL, (RIME,), GLOW, {}),
    "x": (Stitch.FULL, (CLAY,), SPOOL, {}),
    "q": (Stitch.QUARTER, (MOSS,), None, {}),
    "p": (Stitch.PETITE, (SOOT,), None, {"skein": 1}),
}
IN_CHART = "fhkbogx"
_PARTS = (Stitch.HALF, Stitch.HALF_BACK, Stitch.QUARTER, Stitch.THREE_QUARTER, Stitch.PETITE)
CLOTHS = ((11, 1), (14, 1), (18, 1), (28, 2), (32, 2), (25, 1))  # count, over


def _key() -> tuple[KeyLine, ...]:
    return tuple(
        KeyLine(
            mark,
            stitch,
            dict.fromkeys(("skein", "spool"), colours),
            strands,
            HERE,
            {} if of is None else dict.fromkeys(("skein", "spool"), (of,) * len(colours)),
        )
        for mark, (stitch, colours, of, strands) in _KEY.items()
    )


@st.composite
def patterns(draw: st.DrawFn) -> Pattern:
    """A chart of up to 24 × 14 cells, sparse enough for patches; two thread sets, one to three cloths."""
    width, height = draw(st.integers(1, 24)), draw(st.integers(1, 14))
    bare = draw(st.sampled_from((0, 4, 30)))
    row = st.text(IN_CHART + "." * bare, min_size=width, max_size=width)
    rows = draw(st.lists(row, min_size=height, max_size=height))
    marks = st.sampled_from(tuple(_KEY))
    cells = [(x, y) for y, r in enumerate(rows, 1) for x, m in enumerate(r, 1) if m == "."]
    fractions = ()
    if cells:
        one = st.builds(
            lambda at, mark, stitch, corner: Fraction(*at, mark, stitch, corner),
            st.sampled_from(cells),
            marks,
            st.sampled_from(_PARTS),
            st.sampled_from(Corner),
        )
        fractions = draw(st.lists(one, max_size=12))
    points = st.tuples(
        st.integers(4, 4 * (width + 1)).map(lambda quarters: quarters / 4),
        st.integers(4, 4 * (height + 1)).map(lambda quarters: quarters / 4),
    )
    two = st.tuples(points, points).filter(lambda ends: ends[0] != ends[1])
    path = st.one_of(two, st.lists(points, min_size=2, max_size=4).map(tuple))
    backstitch = st.builds(Line, marks, path, st.just(False), st.just(HERE))
    long_stitch = st.builds(Line, marks, two, st.just(True), st.just(HERE))
    daisy = st.builds(lambda mark, ends: Daisy(mark, *ends, HERE), marks, two)
    knot = st.builds(Knot, marks, points, st.just(HERE))
    bead = st.builds(Bead, st.just(BEADS), st.just(HIP), points, st.just(HERE))
    strands = st.integers(1, 4)
    sets = (
        ThreadSet("skein", SKEIN, *(draw(strands) for _ in range(4))),
        ThreadSet("spool", SPOOL, 1, 1, 1, 1),
    )
    counts = draw(st.lists(st.sampled_from(CLOTHS), min_size=1, max_size=3, unique=True))
    return pattern(
        *rows,
        cloths=tuple(option(count, over) for count, over in counts),
        sets=sets,
        key=_key(),
        fractions=tuple(fractions),
        lines=tuple(draw(st.lists(st.one_of(backstitch, long_stitch), max_size=6))),
        knots=tuple(draw(st.lists(knot, max_size=6))),
        daisies=tuple(draw(st.lists(daisy, max_size=4))),
        beads=tuple(draw(st.lists(bead, max_size=6))),
    )


@st.composite
def assumptions(draw: st.DrawFn) -> Assumptions:
    """What a series may say of its stitchers."""
    ease = sorted(draw(st.tuples(*[st.integers(0, 100)] * 3)))
    return Assumptions(
        needleful_mm=float(draw(st.integers(200, 1500))),
        tail_mm=float(draw(st.integers(10, 70))),
        travel_stitches=draw(st.integers(1, 8)),
        ease=Ease(*(percent / 100 for percent in ease)),
    )
