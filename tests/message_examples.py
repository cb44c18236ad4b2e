"""An example for each message: what stood in a file, and the line that was told of it.

The cases of wrong input serve, those of an editor's review, and below those of what only reckoning finds
and of designs that are brought in.
"""

from dataclasses import dataclass
from datetime import date
from pathlib import Path

from packetgen.bring.codes import Codes
from packetgen.bring.reading import Reading, read_design
from packetgen.cli.reissuing import unrevised
from packetgen.diagnostics import Place, Problems
from packetgen.faults.review import REVIEW
from packetgen.load.files import ContentFolder
from packetgen.model import Colour
from packetgen.pipeline import proof, review
from packetgen.reckon.left_behind import Drawn, complain_of_left_behind, laid_on
from packetgen.record import Issued
from packetgen.reference.catalogue import Example
from tests import wrong_input_review
from tests.content_builder import (
    BEADS,
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    build,
    drawn_freely,
    half_seen,
    noise,
    picture,
)
from tests.test_wrong_input import CASES
from tests.wrong_input_case import Case, as_usual

_KEY = TINY[PATTERN][TINY[PATTERN].index("  r: {moss") : TINY[PATTERN].index("backstitch:")]
_SECOND = {
    f"{FERN}-two/{name}": TINY[f"{FERN}/{name}"]
    for name in ("pattern.yaml", "chart.txt", "story.md", "stitching.md")
}
OF_FIGURES = (
    Case("a cloth that is too coarse for the thread", {CLOTH: ("count: 28", "count: 18")}),
    Case("a piece that is too small", {FINISH: TINY[FINISH].replace("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 8,0 8,8 0,8").replace("border: 6 mm", "border: 1 mm").replace("pairs: 4", "pairs: 0")}),
    Case(
        "a count by which a design is larger than the wood",
        {CHART: "\n".join(["rrbb" + "r" * 32, *["rk" + "." * 34] * 34, "rrbb" + "r" * 32]), CLOTH: ("count: 28", "count: 10")},
    ),
    Case(
        "width and overlap of the trim that changed places",
        {
            FINISH: ("trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}", "trim: {kind: round, overlap: 3 mm, width: 20 mm}"),
            CHART: "\n".join(["rkbb" + "r" * 26, "rk.." + "r" * 26, *["r" * 30] * 8]),
        },
    ),
    Case(
        "four strands for two, on three cloths",
        {
            SERIES: ("card: moss, strands: 2", "card: moss, strands: 4"),
            PATTERN: ("cloths:\n", "cloths:\n  - {cloth: brook-32, colour: frost}\n  - {cloth: brook-36, colour: frost}\n"),
            **{
                f"cloths/brook-{count}.yaml": TINY[CLOTH].replace("Hopsack 28", f"Brook {count}").replace("count: 28", f"count: {count}")
                for count in (32, 36)
            },
        },
    ),
    Case("a border in centimetres", {FINISH: ("border: 6 mm", "border: 48 mm")}),
    Case(
        "an inset that suits no card",
        {
            FINISH: ("inset: 15 mm", "inset: 40 mm"),
            CHART: "r" * 26 + "\n" + ("rkbb" * 6 + "..\n") * 20,
            PATTERN: TINY[PATTERN].replace("  - {cloth: hopsack-28, colour: frost}\n", "  - {cloth: hopsack-28, colour: frost}\n  - {cloth: hopsack-28, colour: oatmeal}\n").replace("at: 3,2", "at: 25,2"),
        },
    ),
    Case(
        "a title given twice",
        {SERIES: ("order: [fern]", "order: [fern, fern-two]"), **_SECOND},
    ),
    Case("a pattern that is here and to come", {SERIES: ("title: Onions", "title: Fern by the Tap")}),
    Case(
        "a release moved behind the days of all designs",
        {
            SERIES: TINY[SERIES]
            .replace("release: 2027-01-15", "release: 2027-06-15")
            .replace("on: last Monday of August", "on: 1 April")
        },
    ),
    Case("a design for a month that has begun", {SERIES: ("on: last Monday of August", "on: in January")}),
    Case("a pattern for the day of one to come", {SERIES: ("on: last Monday of August", "on: second Sunday of May")}),
    Case("a series out before its revision", {SERIES: ("release: 2027-01-15", "release: 2026-01-15")}),
    Case("a revision's year with its digits exchanged", {PATTERN: ("note: First issue.}", "note: First issue.}\n  - {date: 2072-11-26, note: A mark was wrong.}")}),
    Case("a pattern that is out a week after its day", {PATTERN: ("credits:", "release: 2027-05-16\ncredits:")}),
    Case("a release in another year than the first issue", {SERIES: ("release: 2027-01-15", "release: 2027-11-25")}),
    Case("a colour in the picture's words that is nowhere", {PATTERN: ("credits:", "photo_alt: A purple fern at the tap.\ncredits:")}),
    Case("a year with its digits exchanged", {SERIES: ("release: 2027-01-15", "release: 2072-01-15")}),
    Case(
        "a designer without a pattern",
        {SERIES: ("designers:\n", "designers:\n  - {id: reed, name: Tamsin Reed, about: Draws ponds.}\n")},
    ),
    Case(
        "a pattern that only another designer sells",
        {
            SERIES: ("/alder\norder", "\n  - {id: reed, name: Tamsin Reed, about: Draws ponds., shop: https://reed.example/}\norder"),
            PATTERN: ("designer: alder", "designer: reed"),
        },
    ),
    Case("a thread set that nothing uses", {SERIES: ("  - {name: spool, card: spool, strands: 1}\n", "  - {name: spool, card: spool, strands: 1}\n  - {name: third, card: moss, strands: 1}\n")}),
    Case("a paint that nothing uses", {FINISH: ("paints:\n", 'paints:\n  - {name: straw, hex: "#d8c48a", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n')}),
    Case("a tin with a nought too few", {FINISH: TINY[FINISH].replace("tin: 100 ml", "tin: 10 ml").replace("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 240,0 240,240 0,240").replace("trim:", '  - {name: straw, hex: "#d8c48a", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\ntrim:')}),
    Case("words that cannot be read", {SERIES: ("licence:", 'look: {light: {ink: "#d0d0c8"}}\nlicence:')}),
    Case("a title in letters that the type lacks", {PATTERN: ("title: Fern by the Tap", "title: Fern \u0915")}),
    Case("beads that crowd", {BEADS: ("size: 2.2 mm", "size: 6 mm"), PATTERN: ('at: "3.5,1.5"', 'at: "3.5,1.5 2.5,1.5"')}),
    Case("fewer colours than are to be matched", {PATTERN: (_KEY, "  r: {moss: E2}\n  k: {moss: K4}\n  b: {moss: [E2, \"07\"]}\nmatched: {spool: moss}\n"), "threads/spool.yaml": TINY["threads/spool.yaml"].replace('  - {number: "12", name: earth, hex: "#69513c"}\n  - {number: "14", name: leaf, hex: "#507840"}\n', "")}),
    Case("a number far from the model's colour", {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "14"}')}),
    Case("two colours that become one", {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "12"}')}),
    Case("two greens and their symbols", {PATTERN: ('k: {moss: K4, spool: "12"}', 'k: {moss: K4, spool: "12", symbol: square}'), }),
    Case("a thread that hides the cloth badly", {"threads/spool.yaml": ("tex: 50", "tex: 8")}),
    Case("a key with a line too many for the shapes", {PATTERN: ("key:\n", "key:\n" + "".join(f"  {chr(0x4E00 + n)}: {{moss: K4, spool: '12'}}\n" for n in range(206)))}),
    Case("two browns with much the same symbol", {MOSS: ('name: peat, hex: "#6b503a"', 'name: clay, hex: "#a54c34"'), PATTERN: ('spool: "10"}\n  k: {moss: K4, spool: "12"}', 'spool: "10", symbol: three-leaves}\n  k: {moss: K4, spool: "12", symbol: three-dots-up}')}),
    Case("a chart of single stitches", {CHART: "r.b.k.r.b.k.\n............\n" * 4, PATTERN: ("at: 3,2", "at: 4,2")}),
    Case(
        "a small design that draws the magnets together",
        {
            CHART: "rrbb" + "r" * 41 + "\nrk.." + "r" * 41 + "\n" + ("rkb" * 15 + "\n") * 43,
            SERIES: ("order: [fern]", "order: [fern, fern-two]"),
            **_SECOND,
            f"{FERN}-two/pattern.yaml": TINY[PATTERN].replace("Fern by the Tap", "A Snail").replace("second Sunday of May", "1 June"),
            f"{FERN}-two/chart.txt": "rrbb" + "r" * 20 + "\nrk.." + "r" * 20 + "\n" + ("rkb" * 8 + "\n") * 22,
        },
    ),
    Case(
        "a panel that is too small for all designs",
        {
            FINISH: ("0,0 100,0 100,100 0,100", "0,0 40,0 40,40 0,40"),
            CHART: "rrbb" + "r" * 41 + "\nrk.." + "r" * 41 + "\n" + ("rkb" * 15 + "\n") * 43,
            SERIES: ("order: [fern]", "order: [fern, fern-two]"),
            PATTERN: ("cloths:\n", "cloths:\n  - {cloth: brook-32, colour: frost}\n"),
            "cloths/brook-32.yaml": TINY[CLOTH].replace("Hopsack 28", "Brook 32").replace("count: 28", "count: 32"),
            **_SECOND,
            f"{FERN}-two/pattern.yaml": TINY[PATTERN].replace("Fern by the Tap", "A Snail").replace("second Sunday of May", "1 June"),
            f"{FERN}-two/chart.txt": "rrbb" + "r" * 20 + "\nrk.." + "r" * 20 + "\n" + ("rkb" * 8 + "\n") * 22,
        },
    ),
    Case(
        "a corner of the panel that leaves a design no room",
        {
            FINISH: ("0,0 100,0 100,100 0,100", "0,0 100,0 1,100 0,100"),
            CHART: "\n".join(["rkbb" + "r" * 26, "rk.." + "r" * 26, *["r" * 30] * 28]),
        },
    ),
    Case(
        "a colour of a trim that is not there",
        {FINISH: ("trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}\n", ""), PATTERN: ("credits:", 'trim_hex: "#7d9b76"\ncredits:')},
    ),
    Case("a change that was cut off", {f"_next/{PATTERN}": "title: Fern by the Butt\n"}),
)  # fmt: skip


class Proved:
    """The folder of a case and what is told of it, looked for once."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._found: dict[int, tuple[Path, Problems]] = {}

    def __call__(self, case: Case) -> tuple[Path, Problems]:
        if id(case) not in self._found:
            root = build(self._folder / str(len(self._found)), dict(case.changes))
            self._found[id(case)] = root, proof(root).problems
        return self._found[id(case)]


def message_examples(folder: Path, proved: Proved) -> dict[str, Example]:
    """One example of each code: the first case of it, or else the first that shows what was written."""
    found: dict[str, Example] = {}
    for case in (*CASES, *OF_FIGURES):
        root, problems = proved(case)
        for problem in problems:
            place = problem.place
            line = as_usual(problem.printed, root)
            # What else is told of a case, of the whole file, is not told of what was written there.
            of_it = not case.lines or as_usual(str(problem), root) in case.lines
            example = Example(place.path, written_at(case, place) if of_it else "", line)
            last = found.get(problem.code)
            if last is None or _clear(example) > _clear(last):
                found[problem.code] = example
    for number, case in enumerate(wrong_input_review.CASES):
        root = build(folder / f"review-{number}", dict(case.changes))
        for chapter in review(proof(root)).chapters:
            for problem in chapter.problems:
                if problem.code in REVIEW and str(problem) in case.lines:
                    written = written_at(case, problem.place)
                    found[problem.code] = Example(problem.place.path, written, problem.printed)
    for problem in proof(folder / "contents").problems:
        found[problem.code] = Example(problem.place.path, "", problem.printed)
    issued = Issued("Fern by the Tap", 1, f"{PATTERN}:29:5", "", "", False)
    for problem in unrevised([issued], Path("build"), date(2027, 3, 1)):
        found[problem.code] = Example(problem.place.path, "", problem.printed)
    found["stitches-moved"] = _of_moved(folder / "moved")
    return dict(sorted((found | _of_bringing(folder / "drawn")).items()))


def _of_moved(folder: Path) -> Example:
    """The tiny fern with four columns put before it."""
    (each,) = proof(build(folder, {CHART: "# A fern\n....rrbb\n....rk..\n"})).reckoned
    pattern = each.figures[0].pattern
    before = Drawn(("rrbb....", "rk......"), frozenset(laid_on(pattern)))
    problems = Problems()
    complain_of_left_behind(pattern, before, problems)
    (problem,) = problems
    return Example(problem.place.path, "", problem.printed)


def _clear(example: Example) -> tuple[bool, bool]:
    """In letters that every reader has, and then with what was written."""
    return f"{example.told}{example.written}".isascii(), bool(example.written)


@dataclass(frozen=True)
class _Drawn:
    """A file that is brought in, and how its author asks for it."""

    name: str
    data: bytes
    wide: int | None = None
    how: Reading = Reading()


_CLEAR, _HALF = (0, 0, 0, 0), (160, 64, 48, 90)
_DRAWN = (
    _Drawn("design.bmp", b"BM"),
    _Drawn("design.csv", b"E2,E2,rim\nK4,,rim\n"),
    _Drawn("design.csv", b"E2,rim\n", how=Reading(codes=(("rim", "K4"), ("rmi", "K4")))),
    _Drawn("design.csv", b"pot,rim\n", how=Reading(codes=(("pot=E2,rim", "K4"),))),
    _Drawn("design.csv", b"E2,rim\n", how=Reading(codes=(("K4", "rim"),))),
    _Drawn("design.csv", b"E2,8,8\n"),
    _Drawn("design.csv", b"A,B,C,D,E\nE2,E2,K4,K4,E2\n"),
    _Drawn("design.csv", b"rim,pot,rim\npot,pot,\n,,\nrim,K4,peat\npot,E2,brick\n"),
    _Drawn("design.txt", b"kkbb\nkb..\n\nk = K4\nb = E2\n. = sky\n"),
    _Drawn("design.csv", b",A,B,C,D,E,,\n1,E2,E2,K4,K4,E2,,to wash\n2,E2,E2,K4,K4,E2,,\n"),
    _Drawn("design.csv", b"Robin,,,,,\n,A,B,C,D,E\n1,E2,E2,K4,K4,E2\n"),
    _Drawn("design.png", half_seen()[1]),
    _Drawn("design.png", drawn_freely()),
    _Drawn("design.png", noise(30, 30)),
    _Drawn("design.png", noise(1100, 40)),
    _Drawn("design.png", picture([["#a04030"] * 4] * 4), how=Reading(cell_px=5)),
    _Drawn("design.png", picture([[_CLEAR, _CLEAR]])),
    _Drawn("design.png", picture([["#a04030", _HALF]])),
    _Drawn("photo.jpg", picture([["#a04030"]], "JPEG")),
    _Drawn("photo.jpg", picture([["#a04030"]] * 9, "JPEG"), wide=300),
)


def _of_bringing(folder: Path) -> dict[str, Example]:
    """Examples of what is told of designs that are brought in; of a table what stood in it."""
    card = (
        Colour("E2", "brick", "#a04030"),
        Colour("K4", "peat", "#6b503a"),
        Colour("08", "moss", "#4f7942"),
    )
    found: dict[str, Example] = {}
    for number, drawn in enumerate(_DRAWN):
        problems = Problems()
        place = folder / str(number)
        place.mkdir(parents=True)
        (place / drawn.name).write_bytes(drawn.data)
        there = ContentFolder(place, problems)
        read_design(
            there, drawn.name, drawn.how, drawn.wide, Codes(card, drawn.how.codes), problems
        )
        written = drawn.data.decode().strip() if drawn.name.endswith(".csv") else ""
        for problem in problems:
            found.setdefault(problem.code, Example(drawn.name, written, problem.printed))
    return found


def written_at(case: Case, place: Place) -> str:
    """The lines that the case puts there; '' where it puts no short text there."""
    change = case.changes.get(place.path)
    text = change[1] if isinstance(change, tuple) else change
    if not isinstance(text, str) or not text.strip() or not _readable(text):
        return ""
    if isinstance(change, tuple):
        before = TINY[place.path].partition(change[0])[0].count("\n") + 1
        if not before <= place.line <= before + text.count("\n"):
            return ""
    old = change[0].split("\n") if isinstance(change, tuple) else []
    lines = [line for line in text.strip("\n").split("\n") if line not in old] or [""]
    return "\n".join(lines) if len(lines) <= 4 and max(map(len, lines)) <= 100 else ""


def _readable(text: str) -> bool:
    return all(letter.isprintable() or letter == "\n" for letter in text)
