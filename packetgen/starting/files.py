"""The files that a new series or a new pattern begins with, from answers that can stand in them."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from packetgen.cautions import CAUTIONS
from packetgen.chart_edit.pattern_text import order_text
from packetgen.chart_edit.yaml_text import quoted
from packetgen.colour import difference, lab
from packetgen.diagnostics import Problems
from packetgen.load.characters import checked_text
from packetgen.load.shape_pattern import KEY_LINE
from packetgen.load.yaml_nodes import GroupNode, read_nodes
from packetgen.model import (
    BEFORE_RELEASE,
    BY_DAY,
    BY_NIGHT,
    EDITION_NAMES,
    GENERIC_FINISHES,
    GIVEN_AWAY,
    NOTICE_KINDS,
    ORNAMENTS,
    PAINTED_FACES,
    Assumptions,
    Colour,
    Pace,
    Sells,
    Stitch,
    Weave,
)
from packetgen.render.templates import environment, fill
from packetgen.starting.around import Around
from packetgen.starting.board import board_for
from packetgen.starting.names import folder_name
from packetgen.starting.sprig import MARKS, marks_beside, sprig
from packetgen.units import plain

Files = Mapping[str, str]  # path below the content folder, with forward slashes → text

PIECE, BEADS, AIDA, EVENWEAVE = "plant-label", "example-beads", "aida-14", "evenweave-28"
_AIDA_COUNT = 14
# What the marks of the sprig are stitched with, in the order of MARKS.
_SPRIG_COLOURS = ("#4c7a3f", "#8a5a3b", "#b8323c", "#2f4f2c")
# Of the thread card that is written as an example: invented, like their numbers.
_CARD = (
    Colour("01", "example milk", "#f6f1e4"),
    Colour("02", "example primrose", "#f0dc7d"),
    Colour("03", "example foxglove", "#c86a97"),
    Colour("04", "example ripe currant", "#b8323c"),
    Colour("05", "example rain butt", "#6d8aa3"),
    Colour("06", "example bean leaf", "#4c7a3f"),
    Colour("07", "example yew", "#2f4f2c"),
    Colour("08", "example flowerpot", "#8a5a3b"),
    Colour("09", "example wet slate", "#3d4347"),
)


@dataclass(frozen=True)
class NewPattern:
    """What is asked about a pattern. Sizes in stitches; `release` is '' where it is that of the series."""

    folder: str
    title: str
    wide: int
    high: int
    issued: str  # the day of its first issue, when it comes out: '2027-05-01'
    release: str = ""


@dataclass(frozen=True)
class NewSeries:
    """What is asked about a series besides its first pattern."""

    folder: str
    title: str
    release: str  # '2027-05-01', or '2027-05-01 09:00 Europe/London'
    designer: str  # her name
    threads: str  # the name of her thread card
    face: str = ""  # the file of a face for its text, which stands beside series.yaml


def series_files(new: NewSeries, pattern: NewPattern) -> Files:
    """A whole content folder: the series, its first pattern, and what the two need. Raises TemplateFault."""
    card_id = folder_name(new.threads) or "my-threads"
    reserved = [field.name for field in KEY_LINE.fields]
    around = Around(
        designer_id=folder_name(new.designer) or "designer",
        designer=new.designer,
        set_id=f"{card_id}-thread" if card_id in reserved else card_id,
        card_id=card_id,
        colours=_CARD,
        cloths=((AIDA, "white", None), (EVENWEAVE, "oat", None)),
        finer=(EVENWEAVE, "oat"),
        beads=(BEADS, "01"),
    )
    folder, piece = f"series/{new.folder}", pieces_folder()
    plans = {
        f"{folder}/series.yaml": "series.yaml",
        f"{folder}/welcome.md": "welcome.md",
        f"threads/{card_id}.yaml": "threads.yaml",
        f"cloths/{AIDA}.yaml": "aida.yaml",
        f"cloths/{EVENWEAVE}.yaml": "evenweave.yaml",
        f"beads/{BEADS}.yaml": "beads.yaml",
        f"{piece}/finish.yaml": "finish.yaml",
        f"{piece}/steps.md": "steps.md",
    }
    facts = {
        "series": new,
        "pattern": pattern,
        "around": around,
        "aida_count": _AIDA_COUNT,
        "board": board_for(pattern.wide, pattern.high, _AIDA_COUNT),
    }
    return {
        **_filled(plans, facts),
        **pattern_files(folder, pattern, around),
    }


def pattern_files(series_folder: str, new: NewPattern, around: Around) -> Files:
    """The folder of a pattern in a series. Raises TemplateFault."""
    folder = f"{series_folder}/{new.folder}"
    marks = MARKS[: len(around.colours)]
    threads = dict(zip(marks, _nearest(_SPRIG_COLOURS[: len(marks)], around.colours)))
    names = ("pattern.yaml", "chart.txt", "story.md", "stitching.md")
    last, second = marks_beside(marks)
    facts = {
        "pattern": new,
        "around": around,
        "threads": threads,
        "first": marks[0],
        "second": second,
        "last": last,
        "sprig": sprig(new.wide, new.high, marks),
    }
    return _filled({f"{folder}/{name}": name for name in names}, facts)


def pieces_folder() -> str:
    """Where the example of a finishing piece goes."""
    return f"finishes/{PIECE}"


def entered(series_yaml: bytes, path: str, after: str, new: str) -> bytes:
    """series.yaml with the pattern `new` in its order after `after`, all else to the byte as it was."""
    text = checked_text(series_yaml, path, Problems())
    root = None if text is None else read_nodes(text, path, Problems())
    if text is None or not isinstance(root, GroupNode):
        return series_yaml
    ends = "\r\n" if b"\r\n" in series_yaml else "\n"
    mark = b"\xef\xbb\xbf" if series_yaml.startswith(b"\xef\xbb\xbf") else b""
    return mark + order_text(text, root, after, new).replace("\n", ends).encode()


def _nearest(wanted: Iterable[str], colours: Iterable[Colour]) -> list[Colour]:
    """For each wanted colour the nearest that is not taken yet (CIEDE2000)."""
    free, taken = list(colours), []
    for one in wanted:
        near = min(free, key=lambda colour: difference(lab(one), lab(colour.hex)))
        free.remove(near)
        taken.append(near)
    return taken


def _filled(plans: Mapping[str, str], facts: Mapping[str, object]) -> Files:
    """Path → the template of that name, filled. What fields may hold comes from the tables that are
    read by: no remark can tell otherwise."""
    env = environment()
    env.finalize = None  # what an author writes stays as it is
    choices = {
        "yaml": _as_yaml,
        "number": lambda number: quoted(number) if number[:1].isdigit() else _as_yaml(number),
        "reckoning": _reckoning(Assumptions()),
        "pace": _pace(Pace()),
        "by_day": BY_DAY,
        "by_night": BY_NIGHT,
        "weaves": _listed(weave.value for weave in Weave),
        "sells": _listed(sells.value for sells in Sells),
        "before_release": _listed(BEFORE_RELEASE),
        "ornaments": _listed(ORNAMENTS),
        "notice_kinds": _listed(NOTICE_KINDS),
        "faces": _listed(PAINTED_FACES),
        "stitches": _listed(stitch.value for stitch in Stitch),
        "cautions": _listed(CAUTIONS),
        "editions": ", ".join(EDITION_NAMES),
        "finishes": ", ".join(GENERIC_FINISHES),
        "given_away": ", ".join(GIVEN_AWAY),
    }
    return {
        path: fill(env, f"begin/{name}", **choices, **facts).strip() + "\n"
        for path, name in plans.items()
    }


def _as_yaml(text: str) -> str:
    """`text` as a value: plain where nothing in it could be taken for a sign of YAML's own."""
    return text if re.fullmatch(r"\w[\w '’-]*", text) and text == text.strip() else quoted(text)


def _reckoning(usual: Assumptions) -> str:
    ease = {name: f"{plain(round(100 * share, 2))} %" for name, share in vars(usual.ease).items()}
    return _group(
        {
            "needleful": f"{plain(usual.needleful_mm / 10)} cm",
            "tail": f"{plain(usual.tail_mm / 10)} cm",
            "travel": str(usual.travel_stitches),
            "ease": _group(ease),
        }
    )


def _pace(usual: Pace) -> str:
    return _group({name: plain(stitches) for name, stitches in vars(usual).items()})


def _group(values: Mapping[str, str]) -> str:
    return f"{{{', '.join(f'{name}: {value}' for name, value in values.items())}}}"


def _listed(words: Iterable[str]) -> str:
    return ", ".join(words)
