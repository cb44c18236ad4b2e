"""`packetgen match`"""

from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.common import NAME, OneOf, checked_content, content_option, wanted_ids

if TYPE_CHECKING:
    from packetgen.model import Colour, ThreadCard
    from packetgen.pipeline import Proof


@click.command("match")
@click.argument("source_name", type=NAME, metavar="FROM")
@click.argument("target_name", type=NAME, metavar="TO")
@content_option
@click.option(
    "--pattern",
    "pattern_name",
    type=NAME,
    help="Only the colours that this pattern (or series) uses of FROM.",
)
@click.option("--distinct", is_flag=True, help="Give no colour of TO twice.")
@click.option(
    "--format",
    "form",
    type=OneOf(("table", "csv", "json")),
    default="table",
    show_default=True,
    help="A table to read, or the same with all its figures for other programs.",
)
def match_command(
    source_name: str,
    target_name: str,
    content_folder: Path,
    pattern_name: str | None,
    distinct: bool,
    form: str,
) -> None:
    """The nearest colours on another thread card.

    \b
    For each colour of the card FROM its nearest on the card TO, and how far apart the
    two are: the same to the eye, close, visible or far. Cards go by their file names.
    With --distinct the colours are paired so that all differences together are least.

    \b
    Examples:
      packetgen match larkmoss tansywick
      packetgen match larkmoss tansywick --pattern robin-on-the-spade --distinct
      packetgen match tansywick larkmoss --format csv
    """
    from packetgen.reckon.matching import TooFewColours
    from packetgen.render.match_table import UNCERTAINTY, as_csv, as_json, as_table, matching

    checked = checked_content(content_folder)
    source, target = (_card(name, checked) for name in (source_name, target_name))
    colours = tuple(source.colours.values())
    if pattern_name is not None:
        colours = _colours_used(source, pattern_name, checked)
    try:
        found = matching(source, target, colours, distinct)
    except TooFewColours as error:
        instead = "leave out --distinct"
        if pattern_name is None:
            instead += ", or ask for the colours of one pattern with --pattern"
        raise click.UsageError(
            f"{error.wanted} colours of {source.name} cannot each have their own among the "
            f"{error.free} of {target.name}; {instead}"
        ) from error
    if form == "csv":
        click.echo(as_csv(found).encode(), nl=False)  # bytes keep the line ends of RFC 4180
        click.echo(UNCERTAINTY, err=True)
    else:
        click.echo(as_json(found) if form == "json" else as_table(found))


def _card(name: str, checked: "Proof") -> "ThreadCard":
    from packetgen.diagnostics import nearest

    cards = checked.thread_cards
    if name not in cards:
        raise click.UsageError(f"there is no thread card {name!r}; {nearest(name, sorted(cards))}")
    return cards[name]


def _colours_used(card: "ThreadCard", pattern_name: str, checked: "Proof") -> "tuple[Colour, ...]":
    """The colours of the card that a pattern, or a series, uses in any of its thread sets."""
    from packetgen.reckon.needle import threads_used

    wanted = wanted_ids((pattern_name,), checked)
    patterns = [figure.pattern for each in checked.reckoned for figure in each.figures]
    threads = [
        thread
        for pattern in patterns
        if wanted and pattern.id in wanted
        for thread_set in pattern.thread_sets
        for thread in threads_used(pattern, thread_set)
    ]
    numbers = {colour.number for of, colour in threads if of.id == card.id}
    if not numbers:
        cards = ", ".join(sorted({of.id for of, _ in threads}))
        raise click.UsageError(
            f"{pattern_name!r} uses no colour of {card.id!r}; it uses those of {cards}"
        )
    return tuple(colour for number, colour in card.colours.items() if number in numbers)
