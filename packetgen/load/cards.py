"""Cards of threads, cloths and beads: everything that is bought by colour."""

import re
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import TypeVar

from packetgen.diagnostics import Place, Problems
from packetgen.load.alike_words import complain_of_file_name
from packetgen.load.documents import read_document
from packetgen.load.files import ContentFolder, as_id, valid_id
from packetgen.load.schema import Group
from packetgen.load.shape_cards import BEAD_CARD, CLOTH, LENGTH_M, THREAD_CARD
from packetgen.load.sure import sure
from packetgen.load.values import Filled
from packetgen.load.words import said, shown
from packetgen.model import BeadCard, Cloth, Colour, Price, ThreadCard, Weave
from packetgen.nouns import one_of, plural
from packetgen.units import MM_PER_INCH, plain
from packetgen.yarn_numbers import metres_in, seems_whole

SHAPES: Mapping[str, Group] = MappingProxyType(
    {"threads": THREAD_CARD, "cloths": CLOTH, "beads": BEAD_CARD}
)
# What cloth is commonly woven in: common practice, no source.
_COUNTS = {6, 8, 10, 11, 14, 16, 18, 20, 22, 25, 27, 28, 30, 32, 36, 40}
_FINEST_AIDA = 22  # blocks to the inch, and the coarsest below: common practice, no source
_COARSEST_AIDA = 6
# Of cloth of which a stitch covers two threads; below, the number is mostly that of its stitches: from memory.
_COARSEST_OVER_TWO = 18
_FINE_OVER_ONE = (
    25  # threads to the inch, of which a stitch mostly covers two: common practice, no source
)
# From what price of one skein or packet, and of a fat quarter of cloth, a decimal sign was forgotten most
# likely, in currencies of which one buys about as much as a euro: our own choice.
_DEAR, _DEAR_CLOTH = 60, 300
_WOUND, _SHORT_WOUND_M = ("spool", "reel", "cone", "tube", "ball"), 5
_LONG_SKEIN_M, _SHORT_M, _LARGE_BEAD_MM = 60, 1.5, 10
_COPIED = 3  # colours that two cards hardly share in number, name and hex: our own choice
_LIKE_EURO = {"AUD", "CAD", "CHF", "EUR", "GBP", "NZD", "SGD", "USD"}

_CARD_FILE = re.compile(r"\.ya?ml(\.txt)?$", re.IGNORECASE)

T = TypeVar("T")
Cards = Mapping[str, T | None]  # by id; None for a card that exists and is not in order


def load_threads(folder: ContentFolder, problems: Problems) -> Cards[ThreadCard]:
    return _load(folder, "threads", THREAD_CARD, _thread_card, problems)


def load_cloths(folder: ContentFolder, problems: Problems) -> Cards[Cloth]:
    return _load(folder, "cloths", CLOTH, _cloth, problems)


def load_beads(folder: ContentFolder, problems: Problems) -> Cards[BeadCard]:
    return _load(folder, "beads", BEAD_CARD, _bead_card, problems)


def _load(
    folder: ContentFolder,
    where: str,
    shape: Group,
    make: Callable[[str, Filled, Mapping[str, Colour]], T],
    problems: Problems,
) -> Cards[T]:
    cards: dict[str, T | None] = dict.fromkeys(sorted(folder.moved_names()))
    called: dict[str, str] = {}  # names → the file that has it first
    of_colours: dict[
        frozenset[Colour], str
    ] = {}  # all colours of a card → the name that it has first
    files = folder.files(where)
    names = [name for name in files if _is_card(name, files)]
    folder.unread(where, tuple(names), "each card is a file that ends in .yaml")
    for name in names:
        path = f"{where}/{name}"
        card_id = _CARD_FILE.sub("", name)
        named_well = valid_id(card_id, Place(path), problems)
        if not name.endswith(".yaml"):
            problems.add(
                Place(path), "file-ending", name=said(name), better=said(f"{card_id}.yaml")
            )
            named_well = False
        cards[card_id] = None
        cards.setdefault(
            as_id(card_id), None
        )  # a name that will be mended is no unknown name elsewhere
        filled = read_document(folder, path, shape, problems, SHAPES)
        if filled is None:
            continue
        if shape is CLOTH:
            _check_count(filled, problems)
            _check_over(filled, problems)
            _check_weave(filled, problems)
        _check_price(filled, shape, problems)
        if shape is BEAD_CARD:
            _check_bead(filled, problems)
        if shape is THREAD_CARD:
            _check_tex(filled, problems)
            _check_length(filled, problems)
            _check_unit(filled, problems)
        if named_well:
            _check_name(filled, path, called, problems)
            complain_of_file_name(filled, "name", card_id, "file", problems)
        colours = _colours(filled, "name" if shape is CLOTH else "number", problems)
        if shape is not CLOTH and colours:
            _check_copied(filled, colours, of_colours, problems)
        sound = shape is not THREAD_CARD or (
            _whole_braid(filled, problems) & _weighs_well(filled, problems)
        )
        if filled.whole and colours is not None and named_well and sound:
            cards[card_id] = make(card_id, filled, colours)
    return cards


def _is_card(name: str, files: Collection[str]) -> bool:
    """Whether it is meant for one: also with the ending that some editors put behind ours, where it is no second copy."""
    ending = _CARD_FILE.search(name)
    more = ending and ending[1]
    return ending is not None and not (more and name.removesuffix(more) in files)


def _check_name(filled: Filled, path: str, called: dict[str, str], problems: Problems) -> None:
    """Advice on a name that another card has; `called` grows."""
    name = filled["name"]
    if name is None:
        return
    first = called.setdefault(name.casefold(), path)
    if first != path:
        place = filled.place_of("name")
        problems.add(place, "card-of-one-name", other=said(first), name=said(name))


def _check_copied(
    filled: Filled,
    colours: Mapping[str, Colour],
    of_colours: dict[frozenset[Colour], str],
    problems: Problems,
) -> None:
    """Advice on a card whose colours are all those of another, as in a copied file; `of_colours` grows."""
    name = filled["name"] or ""
    first = of_colours.setdefault(frozenset(colours.values()), name)
    if first != name and len(colours) >= _COPIED:
        facts = {"number": len(colours), "name": said(name), "other": said(first)}
        problems.add(filled.place_of("colours"), "card-copied", **facts)


def _check_count(filled: Filled, problems: Problems) -> None:
    """Advice on a count that is another than the name's, as in a copied file, or that aida is not woven in."""
    count, over = filled["count"], filled["over"] or 1
    if count is None:
        return
    named = {*map(int, re.findall(r"(?<!\d)\d{1,2}(?!\d)", filled["name"] or ""))}
    others = sorted(named & _COUNTS)
    if count not in named and len(others) == 1:
        place = filled.place_of("count")
        aida = filled["weave"] == Weave.AIDA.value
        stitches = over > 1 and count * over == others[0] and not aida
        right = f"write count: {others[0]}, its threads; over: {over} says that a stitch covers {over} of them"
        hint = f"if the name is right, write count: {others[0]}; else mend the name"
        if round(count * MM_PER_INCH / 10) == others[0]:
            hint = f"{plain(count)} to the centimetre are {others[0]} to the inch: write count: {others[0]}"
        elif stitches:
            hint = right
        problems.add(place, "count-other", name=said(filled["name"]), count=plain(count), hint=hint)
        return
    if filled["weave"] != Weave.AIDA.value:
        if over > 1 and count < _COARSEST_OVER_TWO:
            woven = f"{filled['weave']} with {plain(count)} threads to the inch, of which a stitch covers {over},"
            usual = (
                f"if it has {plain(count)} stitches to the inch, write count: {plain(count * over)}"
            )
            problems.add(filled.place_of("count"), "count-rare", woven=woven, usual=usual)
    elif not _COARSEST_AIDA <= count <= _FINEST_AIDA:
        woven = f"aida with {plain(count)} blocks to the inch"
        usual = "aida has 6 to 22, most often 14, 16 or 18; finer cloth has weave: evenweave"
        problems.add(filled.place_of("count"), "count-rare", woven=woven, usual=usual)


def _check_weave(filled: Filled, problems: Problems) -> None:
    """Advice on a cloth that is called by another weave."""
    weaves = [weave.value for weave in Weave]
    called = [one for one in weaves if re.search(rf"\b{one}\b", filled["name"] or "", re.I)]
    if filled["weave"] in weaves and len(called) == 1 and called != [filled["weave"]]:
        facts = {
            "name": said(filled["name"]),
            "weave": filled["weave"],
            "right": f"weave: {called[0]}",
        }
        problems.add(filled.place_of("weave"), "weave-other", **facts)


def _check_over(filled: Filled, problems: Problems) -> None:
    """Advice on aida of which a stitch covers several blocks, and on fine cloth of which it covers a single thread."""
    if filled["weave"] == Weave.AIDA.value:
        if (filled["over"] or 1) > 1:
            hint = "where one pattern wants it otherwise, write over in that pattern's cloth choice"
            problems.add(filled.place_of("over"), "over-rare", over=filled["over"], hint=hint)
    elif filled["over"] == 1 and (filled["count"] or 0) >= _FINE_OVER_ONE:
        place, count = filled.place_of("over"), plain(filled["count"])
        problems.add(place, "over-single", count=count, weave=filled["weave"])


def _check_tex(filled: Filled, problems: Problems) -> None:
    """Advice on the number of a whole thread that stands for that of a strand."""
    tex, strands = _tex(filled), filled["strands"]
    if tex is None or strands is None or not seems_whole(tex, strands):
        return
    name = "tex" if filled["tex"] is not None else "size"
    better = f"that is {plain(round(tex / strands, 1))} tex"
    place = filled.place_of(name)
    problems.add(place, "tex-whole", tex=plain(round(tex, 1)), strands=strands, better=better)


def _check_length(filled: Filled, problems: Problems) -> None:
    """Advice on the length of a skein whose decimal sign was forgotten, and on one in centimetres that hardly holds a
    needleful."""
    length_m = filled["length"]
    if length_m is None:
        return
    written = filled.given["length"].text
    small = written is not None and re.search(r"(?:mm|cm|in)$", written.value.strip())
    little = filled["sold_as"] in _WOUND and length_m < _SHORT_WOUND_M
    if (length_m < _SHORT_M and small) or little:
        facts = {
            "length": f"{plain(round(length_m, 3))} m",
            "unit": shown(filled["sold_as"] or "skein"),
            "better": f"{plain(round(_by_tens(length_m, 10), 2))} m",
        }
        problems.add(filled.place_of("length"), "length-short", **facts)
    if filled["sold_as"] != "skein" or length_m <= _LONG_SKEIN_M:
        return
    length, better = (f"{plain(round(one, 2))} m" for one in (length_m, _by_tens(length_m, 0.1)))
    problems.add(filled.place_of("length"), "length-long", length=length, better=better)


def _by_tens(length_m: float, factor: float) -> float:
    """The length with its decimal sign moved until a skein may be so long, once at least."""
    length_m *= factor
    while not _SHORT_M <= length_m <= _LONG_SKEIN_M and 1e-3 < length_m < 1e6:
        length_m *= factor
    return length_m


def _check_unit(filled: Filled, problems: Problems) -> None:
    """Advice on a word for one unit in which its length stands too, and on one for several."""
    unit: str | None = filled["sold_as"]
    if not unit:
        return
    if not re.search(r"[\d,;:()/]", unit):
        if one := one_of(unit):
            facts = {"said": said(unit), "plural": said(plural(unit)), "right": f"sold_as: {one}"}
            problems.add(filled.place_of("sold_as"), "unit-plural", **facts)
        return
    words = re.sub(r"[\d.,]+\s*(?:mm|cm|m|yd|in|g|kg|oz)?\b|[,;:()/.]", " ", unit).split()
    right = " ".join(words) or "skein"
    facts = {"said": said(unit), "right": f"sold_as: {shown(right)}"}
    problems.add(filled.place_of("sold_as"), "unit-more", **facts)


def _check_bead(filled: Filled, problems: Problems) -> None:
    """Advice on the size of a bead of which the decimal sign was forgotten."""
    size_mm = filled["size"]
    if size_mm is not None and size_mm >= _LARGE_BEAD_MM:
        size, better = (f"{plain(round(one, 2))} mm" for one in (size_mm, size_mm / 10))
        problems.add(filled.place_of("size"), "bead-large", size=size, better=better)


def _check_price(filled: Filled, shape: Group, problems: Problems) -> None:
    """Advice on a price that was meant in hundredths."""
    price: Price | None = filled["price"]
    dear, of = (_DEAR_CLOTH, "a fat quarter") if shape is CLOTH else (_DEAR, "one packet")
    if shape is THREAD_CARD:
        of = f"one {shown(filled['sold_as'] or 'unit')}"
    if price is None or price.currency not in _LIKE_EURO or price.amount < dear:
        return
    as_hundredths = f"{price.amount / 100:.2f} {price.currency}"
    problems.add(
        filled.place_of("price"),
        "price-dear",
        price=f"{price.amount:,} {price.currency}",
        of=of,
        better=as_hundredths,
    )


def _left_out(twice: str, numbers: Sequence[str | None]) -> str:
    """What to do about a number that stands twice: where the numbers of the card go up, and one alone would fit between it and
    the next, that is asked about."""
    own = [number for number in numbers if number and number.isascii() and number.isdigit()]
    behind = own[len(own) - own[::-1].index(twice) :] if twice in own else []
    between = range(int(twice) + 1, int(behind[0])) if behind else ()
    in_turn = own == sorted(own, key=int)
    if in_turn and len(between) == 1:
        return f"should it be '{str(between[0]).zfill(len(twice))}'? Else give each colour its own"
    return "give each colour its own"


def _colours(filled: Filled, by: str, problems: Problems) -> Mapping[str, Colour] | None:
    """The colours by number (or by name, for cloth); None where one number stands twice, or for a name."""
    colours: dict[str, Colour] = {}
    lines: dict[str, int] = {}
    seen: dict[str, str] = {}  # each colour → what has it first
    names: dict[str, str] = {}  # and each name
    once = True
    for given in filled.each("colours"):
        if given.value is None or given.value[by] is None:
            continue
        key, place = given.value[by], given.value.place_of(by)
        name = given.value["name"] or key
        if by == "number" and not re.search(r"\d", key) and not re.search(r"[^\W\d_]", name):
            problems.add(place, "number-for-name", number=said(key), name=said(name))
            once = False
            continue
        if key in lines:
            facts = {"by": by, "said": said(key), "line": lines[key]}
            facts["mend"] = _left_out(
                key, [one.value[by] for one in filled.each("colours") if one.value]
            )
            problems.add(place, "colour-twice", **facts)
            once = False
            continue
        lines[key] = place.line
        shade = given.value["hex"]
        first = seen.setdefault(shade, key) if shade else key
        if first != key:
            at = given.value.place_of("hex")
            problems.add(at, "hex-twice", said=said(key), other=said(first), hex=shade)
        called = (given.value["name"] or "").casefold()
        namesake = names.setdefault(called, key) if called and by == "number" else key
        if namesake != key:
            at = given.value.place_of("name")
            facts = {"said": said(key), "name": said(given.value["name"]), "other": said(namesake)}
            problems.add(at, "colour-name-twice", **facts)
        colours[key] = Colour(key, given.value["name"], given.value["hex"])
    return MappingProxyType(colours) if once else None


def _whole_braid(filled: Filled, problems: Problems) -> bool:
    """A braid has one strand."""
    if not filled["braid"] or filled["strands"] in (None, 1):
        return True
    problems.add(filled.place_of("strands"), "braid-parted", strands=filled["strands"])
    return False


def _weighs_well(filled: Filled, problems: Problems) -> bool:
    """A weight must come to a length that can be sold."""
    if None in (filled["weight"], filled["strands"], _tex(filled)):
        return True
    length_m = _length_m(filled)
    low, high = LENGTH_M
    if low <= length_m <= high:
        return True
    problems.add(
        filled.place_of("weight"),
        "weight-odd",
        weight=f"{plain(filled['weight'])} g",
        length=f"{length_m:,.2f} m",
        low=f"{plain(low)} m",
        high=f"{plain(high)} m",
    )
    return False


def _tex(filled: Filled) -> float | None:
    tex: float | None = filled["size"] if filled["tex"] is None else filled["tex"]
    return tex


def _length_m(filled: Filled) -> float:
    """As given, or as the weight has it, to the centimetre: no scale in a shop is finer."""
    length_m: float = filled["length"]
    if filled["weight"] is not None:
        length_m = round(metres_in(filled["weight"], sure(_tex(filled)), filled["strands"]), 2)
    return length_m


def _thread_card(card_id: str, filled: Filled, colours: Mapping[str, Colour]) -> ThreadCard:
    return ThreadCard(
        id=card_id,
        name=filled["name"],
        material=filled["material"],
        strands=filled["strands"],
        tex=sure(_tex(filled)),
        sold_as=filled["sold_as"],
        length_m=_length_m(filled),
        hand_dyed=filled["dyed"] == "by hand",
        colours=colours,
        braid=filled["braid"],
        price=_price(filled),
        tex_place=filled.place_of("tex") if filled["tex"] is not None else None,
    )


def _cloth(card_id: str, filled: Filled, colours: Mapping[str, Colour]) -> Cloth:
    return Cloth(
        id=card_id,
        name=filled["name"],
        weave=Weave(filled["weave"]),
        count_per_inch=filled["count"],
        over=filled["over"],
        hand_dyed=filled["dyed"] == "by hand",
        colours=colours,
        price=_price(filled),
    )


def _bead_card(card_id: str, filled: Filled, colours: Mapping[str, Colour]) -> BeadCard:
    return BeadCard(
        card_id, filled["name"], filled["size"], filled["packet"], colours, _price(filled)
    )


def _price(filled: Filled) -> Price | None:
    price: Price | None = filled["price"]
    return price and replace(price, place=filled.place_of("price"))
