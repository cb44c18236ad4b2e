"""A catalogue of as many patterns as asked for, as an ordinary content folder; the same every time.

    python -m tests.bench.catalogue 100 FOLDER

Series of about ten patterns each, several designers, two lines of thread, three cloths, one finishing
piece on which all designs fit. `templates` beside the content holds the author's own copy of a
template of the packet and one of the site, so that they can be edited.
"""

import argparse
from collections.abc import Iterator
from colorsys import hls_to_rgb
from pathlib import Path
from random import Random

from packetgen.load.files import as_id
from packetgen.program import project_templates
from tests.bench.catalogue_design import design
from tests.bench.catalogue_words import OCCASIONS, PEOPLE, pattern_title, series_title, story

IN_SERIES = 10
RELEASE = "2027-01-15 09:00 Europe/London"
AS_OF = "2027-06-01"  # everything is out
# What the bench edits.
THREAD_CARD = "threads/rainbarrel.yaml"
PACKET_TEMPLATE, SITE_TEMPLATE = "packet/credits.html", "site/pattern-needs.html"

_HUES, _TONES = 12, ("pale", "light", "clear", "full", "deep")
_HUE_NAMES = (
    "radish", "clay", "marigold", "straw", "lichen", "pea", "bottle", "pond", "rain", "iris",
    "aubergine", "peony",
)  # fmt: skip
_CLOTHS = {
    "furrow-evenweave-28": ("Furrow Evenweave 28", "evenweave", 28, 2, "11.40", "chaff", "#f1ecdd"),
    "harrow-aida-14": ("Harrow Aida 14", "aida", 14, 1, "5.90", "frost", "#f6f7f4"),
    "tilth-linen-32": ("Tilth Linen 32", "linen", 32, 2, "13.80", "oat", "#e7dcc4"),
}
_BEADS = """\
name: Rain Bead
size: 2.2 mm
packet: 200
price: 2.40 EUR
colours:
  - {number: "1", name: clear drop, hex: "#dfeaf0"}
"""
_FINISH = """\
name: The Seed Drawer
about: The front of a seed drawer with a wide panel, two runners and a turned knob.
panel:
  outline: 10,10 270,10 270,270 10,270
border: 5 mm
fold_over: 25 mm
wadding_inset: 1 mm
parts:
  - {name: front, outline: "0,0 280,0 280,280 0,280", thickness: 6 mm, paint: leaf mould, coats: 2}
  - {name: runner, outline: "0,0 20,0 20,260 0,260", at: "-20,10", thickness: 9 mm, pieces: 2, paint: whitewash, coats: 2}
  - {name: knob, outline: "0,0 24,0 24,24 0,24", at: "128,280", thickness: 12 mm, paint: whitewash, coats: 2}
paints:
  - {name: leaf mould, hex: "#8f9a7c", put_on_with: brush, covers: 10 m2 per litre, dries_in: 2 h, tin: 100 ml}
  - {name: whitewash, hex: "#f1eee4", put_on_with: brush, covers: 10 m2 per litre, dries_in: 2 h, tin: 50 ml}
trim: {kind: gathered, ratio: 1.5, overlap: 20 mm, width: 8 mm}
magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 18 mm, holds: 1 kg}
glue:
  - {name: wood glue, cures_in: 12 h, for: the wooden parts}
  - {name: metal glue, cures_in: 24 h, for: magnets and washers}
hardware:
  - {name: wood screw, pieces: 4, size: 3 × 16 mm}
cautions: [small magnets, blades, needles, dust]
"""
_STEPS = """\
1. Smooth every edge and wipe the dust away.
2. Paint the parts before anything is joined.
3. Screw the runners to the front from behind, and glue the knob below it.
4. Glue the magnets where the template has them.
5. Mount the stitching over card and wadding, glue the steel washers to its back, cover that with the backing fabric, and
   gather the trim round it.
"""
_STITCHING = "Begin in the middle, and work the lines last.\n"


def catalogue(patterns: int, folder: Path) -> None:
    """Write `content` and `templates` into `folder`. Raises OSError."""
    for path, text in _files(patterns):
        file = folder / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")


def first_story(folder: Path) -> Path:
    """The story of some pattern in the middle of the catalogue."""
    stories = sorted((folder / "content").glob("series/*/*/story.md"))
    return stories[len(stories) // 2]


def _files(patterns: int) -> Iterator[tuple[str, str]]:
    for name, text in _shared():
        yield f"content/{name}", text
    for name in (PACKET_TEMPLATE, SITE_TEMPLATE):
        yield f"templates/{name}", (project_templates() / name).read_text("utf-8")
    for number, first in enumerate(range(0, patterns, IN_SERIES)):
        numbers = range(first, min(first + IN_SERIES, patterns))
        title = series_title(number)
        folder = f"content/series/{as_id(title)}"
        people = [PEOPLE[(number + step) % len(PEOPLE)] for step in range(min(3, len(numbers)))]
        yield f"{folder}/series.yaml", _series(number, title, people, numbers)
        yield f"{folder}/welcome.md", "Welcome. There is always something to draw out here.\n"
        for at, one in enumerate(numbers):
            yield from _pattern(
                f"{folder}/{as_id(pattern_title(one))}", one, people[at % len(people)][0]
            )


def _shared() -> Iterator[tuple[str, str]]:
    yield THREAD_CARD, _card("Rainbarrel Stranded", 6, "tex: 25", "skein", "8 m", "1.30", 0.0)
    yield (
        "threads/spindle.yaml",
        _card("Spindle Twelve", 1, "tex: 50", "spool", "50 yd", "3.80", 0.012),
    )
    for name, (title, weave, count, over, price, colour, shade) in _CLOTHS.items():
        yield (
            f"cloths/{name}.yaml",
            f"name: {title}\nweave: {weave}\ncount: {count}\nover: {over}\ndyed: plain\n"
            f'price: {price} EUR\ncolours:\n  - {{name: {colour}, hex: "{shade}"}}\n',
        )
    yield "beads/rain.yaml", _BEADS
    yield "finishes/seed-drawer/finish.yaml", _FINISH
    yield "finishes/seed-drawer/steps.md", _STEPS


def _card(
    title: str, strands: int, size: str, sold_as: str, length: str, price: str, shift: float
) -> str:
    """A thread card with a colour for each hue in each tone; `shift` turns its hues a little."""
    lines = [
        f"name: {title}", "material: cotton", f"strands: {strands}", size, f"sold_as: {sold_as}",
        f"length: {length}", f"price: {price} EUR", "dyed: plain", "colours:",
    ]  # fmt: skip
    for hue in range(_HUES):
        for tone, word in enumerate(_TONES):
            channels = hls_to_rgb(hue / _HUES + shift, 0.86 - 0.15 * tone, 0.5)
            shade = "".join(f"{round(255 * channel):02x}" for channel in channels)
            lines.append(
                f'  - {{number: "{_number(hue, tone)}", name: {word} {_HUE_NAMES[hue]}, hex: "#{shade}"}}'
            )
    return "\n".join(lines) + "\n"


def _number(hue: int, tone: int) -> str:
    return f"{10 * (hue + 1) + tone}"


def _series(number: int, title: str, people: list[tuple[str, str]], patterns: range) -> str:
    name = as_id(title)
    designers = "".join(
        f"  - {{id: {one}, name: {full}, about: Draws what comes up and lets the rest be., "
        f"sells: true, shop: https://{one}.example.org/}}\n"
        for one, full in people
    )
    order = "".join(f"  - {as_id(pattern_title(one))}\n" for one in patterns)
    return (
        f"title: {title}\ntagline: Small pictures for a gardener's year\nrelease: {RELEASE}\n"
        f"address: https://{name}.example.org/\nfinish: seed-drawer\n"
        "thread_sets:\n"
        "  - {name: rainbarrel, card: rainbarrel, strands: 2}\n"
        "  - {name: spindle, card: spindle, strands: 1}\n"
        f"designers:\n{designers}order:\n{order}"
        "licence: For your own stitching and for gifts. Please do not copy or sell the chart.\n"
        "notices:\n"
        f"  - {{date: 2027-01-15, title: All are out, text: Number {number + 1} of our books is out.}}\n"
    )


def _pattern(folder: str, number: int, designer: str) -> Iterator[tuple[str, str]]:
    random, of, title = Random(f"pattern {number}"), design(number), pattern_title(number)
    shades = random.sample(
        [(h, t) for h in range(_HUES) for t in range(len(_TONES))], len(of.marks)
    )
    key = "".join(
        f'  "{mark}": {{rainbarrel: "{_number(*shade)}", spindle: "{_number(*shade)}"}}\n'
        for mark, shade in zip(of.marks, shades)
    )
    lines = "".join(f'  - {{colour: "{mark}", path: "{path}"}}\n' for mark, path in of.lines)
    cloths = "".join(
        f"  - {{cloth: {name}, colour: {_CLOTHS[name][5]}}}\n"
        for name in random.sample(sorted(_CLOTHS), len(_CLOTHS))
    )
    occasion, day = random.choice(OCCASIONS)
    beads = f'beads:\n  - {{card: rain, number: "1", at: "{of.beads}"}}\n' if of.beads else ""
    mark, places = of.knots
    yield (
        f"{folder}/pattern.yaml",
        f"title: {title}\ndesigner: {designer}\nabout: {title}, drawn where it was found.\n"
        f"photo_alt: Patches of many colours, which make up {title.lower()}.\n"
        f"occasion: {{name: {occasion}, on: {day}}}\n"
        f"cloths:\n{cloths}thread_sets: [rainbarrel, spindle]\nkey:\n{key}backstitch:\n{lines}"
        f'french_knots:\n  - {{colour: "{mark}", at: "{places}"}}\n{beads}'
        "credits: {model_stitcher: Posy Larkrise, finisher: Alban Thornbush}\n"
        f"sold_at:\n  - {{name: The counter by the gate, url: https://{designer}.example.org/{number}}}\n"
        "revisions:\n  - {date: 2026-11-25, note: First issue.}\n",
    )
    yield f"{folder}/chart.txt", "\n".join(of.rows) + "\n"
    yield f"{folder}/story.md", story(random)
    yield f"{folder}/stitching.md", _STITCHING


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("patterns", type=int)
    parser.add_argument("folder", type=Path)
    options = parser.parse_args()
    catalogue(options.patterns, options.folder)
