"""Tables about a chart for a terminal: its colours counted, stitches that stand alone, colours alike."""

from collections.abc import Callable, Iterator, Sequence
from textwrap import wrap

from packetgen.colour import FAR, in_words
from packetgen.model import KeyLine, Pattern, ThreadSet
from packetgen.nouns import counted
from packetgen.reckon.alike import Alike, Use
from packetgen.reckon.colour_counts import ColourCount, colour_counts
from packetgen.reckon.figures import Figures
from packetgen.reckon.isolated import isolated_cells
from packetgen.units import centimetres, percent

_WIDE = 80


def said(number: float) -> str:
    """At most one decimal, and thousands parted: 1234.5 → '1,234.5'."""
    return f"{round(number, 1):,}".removesuffix(".0")


def thread_said(line: KeyLine, thread_set: ThreadSet) -> str:
    """The numbers and names of a key line's colours."""
    names = (f"{colour.number} {colour.name}" for colour in line.threads[thread_set.id])
    return " with ".join(names)


# --- counts ---------------------------------------------------------------------------------------


def count_table(figures: Figures) -> str:
    """A line a colour and one for all together; ways of working that do not occur have no column."""
    counts = colour_counts(figures)
    model = figures.pattern.thread_sets[0]
    total = sum(counts[1:], counts[0])
    columns = [
        (head, [said(value(count)) if value(count) else "" for count in (*counts, total)])
        for head, value in _COLUMNS
        if value(total)
    ]
    names = [
        f"{' '.join(line.mark for line in count.lines)}  {thread_said(count.lines[0], model)}"
        for count in counts
    ]
    rows = [*names, "all together"]
    widths = [max(len(head), *map(len, cells)) for head, cells in columns]
    name_wide = max(map(len, (*rows, model.card.name)))
    heads = (head.rjust(wide) for (head, _), wide in zip(columns, widths))
    lines = ["  ".join((model.card.name.ljust(name_wide), *heads))]
    for number, row in enumerate(rows):
        cells = (of[number].rjust(wide) for (_, of), wide in zip(columns, widths))
        lines.append("  ".join((row.ljust(name_wide), *cells)))
    return "\n".join(line.rstrip() for line in (*lines, *_remarks(figures, total)))


# What heads a column, and what stands in it.
_COLUMNS: tuple[tuple[str, Callable[[ColourCount], float]], ...] = (
    ("whole", lambda count: count.whole),
    ("half", lambda count: count.half),
    ("fractional", lambda count: count.fractional),
    ("backstitch", lambda count: count.backstitch),
    ("long", lambda count: count.long_stitches),
    ("daisies", lambda count: count.daisies),
    ("knots", lambda count: count.knots),
)


def _remarks(figures: Figures, total: ColourCount) -> Iterator[str]:
    for need in figures.beads:
        sample = need.sample
        yield (
            f"{counted(need.sewn, 'bead')}: {sample.card.name} "
            f"{sample.colour.number} {sample.colour.name}"
        )
    if total.backstitch:
        model = figures.cloths[0]
        long = centimetres(total.backstitch * model.cell_mm)
        yield (
            f"Backstitch is measured in sides of a stitch, "
            f"in all {long} on {model.option.cloth.name}."
        )


# --- stitches that stand alone --------------------------------------------------------------------


def alone_list(figures: Figures) -> str:
    """How many there are, and by mark the column and row of each."""
    pattern, found = figures.pattern, figures.isolated
    model = pattern.thread_sets[0]
    head = (
        f"{found.alone:,} of {found.stitches:,} stitches ({percent(found.share)}) have no other "
        "of their colour beside them"
    )
    if not found.alone:
        return head + "."
    places: dict[str, list[str]] = {}
    for column, row in sorted(isolated_cells(pattern), key=lambda at: (at[1], at[0])):
        places.setdefault(_mark_at(pattern, column, row), []).append(f"{column},{row}")
    lines = [f"{head} (column,row):"]
    for line in pattern.key:
        if line.mark in places:
            text = f"{line.mark}  {thread_said(line, model)}: {'  '.join(places[line.mark])}"
            lines += wrap(text, _WIDE, subsequent_indent="   ")
    return "\n".join(lines)


def _mark_at(pattern: Pattern, column: int, row: int) -> str:
    small = (one.mark for one in pattern.fractions if (one.column, one.row) == (column, row))
    return next(small, pattern.grid.rows[row - 1][column - 1])


# --- colours alike --------------------------------------------------------------------------------


def alike_list(pairs: Sequence[Alike], thread_set: ThreadSet, limit: float) -> str:
    """Each pair with its difference and stitches, and what it would save if both were one."""
    far = f"CIEDE2000 {limit:g}"
    if not pairs:
        return f"No two colours of its key, in {thread_set.card.name}, are as near as {far}; about 1 is just visible."
    lines = [f"Colours of {thread_set.card.name} that are {far} or less apart:"]
    for pair in pairs:
        lines.append(
            f"{_used(pair.one)}\n{_used(pair.other)}\n"
            f"   {_apart(pair.difference)}, {pair.difference:.1f}; {_saved(pair)}"
        )
    return "\n".join(lines)


def _apart(difference: float) -> str:
    """In words that suit a list of colours that are alike, also where somebody asks for those that are not."""
    return "told apart" if difference > FAR else in_words(difference)


def _used(use: Use) -> str:
    colour = use.need.colour
    return (
        f"{' '.join(use.marks)}  {colour.number} {colour.name}: "
        f"{counted(use.stitches, 'stitch')}, {counted(use.need.units, use.need.card.sold_as)}"
    )


def _saved(pair: Alike) -> str:
    if pair.saved is None:
        return "they are of two cards, so nothing can be said of saving"
    if not pair.saved:
        return "as one colour they would take as much"
    return f"as one colour they would save {counted(pair.saved, pair.one.need.card.sold_as)}"
