"""Small nouns for tests: a pattern drawn as letters, a card, a cloth, a plain wooden panel."""

from datetime import UTC, date, datetime

from packetgen.diagnostics import Place
from packetgen.model import (
    Cloth,
    ClothOption,
    Coating,
    Colour,
    DateRule,
    Designer,
    FinishingPiece,
    Grid,
    KeyLine,
    Magnets,
    Occasion,
    Paint,
    Part,
    Pattern,
    Revision,
    Sells,
    Series,
    Stitch,
    ThreadCard,
    ThreadSet,
    Trim,
    Weave,
)

HERE = Place("tests")
DESIGNER = Designer("fernsby", "Isolde Fernsby", "Draws in the rain.", Sells.PDF, None)
MOSS, CLAY, SOOT = (
    Colour("M1", "moss", "#678a37"),
    Colour("T1", "clay", "#cb7347"),
    Colour("C1", "soot", "#5d6265"),
)


def card(strands: int = 6, length_m: float = 8.0, sold_as: str = "skein") -> ThreadCard:
    colours = {colour.number: colour for colour in (MOSS, CLAY, SOOT)}
    return ThreadCard(
        "bramble", "Bramble", "cotton", strands, 25, sold_as, length_m, False, colours
    )


def thread_set(strands: int = 2, of: ThreadCard | None = None) -> ThreadSet:
    return ThreadSet("bramble", of or card(), strands, 1, 1)


def option(count: float = 14, over: int = 1, weave: Weave | None = None) -> ClothOption:
    """Aida, or evenweave where a stitch covers several threads."""
    weave = weave or (Weave.AIDA if over == 1 else Weave.EVENWEAVE)
    white = Colour("white", "white", "#ffffff")
    return ClothOption(
        Cloth("cloth", f"Cloth {count}", weave, count, over, False, {"white": white}),
        white,
        over,
        HERE,
    )


def pattern(
    *rows: str,
    cloths: tuple[ClothOption, ...] = (),
    sets: tuple[ThreadSet, ...] = (),
    stitch: Stitch = Stitch.FULL,
    **more: object,
) -> Pattern:
    """A pattern whose chart is these rows; 'm' is moss, 't' clay, 's' soot, '.' bare."""
    sets = sets or (thread_set(),)
    key = tuple(
        KeyLine(mark, stitch, {s.id: (colour,) for s in sets}, {}, HERE)
        for mark, colour in (("m", MOSS), ("t", CLAY), ("s", SOOT))
    )
    facts = dict(
        id="sprig",
        title="A Sprig",
        about="A sprig of something green.",
        designer=DESIGNER,
        occasion=Occasion("May Day", DateRule("1 May", fixed=(5, 1))),
        cloths=cloths or (option(),),
        thread_sets=sets,
        key=key,
        grid=Grid(rows, HERE),
        fractions=(),
        lines=(),
        knots=(),
        beads=(),
        model_stitcher="Osbert Lindle",
        finisher="Osbert Lindle",
        sold_at=(),
        revisions=(Revision(date(2026, 5, 1), "First issue."),),
        story_markdown="It grew by the gate.",
        notes_markdown="Begin in the middle.",
        photo=None,
        place=HERE,
    )
    return Pattern(**(facts | more))


SAGE = Paint("soft sage", "#b7c6b4", "brush", 10.0, 2.0, 100.0)


def piece(width_mm: float = 200.0, height_mm: float = 180.0, **more: object) -> FinishingPiece:
    """A plain board that is all panel, bordered by 5 mm."""
    outline = ((0.0, 0.0), (width_mm, 0.0), (width_mm, height_mm), (0.0, height_mm))
    facts = dict(
        id="board",
        name="The Board",
        about="A board.",
        panel=outline,
        keep_outs=(),
        border_mm=5.0,
        fold_over_mm=25.0,
        wadding_inset_mm=1.0,
        parts=(Part("board", outline, (0.0, 0.0), 6.0, 1, (Coating(SAGE, 2, "both"),)),),
        paints=(SAGE,),
        trim=Trim("straight", 1.0, 20.0),
        magnets=Magnets(4, 10.0, 2.0, 18.0),
        hardware=(),
        cautions=("small magnets",),
        steps_markdown="1. Sand it.",
        place=HERE,
    )
    return FinishingPiece(**(facts | more))


def series(*patterns: Pattern, finish: FinishingPiece | None = None) -> Series:
    return Series(
        id="hedge-year",
        title="The Hedge Year",
        tagline="Small things from a hedge",
        release=datetime(2027, 1, 15, 9, tzinfo=UTC),
        finish=finish or piece(),
        thread_sets=patterns[0].thread_sets,
        designers=(DESIGNER,),
        patterns=patterns,
        to_come=(),
        notices=(),
        licence="For your own stitching. Please do not share the chart.",
        welcome_markdown="Welcome.",
        place=HERE,
    )
