"""Names that point to something written elsewhere."""

from collections.abc import Collection, Mapping
from difflib import SequenceMatcher
from functools import lru_cache
from operator import ne
from typing import TypeVar

from packetgen.diagnostics import MOST_OFFERED, Place, Problems, nearest_of
from packetgen.load.files import valid_id
from packetgen.load.words import LIKE_FIGURES, cut, offer, said, shown
from packetgen.model import Colour

T = TypeVar("T")

# What an author does who has no such thing yet, and means none of those that there are.
_NEW = {
    "cloth": "write cloths/{}.yaml",
    "thread card": "write threads/{}.yaml",
    "bead card": "write beads/{}.yaml",
    "finishing piece": "write finishes/{}/finish.yaml",
    "designer": "add {} to 'designers' in series.yaml",
}
_SIGNS = 3  # of a number that a slip can leave like itself
_LONGEST_LIST = 79  # letters, where it is said too how many more there are
_SHORT_OFFER = 80  # letters, where it is said too how to write a new one


def resolve(
    name: str | None,
    place: Place,
    known: Mapping[str, T | None] | None,
    what: str,
    problems: Problems,
    called: Mapping[str, str] | None = None,
    of: str = "",
    file: str = "",
    taken: Collection[str] = (),
) -> T | None:
    """What `name` stands for; None where it is unknown (reported) or was broken itself (reported
    there).

    known: name → thing, None for a thing that exists and could not be read;
    None altogether where nobody can tell.
    called: what the author may have written in place of the name → the name.
    of: the card or cloth that would have to have it. file: where that, or the one name that there is, stands.
    taken: names that are meant elsewhere, and hardly here.
    """
    if name is None or known is None:
        return None
    if name in known:
        return known[name]
    right = (called or {}).get(name.casefold())
    if right:
        hint = f"write {said(right)}, which goes by that name"
    elif of and (number := _with_its_name(name, known)):
        hint = f"write {said(number)}, the number alone"
    elif of:
        hint = offered_of(name, known, file, taken)
    else:
        hint = _offered(name, known, what, file)
    if of:
        problems.add(place, "colour-unknown", of=shown(of), what=what, name=said(name), hint=hint)
    else:
        problems.add(place, "reference-unknown", what=what, name=said(name), hint=hint)
    return None


def offered_of(
    name: str, known: Mapping[str, object], file: str, taken: Collection[str] = ()
) -> str:
    """The colour that is nearly called `name`, if need be the only one that is not taken; else those of the card, the
    nearest first, with how many there are more, and its file."""
    free = {one: colour for one, colour in known.items() if one not in taken}
    near = nearest_number(name, known) or nearest_number(name, free)
    if near is not None:
        colour = _name_of(near, known)
        return f"did you mean {said(near)}{f' ({shown(colour)})' if colour else ''}?"

    def unlike(number: str) -> tuple[bool, bool, bool, float]:
        one, other = name.casefold(), number.casefold()
        ratio = SequenceMatcher(None, one, other).ratio()
        changed = sorted(one) != sorted(other)  # figures that changed places are the commoner slip
        return not _one_slip(one, other), number in taken, changed, -ratio

    colours = [f"{one} {_name_of(one, known)}".strip() for one in sorted(known, key=unlike)]

    def of_first(number: int) -> str:
        return f"known in {file}: {', '.join(colours[:number])}"

    fit = range(MOST_OFFERED, 1, -1)
    number = next((one for one in fit if len(of_first(one)) <= _LONGEST_LIST), 1)
    more = len(colours) - number
    rest = f", and {more:,} more" if more > 0 else ""
    return f"{cut(of_first(number), longest=_LONGEST_LIST)}{rest}; or add it there"


def _with_its_name(text: str, known: Mapping[str, object]) -> str | None:
    """The number, where the text is number and name together, as our tables print them."""
    words = _bare(text)
    named = {one: colour for one in known if (colour := _name_of(one, known))}
    return next((one for one, colour in named.items() if words == _bare(one + colour)), None)


def nearest_number(name: str, known: Mapping[str, object]) -> str | None:
    """What begins with a number that there is, or is alike but for noughts and hyphens, or is as long and one
    slip away. Numbers that only share a few figures have nothing to do with one another; nor can it be told
    which is meant where several are one slip away. What has no figures is a name, and may be spelt alike."""
    if not any(map(str.isdigit, name)):
        return nearest_of(name, tuple(known))
    first, _, rest = name.partition(" ")
    if rest and any(_bare(rest) == _bare(_name_of(one, known)) for one in known):
        return None  # the number of one and the name of another
    bare = _bare(name)
    alike = [one for one in known if one == first or _bare(one) == bare]
    # A letter for the figure that looks like it, or two figures that changed places.
    figures = name.translate(LIKE_FIGURES)
    turned = [figures] if figures in known else [name[::-1]] if len(name) == 2 else []
    alike = alike or [one for one in turned if one in known]
    as_long = (one for one in known if len(one) == len(name))
    near = alike or [one for one in as_long if _one_slip(one.casefold(), name.casefold())]
    return near[0] if len(near) == 1 else None


@lru_cache(maxsize=8192)  # each number of a card is asked for with each of a key
def _bare(text: str) -> str:
    """Its letters and figures, without noughts before them."""
    return "".join(filter(str.isalnum, text.casefold())).lstrip("0")


def _one_slip(one: str, other: str) -> bool:
    """Whether two numbers of three signs or more differ in one, or in two neighbours that changed places."""
    if len(one) != len(other) or len(one) < _SIGNS or sum(map(ne, one, other)) > 2:
        return False
    differ = [at for at, (a, b) in enumerate(zip(one, other, strict=True)) if a != b]
    if len(differ) == 2:
        first, second = differ
        return second == first + 1 and one[first : second + 1] == other[second] + other[first]
    return len(differ) == 1


def _name_of(number: str, known: Mapping[str, object]) -> str:
    """What the colour with that number is called; '' where its name stands for a number."""
    colour = known[number]
    return colour.name if isinstance(colour, Colour) and colour.name != number else ""


def _offered(name: str, known: Mapping[str, object], what: str, file: str) -> str:
    """A name that there is, or else how the author writes what there is not yet. The only one there is may have been
    given another name in its file."""
    if file and len(known) == 1 and nearest_of(name, tuple(known)) is None:
        (only,) = known
        return f"{file} has {said(only)} alone: write that, or call it {said(name)} there again"
    if what not in _NEW:
        offered = offer(name, tuple(known))
        return offered.replace("known here:", f"known in {file}:") if file else offered
    fit = valid_id(name, Place(""), Problems()) and shown(name) == name
    new = _NEW[what].format(name if fit else "NAME")
    return f"{offer(name, tuple(known), _SHORT_OFFER)} (or {new})" if known else new
