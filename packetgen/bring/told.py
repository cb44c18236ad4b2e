"""What became of a design, for a terminal: its threads, what they differ by, and what was changed."""

import re
import shlex
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from textwrap import wrap

from packetgen.bring.brought import TIDY_HINTS, Brought, Entry
from packetgen.bring.choosing import Merge
from packetgen.bring.codes import Codes
from packetgen.bring.drawing import Drawing, hex_of
from packetgen.bring.ground import Ground
from packetgen.bring.marks import may_be_mark
from packetgen.bring.together import Together
from packetgen.colour import FAR, in_words
from packetgen.load.words import shown
from packetgen.model import Colour, Stitch
from packetgen.nouns import counted, listed
from packetgen.reckon.isolated import ADVISE_ABOVE_SHARE, ADVISE_FROM_STITCHES
from packetgen.units import percent

_WIDE = 80
_MOST_NAMED = 12
_APART_WIDE, _CODES_WIDE = 32, 20  # letters of columns
_MOST_LETTERS = 480  # of the threads of a card: six lines
MOST_ASKED = 60  # codes; more of them are other than codes
_OPTION, _JOINT = (
    re.compile(r"(--[a-z]+) (?=\")"),
    "\0",
)  # an option stays on one line with its value


def report(found: Brought, card_name: str, card_file: str) -> str:
    """80 columns wide at most, but for the path of the card's file."""
    remarks = (*_nothing_near(found, card_name, card_file), *_remarks(found))
    return "\n".join((*_head(found), "", *_table(found, card_name), "", *remarks))


def ground_stitched(ground: Ground, drawing: Drawing, found: Brought) -> str:
    """That a ground of which nobody has said anything is stitched, in which thread, and how it stays bare."""
    number = next(n for n, one in enumerate(drawing.colours, 1) if hex_of(one) == ground.hex)
    entries = Counter(found.cells[drawing.cells == number].tolist())
    entry = found.entries[entries.most_common(1)[0][0] - 1]
    return "\n".join(
        _with_options(
            f"The ground is stitched, in {entry.colour.number} {entry.colour.name}: {ground.in_words()}; "
            f'if it is bare cloth, add --bare "{ground.hex}".',
            "",
            "  ",
        )
    )


def threads_known(card_name: str, card: Sequence[Colour], card_file: str) -> str:
    """The card's numbers with their names, as many as a few lines hold."""
    names = [f"{one.number} {one.name}" for one in card]
    fit = names
    while len(", ".join(fit)) > _MOST_LETTERS:
        fit = fit[:-1]
    more = f", and {len(names) - len(fit):,} more in {card_file}" if len(fit) < len(names) else ""
    return "\n".join(_said(f"{card_name} has: {', '.join(fit)}{more}."))


def codes_to_say(unknown: Iterable[str], headed: bool, codes: Codes) -> str:
    """A line to copy, with all codes that somebody has to explain, each with the thread that it is likely to be,
    and with the headings where these are asked about too; '' where it could not be copied."""
    taken: set[str] = set()  # another code hardly means a thread that is guessed already
    said = []
    for code in unknown:
        near = codes.nearest(code)
        guess = near.number if near and near.number not in taken else ""
        taken.add(guess)
        if shown(code) == code:
            said.append(f"--code {shlex.quote(code)}={shlex.quote(guess) if guess else '…'}")
    also, last = (", with --headings for the headings", " --headings") if headed else ("", "")
    also += " (what is filled in is a guess)" if taken - {""} else ""
    return (
        f"Say what each is, a full stop for bare cloth{also}: {' '.join(said)}{last}"
        if 0 < len(said) <= MOST_ASKED
        else ""
    )


def _head(found: Brought) -> Iterator[str]:
    size = f"{len(found.rows[0])} × {len(found.rows)} stitches"
    yield f"{size}, {found.stitches:,} of them worked, in {counted(len(found.entries), 'colour')}"
    for said in found.told:
        yield from _with_options(f"{said}.", "  ", "    ")


def _with_options(text: str, first: str, then: str) -> Iterator[str]:
    """Lines of 80 columns, indented so; an option and its value stand on one line."""
    whole = _OPTION.sub(f"\\1{_JOINT}", text)
    for line in wrap(
        whole, _WIDE, initial_indent=first, subsequent_indent=then, break_on_hyphens=False
    ):
        yield line.replace(_JOINT, " ")


def _table(found: Brought, card_name: str) -> Iterator[str]:
    """The threads, and how far each is from the file's own colours if it has any; and the file's codes, where
    mark and thread do not say them already."""
    entries = found.entries
    number = max(len(entry.colour.number) for entry in entries)
    codes = _codes_wide(entries)
    apart = _APART_WIDE if found.coloured else 0
    room = _WIDE - number - 2 - 3 - 10 - apart - (codes and codes + 2)
    names = [_named(entry.colour, entry.stitch) for entry in entries]
    name = max(6, min(room, max(len(card_name) - number - 1, *map(len, names))))
    title = _cut(card_name, number + 1 + name)
    head = f"{'from the file: mean':>24}{'most':>8}" if apart else ""
    yield f"   {title:<{number + 1 + name}}{'stitches':>10}{head}{'  code' if codes else ''}"
    for entry in entries:
        said = _cut(_named(entry.colour, entry.stitch), name)
        line = f"{entry.mark}  {entry.colour.number:<{number}} {said:<{name}}{entry.stitches:>10,}"
        line += _apart(entry) if entry.coloured else " " * apart
        first, *more = wrap(_joined(entry.codes), codes, break_on_hyphens=False) if codes else [""]
        yield f"{line}  {first}".replace(_JOINT, " ").rstrip()
        for part in more:
            yield f"{'':<{len(line)}}  {part}".replace(_JOINT, " ")
    all_apart = _apart(found) if apart else ""
    yield f"   {'all':<{number + 1 + name}}{found.stitches:>10,}{all_apart}"


def _apart(of: Entry | Brought) -> str:
    return f"{in_words(of.mean):>19}{of.mean:5.1f}{of.largest:8.1f}"


def _codes_wide(entries: Sequence[Entry]) -> int:
    """The width of a column for codes; 0 where each is a mark, or its thread's own number or name."""
    if all(
        code in (one.mark, one.colour.number, one.colour.name)
        for one in entries
        for code in one.codes
    ):
        return 0
    return min(max(len("code"), *(len(_joined(one.codes)) for one in entries)), _CODES_WIDE)


def _joined(codes: Sequence[str]) -> str:
    """Codes as they stand in a file, a code on one line if it finds room."""
    words = [(shown(code) or "a blank").replace(" ", _JOINT) for code in codes[:_MOST_NAMED]]
    more = [f"{len(codes) - _MOST_NAMED} more"] * (len(codes) > _MOST_NAMED)
    return ", ".join(words + more)


def _nothing_near(found: Brought, card_name: str, card_file: str) -> Iterator[str]:
    if all(entry.mean > FAR for entry in found.entries):
        yield from _said(
            f"No colour of {card_name} comes near. Add your thread's colours to {card_file}."
        )


def _remarks(found: Brought) -> Iterator[str]:
    for group in found.together[:_MOST_NAMED]:
        yield from _said(_together(group))
    if len(found.together) > _MOST_NAMED:
        yield from _said(
            f"And {counted(len(found.together) - _MOST_NAMED, 'more thread')} like that."
        )
    others = [one for one in found.entries if _other_mark(one)]
    if any(one.kept for one in others):
        named = ", ".join(f"your {one.codes[0]} is {one.mark}" for one in others[:_MOST_NAMED])
        more = f" and {len(others) - _MOST_NAMED} more" * (len(others) > _MOST_NAMED)
        yield from _said(
            f"The key keeps the marks that it had, so in the chart {named}{more}. To have your codes as marks, write key: {{}} in "
            "pattern.yaml first, and bring it in again."
        )
    if found.soft_squares:
        one = found.soft_squares == 1
        yield from _said(
            f"{found.soft_squares:,} {'square lies in a shade' if one else 'squares lie in shades'} of soft edges, "
            f"at most {found.soft_most:.1f} from the colour drawn there, and count{'s' * one} with it."
        )
    yield from _merged("To keep to the number of colours", found.merges)
    for small in found.small:
        yield from _with_options(
            f"{small.colour.number} {small.colour.name} has {_stitches(small.stitches)} only: "
            f"--colours {small.colours} leaves it out{' too' * (small is not found.small[0])}.",
            "",
            "  ",
        )
    yield from _merged("Stitches that stood alone took a neighbour's colour", found.tidied)
    share = found.alone / found.stitches
    if found.alone >= ADVISE_FROM_STITCHES and share > ADVISE_ABOVE_SHARE:
        ways = zip(TIDY_HINTS, found.could_tidy)
        offers = [f"{number:,} of them by --tidy {most:.0f}" for most, number in ways if number]
        more = (
            f"; a neighbour's colour would be given to {listed(tuple(offers), 'or')}"
            if offers
            else ""
        )
        yield from _said(
            f"{found.alone:,} stitches ({percent(share)}) stand alone: each is a start and an end of thread{more}."
        )
    elif found.alone:
        yield from _said(f"{_stitches(found.alone)} stand{'s' * (found.alone == 1)} alone.")
    if found.coloured or found.merges or found.tidied:
        yield from _said(
            "Differences are CIEDE2000, of colours as a screen shows them: about 1 is just visible side by side. "
            "Compare the threads by eye in daylight before you stitch."
        )


def _other_mark(entry: Entry) -> bool:
    """Whether a code of a single sign, which could be a mark, became another one."""
    return bool(entry.codes) and may_be_mark(entry.codes[0]) and entry.codes[0] != entry.mark


def _together(group: Together) -> str:
    of = [f"{said} ({_stitches(number)})" for said, number in group.of[:4]]
    if len(group.of) > 4:
        of.append(f"{len(group.of) - 4} more")
    into = f"{group.colour.number} {group.colour.name}"
    return f"Fall together on {into}: {', '.join(of)}."


def _merged(why: str, merges: Sequence[Merge]) -> Iterator[str]:
    if not merges:
        return
    changed = sum(one.stitches for one in merges)
    mean = sum(one.stitches * one.difference for one in merges) / changed
    most = max(one.difference for one in merges)
    yield from _said(
        f"{why}: {_stitches(changed)} changed, by {mean:.1f} on average and {most:.1f} at most."
    )
    for one in merges[:_MOST_NAMED]:
        names = f"{one.gone.number} {one.gone.name} → {one.into.number} {one.into.name}"
        yield from wrap(
            f"{names}: {_stitches(one.stitches)}, {in_words(one.difference)}, {one.difference:.1f}",
            _WIDE,
            initial_indent="  ",
            subsequent_indent="    ",
        )
    if len(merges) > _MOST_NAMED:
        yield f"  and {len(merges) - _MOST_NAMED} more"


def _named(colour: Colour, stitch: Stitch) -> str:
    return colour.name if stitch is Stitch.FULL else f"{colour.name}, {stitch.value}"


def _stitches(number: int) -> str:
    return f"{number:,} {'stitch' if number == 1 else 'stitches'}"


def _cut(text: str, longest: int) -> str:
    return text if len(text) <= longest else text[: longest - 1] + "…"


def _said(text: str) -> list[str]:
    return wrap(text, _WIDE, subsequent_indent="  ", break_long_words=False, break_on_hyphens=False)
