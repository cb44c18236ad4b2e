"""A series: its thread sets, its designers, and its patterns in the author's order."""

import re

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.alike_words import complain_of_file_name
from packetgen.load.assumptions import read_assumptions
from packetgen.load.copies import complain_of_copied_lines, complain_of_copies, complain_of_counters
from packetgen.load.credits import check_credits_of_all
from packetgen.load.cut_off import between_quotes
from packetgen.load.designers import read_designers
from packetgen.load.documents import read_document, read_markdown
from packetgen.load.exchanged import tell_exchanged
from packetgen.load.files import ContentFolder, as_id, valid_id
from packetgen.load.key import FEW_STRANDS, check_strands
from packetgen.load.laid_aside import read_laid_aside
from packetgen.load.library import Library
from packetgen.load.look import advise_on_letters, font_names, read_look
from packetgen.load.notices import read_notices
from packetgen.load.occasions import read_occasion
from packetgen.load.once import Once
from packetgen.load.patterns import Surroundings, load_pattern
from packetgen.load.references import resolve
from packetgen.load.sets_confused import tell_sets_confused
from packetgen.load.shape_pattern import KEY_LINE
from packetgen.load.shape_series import SERIES
from packetgen.load.sure import all_sure, sure
from packetgen.load.titles import title_in
from packetgen.load.told_days import complain_of_notice_days, complain_of_told_days
from packetgen.load.told_names import complain_of_told_names
from packetgen.load.told_piece import complain_of_told_piece
from packetgen.load.told_titles import complain_of_told_titles
from packetgen.load.twice import complain_of_lines_twice, complain_of_shop_names
from packetgen.load.values import Filled, Given
from packetgen.load.words import offer, said, shown
from packetgen.model import Pace, Series, ThreadSet, ToCome
from packetgen.nouns import listed
from packetgen.units import plain

_STRANDS = ("strands", "backstitch_strands", "knot_strands", "daisy_strands")


def load_series(
    folder: ContentFolder, name: str, library: Library, problems: Problems
) -> Series | None:
    """The series in the folder series/`name`; None where anything at all has gone wrong."""
    path = f"series/{name}"
    valid_id(name, Place(path), problems)
    filled = read_document(folder, f"{path}/series.yaml", SERIES, problems)
    welcome = read_markdown(folder, f"{path}/welcome.md", problems)
    fonts = font_names(filled, folder.files(path))
    folder.unread(path, ("series.yaml", "welcome.md", *fonts))
    folders = folder.folders(path)
    if filled is None:
        # What the series would have said is unknown;
        # its patterns are checked all the same, each by itself.
        for pattern in folders:
            load_pattern(
                folder, f"{path}/{pattern}", Surroundings(library, None, None, {}), problems
            )
        return None
    sets = _thread_sets(filled, library, problems)
    designers, called = read_designers(filled, problems)
    surroundings = Surroundings(library, sets, designers, called)
    finish = resolve(
        filled["finish"], filled.place_of("finish"), library.finishes, "finishing piece", problems
    )
    order = _order(filled, path, folder, folders, problems)
    patterns = tuple(
        load_pattern(folder, f"{path}/{pattern}", surroundings, problems) for pattern in order
    )
    tell_exchanged(folder, path, order, problems)
    tell_sets_confused(filled, order, path, problems)
    to_come = tuple(
        (
            one.value,
            resolve(
                one.value["designer"],
                one.value.place_of("designer"),
                designers,
                "designer",
                problems,
                called,
            ),
        )
        for one in filled.each("to_come")
        if one.value is not None
    )
    complain_of_file_name(filled, "title", name, "folder", problems)
    complain_of_lines_twice({"welcome.md": welcome}, path, problems)
    assumptions = read_assumptions(filled, problems)
    pace = _pace(filled, problems)
    notices = read_notices(filled, problems)
    look = read_look(folder, path, filled, problems)
    aside = read_laid_aside(filled, problems)
    if problems.hindering:  # nothing is put together that would be thrown away
        return None
    coming = tuple(
        ToCome(
            one["title"],
            sure(designer),
            read_occasion(one["occasion"]),
            place=one.place_of("title"),
        )
        for one, designer in to_come
    )
    here = all_sure(patterns)
    complain_of_copies(here, folder.for_review, problems)
    complain_of_copied_lines(here, problems)
    complain_of_counters(here, problems)
    complain_of_shop_names(here, problems)
    check_credits_of_all(here, problems)
    titles = (filled["title"], *(one.title for one in here), *(one.title for one in coming))
    advise_on_letters(look, titles, filled.place_of("look"), problems)
    series = Series(
        id=name,
        title=filled["title"],
        tagline=filled["tagline"],
        release=filled["release"],
        release_place=filled.place_of("release"),
        finish=sure(finish),
        thread_sets=all_sure(sure(sets).values()),
        designers=all_sure(sure(designers).values()),
        patterns=here,
        to_come=coming,
        notices=notices,
        licence=filled["licence"],
        welcome_markdown=sure(welcome),
        place=filled.place,
        address=filled["address"],
        assumptions=assumptions,
        pace=pace,
        goes_up_days=filled["goes_up"],
        before_release=filled["before_release"],
        look=look,
        laid_aside=aside,
    )
    complain_of_told_days(series, path, problems)
    drawn_by = [one.name for one in series.designers]
    complain_of_told_names({"welcome.md": series.welcome_markdown}, drawn_by, path, problems)
    said_in = [one.value for one in filled.each("notices") if one.value is not None]
    told_in = [one.given["text"] for one in said_in]
    complain_of_told_piece(series, path, told_in, problems)
    complain_of_told_titles(series, path, told_in, filled.given["tagline"], problems)
    complain_of_notice_days(series, said_in, problems)
    return series


def _pace(filled: Filled, problems: Problems) -> Pace:
    """The author's own, or the default; a slow hour has no more stitches than a quick one."""
    given = filled["pace"]
    if given is None or not given.whole:
        return Pace()
    pace = Pace(given["slow"], given["usual"], given["quick"])
    if not pace.slow <= pace.usual <= pace.quick:
        numbers = {name: plain(given[name]) for name in ("slow", "usual", "quick")}
        problems.add(filled.place_of("pace"), "pace-order", **numbers)
    return pace


def _order(
    filled: Filled,
    path: str,
    folder: ContentFolder,
    folders: tuple[str, ...],
    problems: Problems,
) -> tuple[str, ...]:
    """The pattern folders to load, in the author's order;
    all there are where she gave none that can be read. Nothing is said of those that lie elsewhere.
    """
    elsewhere = folder.moved_names()
    if filled["order"] is None:
        return folders
    listed_names: list[str] = []
    once = Once("pattern", problems)
    named = dict.fromkeys(given.value for given in filled.each("order"))
    # Folders that the order does not name, by what they can be called.
    left_out = {as_id(name) or name: name for name in folders if name not in named}
    missing = [name for name in named if name and name not in (*folders, *left_out, *elsewhere)]
    # A slip in a name: the folder that is meant need not be told by a line of its own.
    meant = {name: near for name in missing if (near := nearest_of(name, tuple(left_out)))}
    meant = {name: near for name, near in meant.items() if nearest_of(near, missing) == name}
    # A folder with a new name that no address can have: one slip too.
    renamed = {
        name: left_out[near]
        for name, near in meant.items()
        if left_out[near] != near and as_id(name) == name
    }
    for given in filled.each("order"):
        if given.value is None:
            continue
        if once.again(given.value, given.place) or given.value in elsewhere:
            continue
        parts = re.findall(r"[^\s,;]+", given.value)
        if len(parts) > 1 and set(parts) <= set(folders):
            hint = f"put a comma between the names: {shown(', '.join(parts))}"
            if _behind_a_dash(given, folder, f"{path}/series.yaml"):
                behind = listed(tuple(f"- {one}" for one in parts))
                hint = f"write each name behind a dash of its own, in a line of its own: {behind}"
            problems.add(given.place, "pattern-missing", name=said(given.value), hint=hint)
            listed_names += parts
            continue
        name = given.value if given.value in folders else left_out.get(given.value, given.value)
        if name not in folders:
            known = (meant[name],) if name in meant else [as_id(one) or one for one in folders]
            hint = offer(name, known)
            if name in renamed:
                again, better = said(renamed[name]), said(meant[name])
                hint = f"give the folder {again} that name, or call it {better} and write that here"
            if hint.startswith("known here") and not left_out and (as_folder := as_id(name)):
                hint = _to_be_drawn(name, as_folder)
            problems.add(given.place, "pattern-missing", name=said(name), hint=hint)
        listed_names.append(name)
    if any(given.value is None for given in filled.each("order")):
        left_out = {}  # each may stand there
    for better, name in left_out.items():
        place = Place(f"{path}/{name}")
        if name not in listed_names and better not in meant.values():
            # 'fern copy', as a file manager calls it: a copy has another title by and by.
            if better != name and any(better.startswith(f"{one}-") for one in folders):
                title = title_in(folder, f"{path}/{name}", f"{path}/{name}/pattern.yaml")
                by_title = as_id(title)
                better = by_title if by_title and by_title not in folders else better
            hint = "add it here" if better == name else f"call it {said(better)} and add that here"
            problems.add(
                filled.place_of("order"), "pattern-not-in-order", name=said(name), hint=hint
            )
        elif name not in listed_names and name not in renamed.values():
            valid_id(name, place, problems)
    return tuple(name for name in listed_names if name in folders)


def _behind_a_dash(given: Given, folder: ContentFolder, path: str) -> bool:
    """Whether it is an entry of a list with dashes, and not of one between brackets."""
    line = (folder.text(path) or "").split("\n")[given.place.line - 1 :][:1]
    return bool(line) and not line[0][: given.place.column - 1].strip(" -")


def _to_be_drawn(name: str, folder: str) -> str:
    """What to do with a name in the order that is like none of a folder."""
    title = folder.replace("-", " ").capitalize() if name == folder else name
    quoted = between_quotes(title) or "TITLE"
    return (
        f"take it out and begin it with packetgen begin --pattern {quoted}, or let it be under "
        "'to_come'"
    )


def _thread_sets(
    filled: Filled, library: Library, problems: Problems
) -> dict[str, ThreadSet | None] | None:
    if filled["thread_sets"] is None:
        return None
    sets: dict[str, ThreadSet | None] = {}
    once = Once("thread set", problems, another="name")
    reserved = [field.name for field in KEY_LINE.fields]
    for given in filled.each("thread_sets"):
        one = given.value
        if one is None:
            continue
        name, place = one["name"], one.place_of("name")
        card = resolve(one["card"], one.place_of("card"), library.threads, "thread card", problems)
        for field in _STRANDS:
            check_strands(one[field], one.place_of(field), card, problems)
        lines = one["backstitch_strands"] if "backstitch_strands" in one.given else None
        if (
            lines
            and one["strands"]
            and lines > one["strands"]
            and (card is None or lines <= card.strands)
        ):
            facts = {"strands": lines, "crosses": one["strands"]}
            problems.add(one.place_of("backstitch_strands"), "backstitch-heavy", **facts)
        if card is not None and 1 < card.strands == one["strands"]:
            mend = (
                f"if it parts into more, as most stranded cotton into 6, mend 'strands' in threads/{card.id}.yaml"
                if card.strands <= FEW_STRANDS
                else "write how many a stitch is worked with, 2 on most cloth"
            )
            facts = {"card": said(card.name), "strands": card.strands, "mend": mend}
            problems.add(one.place_of("strands"), "strands-all", **facts)
        if name is None:
            continue
        if name in reserved:
            problems.add(place, "name-reserved", name=said(name))
        once.again(name, place)
        sets[name] = None
        if given.whole and card is not None:
            strands = {field: one[field] for field in _STRANDS}
            sets[name] = ThreadSet(name, card, **strands, place=place)
    return (
        None
        if any(one.value is None or one.value["name"] is None for one in filled.each("thread_sets"))
        else sets
    )
