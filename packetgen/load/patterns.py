"""A pattern: one folder with its pattern.yaml, its chart, its texts, perhaps a photograph."""

from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.diagnostics import Place, Problems
from packetgen.load.alike_lines import tell_alike
from packetgen.load.alike_words import complain_of_file_name
from packetgen.load.chart import (
    Chart,
    as_grid,
    check_corners,
    check_marks,
    check_rows,
    unused_marks,
)
from packetgen.load.close_ups import Marks
from packetgen.load.credits import check_credits, credit
from packetgen.load.documents import read_document, read_markdown
from packetgen.load.files import ContentFolder, valid_id
from packetgen.load.grid import CHART_FILES, chart_file, read_chart
from packetgen.load.key import Key, Requests, read_key
from packetgen.load.key_remarks import complain_of_remarks, former_names, names_in_remarks
from packetgen.load.laid_aside import read_laid_aside
from packetgen.load.library import Library
from packetgen.load.lone_knots import complain_of_lone_knots
from packetgen.load.lone_lines import complain_of_lone_lines
from packetgen.load.long_lines import complain_of_long_line
from packetgen.load.occasions import read_occasion
from packetgen.load.once import Once
from packetgen.load.photos import FILES, photo_hints, photo_in, photographer_in
from packetgen.load.references import resolve
from packetgen.load.revisions import read_revisions
from packetgen.load.shape_pattern import ON_THE_CHART, PATTERN
from packetgen.load.stitches import Threads
from packetgen.load.strange_keys import Sets
from packetgen.load.sure import all_sure, sure
from packetgen.load.symbols_file import read_symbols, with_kept
from packetgen.load.told_design import complain_of_told_design
from packetgen.load.told_in_texts import complain_of_texts
from packetgen.load.told_kind_threads import complain_of_kind_threads
from packetgen.load.told_lines import complain_of_told_lines
from packetgen.load.told_names import complain_of_told_names
from packetgen.load.told_places import complain_of_told_places
from packetgen.load.twice import complain_of_lines_twice, complain_of_pattern_twice
from packetgen.load.values import Filled
from packetgen.load.words import said, shown
from packetgen.load.worked import read_worked
from packetgen.model import (
    BARE,
    ClothOption,
    Colour,
    Counter,
    Designer,
    KeyLine,
    MatchedSet,
    Pattern,
    Stitch,
    ThreadSet,
)

IN_ORDER = ", in the order of series.yaml too"

# What others keep beside a pattern, and a finishing piece has.
_OF_PIECE = {
    name: "tell in steps.md of the finishing piece how it is made and painted, and how the stitching is mounted"
    for name in ("finishing.md", "painting.md", "mounting.md")
}


@dataclass(frozen=True)
class Surroundings:
    """What a pattern may name. None where the series could not say."""

    library: Library
    sets: Sets
    designers: Mapping[str, Designer | None] | None
    called: Mapping[str, str]  # designers' names → their ids


def load_pattern(
    folder: ContentFolder, path: str, around: Surroundings, problems: Problems
) -> Pattern | None:
    """The pattern in the folder `path`; None where anything that hinders has gone wrong."""
    name = path.rpartition("/")[2]
    valid_id(name, Place(path), problems, IN_ORDER)
    filled = read_document(folder, f"{path}/pattern.yaml", PATTERN, problems)
    story = read_markdown(folder, f"{path}/story.md", problems)
    notes = read_markdown(folder, f"{path}/stitching.md", problems)
    photo = photo_in(folder, path, problems)
    chart_name = _chart_name(folder, path, filled, problems)
    readable = (*FILES, chart_name) if chart_name else (*FILES, *CHART_FILES)
    # Of several charts pattern.yaml says which it is, or they are told as that.
    folder.spoken_of.update(f"{path}/{one}" for one in CHART_FILES)
    folder.unread(path, readable, hints=_OF_PIECE | photo_hints(folder, path))
    if filled is None:
        file = f"{path}/{chart_name}"
        chart = read_chart(folder, file, None, None, problems) if chart_name else None
        if chart is not None:
            check_rows(chart, problems)
        return None
    complain_of_file_name(filled, "title", name, "folder", problems)
    designer = resolve(
        filled["designer"],
        filled.place_of("designer"),
        around.designers,
        "designer",
        problems,
        around.called,
    )
    cloths = _cloths(filled, around.library, problems)
    sets = _sets(filled, around.sets, problems)
    requests = _requests(filled, sets, problems)
    text, cards = sure(folder.text(f"{path}/pattern.yaml")), around.library.threads
    key = (
        read_key(filled.given["key"], sets, around.sets, requests, cards, text, problems)
        if "key" in filled.given
        else None
    )
    # A mark that stands twice, or cannot be one, may be meant for a mark that seems to be missing.
    told = key is not None and filled["key"] is not None and not filled.given["key"].repeated
    told = told and not sure(key).nameless
    marks = sure(key).marks if told else None
    drawn, chart = _chart(folder, path, chart_name, key, sets, marks, problems)
    # A mark that the key lacks and the chart has is told of the chart: not of each line in its colour, and its symbol is
    # not left over.
    of_chart = sorted(set().union(*drawn.rows) - {BARE}) if drawn is not None else ()
    known = None if marks is None else {**dict.fromkeys(of_chart), **marks}
    kept = read_symbols(folder, path, None if known is None else tuple(known), problems)
    worked = read_worked(
        filled, around.library, marks, known, _threads_of(key, sets), chart, problems
    )
    unused: frozenset[str] = frozenset()
    if drawn is not None and chart is not None and key is not None and marks is not None:
        if marks:
            unused = unused_marks(key.places, chart, worked.marks, bool(worked.beads), problems)
        check_marks(drawn, tuple(marks), key.places, unused, problems)
    if key is not None:
        numbered = {name: one for name, one in (sets or {}).items() if name not in (requests or ())}
        tell_alike(key.alike, unused, numbered, key.lines, problems)
    revisions = read_revisions(filled, problems)
    _check_given(filled, problems)
    check_credits(filled, around.designers, problems)
    photographer, photo_awaited = photographer_in(folder, path, filled, problems)
    aside = read_laid_aside(filled, problems)
    texts = {"story.md": story, "stitching.md": notes}
    if chart_name and chart_name.endswith(".txt"):
        texts[chart_name] = _remarked(folder.text(f"{path}/{chart_name}"))
    told_key = key if marks is not None else None
    on_chart = [name for name in ON_THE_CHART if filled[name] or _is_given(filled, name)]
    remarks = names_in_remarks(text, [line.place.line for line in key.lines]) if key else {}
    called: Mapping[str, str] = {}
    if told_key is not None and told_key.sound and sets:
        called = former_names(told_key.lines, remarks, [one for one in sets.values() if one])
    for given in [*filled.each("revisions")][-1:] if chart is not None and chart.even else ():
        if given.value is not None and given.value["note"]:
            size = len(sure(chart).rows[0]), len(sure(chart).rows)
            place = given.value.place_of("note")
            complain_of_told_places(given.value["note"], place, size, problems)
    values = {field: filled[field] for field in ("about", "photo_alt")}
    complain_of_texts(texts, path, told_key, sets or {}, chart, on_chart, values, called, problems)
    if problems.hindering:  # nothing is put together that would be thrown away
        return None
    in_order = all_sure(sure(sets).values())
    complain_of_remarks(remarks, called, sure(key).lines, in_order, problems)
    pattern = Pattern(
        id=name,
        title=filled["title"],
        about=filled["about"],
        designer=sure(designer),
        occasion=read_occasion(filled["occasion"]),
        cloths=all_sure(cloths),
        thread_sets=in_order,
        key=with_kept(_used(sure(key), unused), kept),
        grid=as_grid(sure(chart)),
        fractions=worked.fractions,
        lines=worked.lines,
        daisies=worked.daisies,
        matched=all_sure(sure(requests).values()),
        editions=tuple(one.value for one in filled.each("editions")) or ("colour",),
        also_finished_as=tuple(dict.fromkeys(one.value for one in filled.each("also_finished_as"))),
        knots=worked.knots,
        beads=worked.beads,
        model_stitcher=credit(filled, "model_stitcher"),
        finisher=credit(filled, "finisher"),
        dyer=credit(filled, "dyer"),
        photographer=photographer,
        photo_awaited=photo_awaited,
        trim_hex=filled["trim_hex"],
        photo_alt=filled["photo_alt"],
        release=filled["release"],
        release_place=filled.place_of("release") if filled["release"] else None,
        designer_place=filled.place_of("designer"),
        trim_place=filled.place_of("trim_hex") if filled["trim_hex"] else None,
        about_place=filled.place_of("about") if filled["about"] else None,
        photo_alt_place=filled.place_of("photo_alt") if filled["photo_alt"] else None,
        credits_place=filled.place_of("credits") if filled["credits"] else None,
        given_away=tuple(dict.fromkeys(one.value for one in filled.each("given_away"))),
        laid_aside=aside,
        sold_at=tuple(
            Counter(one.value["name"], one.value["url"], one.value.place_of("url"))
            for one in filled.each("sold_at")
        ),
        revisions=revisions,
        story_markdown=sure(story),
        notes_markdown=sure(notes),
        photo=photo,
        place=filled.place,
    )
    complain_of_pattern_twice(pattern, problems)
    complain_of_lines_twice(pattern.texts, path, problems)
    complain_of_told_design(pattern, path, problems)
    complain_of_told_lines(pattern, path, problems)
    complain_of_kind_threads(pattern, path, problems)
    complain_of_lone_knots(pattern, problems)
    complain_of_lone_lines(pattern, problems)
    complain_of_long_line(pattern, problems)
    people = [one.name for one in (around.designers or {}).values() if one]
    people += filter(
        None, (pattern.model_stitcher, pattern.finisher, pattern.dyer, pattern.photographer)
    )
    complain_of_told_names(pattern.texts, people, path, problems)
    return pattern


def _used(key: Key, unused: frozenset[str]) -> tuple[KeyLine, ...]:
    """The key as it will be when the lines that nothing is stitched with are out; all of it where only
    beads are sewn on."""
    return tuple(line for line in key.lines if line.mark not in unused) or key.lines


def _threads_of(key: Key | None, sets: Mapping[str, ThreadSet | None] | None) -> Threads:
    """What the numbers and names of threads stand for; of blends nothing."""
    marks: dict[str, str] = {}
    for line in key.lines if key is not None else ():
        for colours in line.threads.values():
            for word in (colours[0].number, colours[0].name) if len(colours) == 1 else ():
                marks.setdefault(word.casefold(), line.mark)
    on_cards: dict[str, tuple[str, Colour]] = {}
    for name, one in (sets or {}).items():
        for colour in one.card.colours.values() if one is not None else ():
            for word in (colour.number, colour.name):
                on_cards.setdefault(word.casefold(), (name, colour))
    return Threads(marks, on_cards)


def _is_given(filled: Filled, name: str) -> bool:
    """Whether the author has written it, though it could not be read."""
    return name in filled.given and filled[name] is None


def _check_given(filled: Filled, problems: Problems) -> None:
    """What is sold cannot be given away."""
    away = [one.value for one in filled.each("given_away") if one.value]
    if away and filled["sold_at"]:
        sold = filled.given["sold_at"]
        line = (sold.name_place or sold.place).line
        problems.add(filled.place_of("given_away"), "given-and-sold", line=line)


def _remarked(chart: str | None) -> str | None:
    """A chart's file where it has remarks at all; of millions of rows nobody looks for them one by one."""
    return chart if chart and (chart.startswith("#") or "\n#" in chart) else None


def _chart_name(
    folder: ContentFolder, path: str, filled: Filled | None, problems: Problems
) -> str | None:
    if filled is None:
        found = [one for one in CHART_FILES if one in folder.files(path)]
        return found[0] if len(found) == 1 else None  # else pattern.yaml may have said which
    if filled["chart"] is None and "chart" in filled.given:
        return None  # the author named one, in a way that could not be read
    return chart_file(folder, path, filled["chart"], filled.place_of("chart"), problems)


def _chart(
    folder: ContentFolder,
    path: str,
    name: str | None,
    key: Key | None,
    sets: Sets,
    marks: Marks,
    problems: Problems,
) -> tuple[Chart | None, Chart | None]:
    """The chart as it is drawn and as it is meant; None where what is drawn on it cannot be placed."""
    if name is None:
        return None, None
    chart = read_chart(folder, f"{path}/{name}", _colours(key, sets), marks, problems)
    if chart is None:
        return None, None
    if marks is not None:
        check_corners(chart, marks, problems)
    return chart, check_rows(chart, problems)


def _colours(key: Key | None, sets: Sets) -> dict[str, list[str]] | None:
    """For a chart drawn in pixels: the marks of each colour in the model's thread set.

    A full cross in a single colour goes before a blend that begins with it, any full cross before
    other stitches, and these before what can only stand in a close-up.
    None while any key line is broken.
    """
    if key is None or not sets or not key.sound:
        return None
    first = next(iter(sets))
    ranked: dict[str, list[tuple[tuple[bool, ...], str]]] = {}
    for line in key.lines:
        colours = line.threads[first]
        rank = (line.stitch.in_a_corner, line.stitch is not Stitch.FULL, len(colours) > 1)
        ranked.setdefault(colours[0].hex, []).append((rank, line.mark))
    return {
        colour: [mark for rank, mark in lines if rank == min(lines)[0]]
        for colour, lines in ranked.items()
    }


def _cloths(filled: Filled, library: Library, problems: Problems) -> tuple[ClothOption | None, ...]:
    options: list[ClothOption | None] = []
    once = Once("cloth choice", problems)
    for given in filled.each("cloths"):
        one = given.value
        if one is None:
            continue
        if one["cloth"] not in library.cloths and one["colour"] in library.cloths:
            right = f"cloth: {shown(one['colour'])}, colour: {shown(one['cloth'] or '')}"
            problems.add(one.place_of("cloth"), "cloth-colour-turned", right=right)
            continue
        cloth = resolve(one["cloth"], one.place_of("cloth"), library.cloths, "cloth", problems)
        if cloth is None:
            continue
        colour = resolve(
            one["colour"],
            one.place_of("colour"),
            cloth.colours,
            "colour",
            problems,
            of=cloth.name,
            file=f"cloths/{cloth.id}.yaml",
        )
        over = one["over"] or cloth.over
        once.again(cloth.id, one.place, (cloth.id, one["colour"], over))
        options.append(ClothOption(cloth, colour, over, one.place) if colour else None)
    return tuple(options)


def _sets(filled: Filled, series_sets: Sets, problems: Problems) -> Sets:
    """The pattern's thread sets in its order;
    None where the series, or the pattern, could not say.
    """
    if series_sets is None or filled["thread_sets"] is None:
        return None
    sets: dict[str, ThreadSet | None] = {}
    once = Once("thread set", problems)
    sound = True
    for given in filled.each("thread_sets"):
        name = given.value
        if name is None or name not in series_sets:
            sound = False
            resolve(name, given.place, series_sets, "thread set", problems, file="series.yaml")
            for _, line in filled["key"] or ():  # told once, with how often it stands there
                if name and line.value is not None and name in line.value.given:
                    place = line.value.given[name].name_place or line.place
                    resolve(name, place, series_sets, "thread set", problems, file="series.yaml")
            continue
        once.again(name, given.place)
        sets[name] = series_sets[name]
    return sets if sound else None


def _requests(filled: Filled, sets: Sets, problems: Problems) -> Requests:
    """The sets that are matched from others."""
    if filled["matched"] is None:  # misspelt, or in no form that can be read
        return None
    names = [key.value for key, _ in filled["matched"]]
    requests: dict[str, MatchedSet | None] = dict.fromkeys(names)
    for key, given in filled["matched"]:
        resolve(key.value, key.place, sets, "thread set", problems)
        source = resolve(given.value, given.place, sets, "thread set", problems)
        if sets is None or key.value not in sets or given.value not in sets:
            continue
        into = sets[key.value]
        if key.value == next(iter(sets)):
            swapped = _swapped(filled, key.value, given.value)
            if swapped and into is not None and source is not None:
                requests[given.value] = MatchedSet(source, into, key.place)
                requests.pop(key.value)
            hint = (
                swapped or "write its colours in the key, or put another set first in thread_sets"
            )
            problems.add(key.place, "matched-model", set=said(key.value), hint=hint)
        elif given.value in names:
            problems.add(
                given.place, "matched-round", set=said(key.value), source=said(given.value)
            )
        elif into is not None and source is not None:
            requests[key.value] = MatchedSet(into, source, key.place)
    return requests


def _swapped(filled: Filled, model: str, source: str) -> str:
    """What to write where the key has the numbers of the model's set, and none of the one that it is to be matched from;
    '' otherwise."""
    lines = [line.value for _, line in filled["key"] or () if line.value is not None]
    in_key = [sum(name in line.given for line in lines) for name in (model, source)]
    right = f"matched: {{{shown(source)}: {shown(model)}}}"
    return f"the two have changed places: write {right}" if in_key[0] and not in_key[1] else ""
