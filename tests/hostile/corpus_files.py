"""Names, links and files that are not what they seem."""

import os
import stat
from collections.abc import Callable
from pathlib import Path

from tests.content_builder import CHART, FERN, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.hostile.case import Case, safe, told

STORY = f"{FERN}/story.md"
SECRET = "../secret/plan.txt"  # beside the content folder, and not to be read
_AS_FERN = {path: text for path, text in TINY.items() if path.startswith(FERN)}


def _pattern_called(name: str, order: str | None = None) -> dict:
    """The tiny series with its pattern in a folder `name`."""
    files: dict = dict.fromkeys(_AS_FERN)
    files |= {
        path.replace(FERN, f"series/garden-year/{name}"): text for path, text in _AS_FERN.items()
    }
    said = order if order is not None else f'"{name}"'
    return files | {SERIES: ("order: [fern]", f"order: [{said}]")}


def _second_pattern(name: str) -> dict:
    """The tiny series with its pattern a second time, in a folder `name`."""
    files = {
        path.replace(FERN, f"series/garden-year/{name}"): text for path, text in _AS_FERN.items()
    }
    return files | {SERIES: ("order: [fern]", f'order: [fern, "{name}"]')}


def _instead(path: str, make: Callable[[Path], None]) -> Callable[[Path], None]:
    """Takes a file away and puts something else in its place."""

    def prepare(root: Path) -> None:
        file = root / path
        if file.is_file():
            file.unlink()
        make(file)

    return prepare


def _link(path: str, to: str) -> Callable[[Path], None]:
    return _instead(path, lambda file: file.symlink_to(to))


def _link_to_secret(path: str) -> Callable[[Path], None]:
    up = "../" * path.count("/")
    return _link(path, f"{up}{SECRET}")


def _folder_linked(root: Path) -> None:
    """The pattern's folder lies elsewhere."""
    (root / FERN).rename(root.parent / "secret" / "fern")
    (root / FERN).symlink_to("../../../secret/fern")


def _hard_to_list(root: Path) -> None:
    os.mkfifo(root / FERN / "pipe")
    (root / FERN / "nowhere").symlink_to("nothing-here")


_LINKED = (MOSS, FINISH, SERIES, PATTERN, CHART, STORY)
_NAMED_OUTSIDE = (
    "../secret/plan.txt",
    "/etc/passwd",
    "..\\\\plan.txt",
    "a/../../plan.txt",
    "~/x.txt",
)
_OUTSIDE_FONT = ("../../../secret/a.ttf", "/etc/a.ttf", "..\\\\a.ttf", "//example.org/a.ttf")
_REFERENCES = (
    ("card", {SERIES: ("card: moss", "card: ../../etc/passwd")}, f"reference-unknown {SERIES}"),
    ("finish", {SERIES: ("finish: shelf", "finish: ../shelf")}, f"reference-unknown {SERIES}"),
    (
        "designer",
        {PATTERN: ("designer: alder", "designer: ../alder")},
        f"reference-unknown {PATTERN}",
    ),
    (
        "cloth",
        {PATTERN: ("cloth: hopsack-28", "cloth: /etc/passwd")},
        f"reference-unknown {PATTERN}",
    ),
    ("bead card", {PATTERN: ("card: drop", "card: ../beads/drop")}, f"reference-unknown {PATTERN}"),
    (
        "pattern in the order",
        {SERIES: ("[fern]", "[../../../secret]")},
        f"pattern-missing {SERIES}",
    ),
    ("set", {PATTERN: ("[moss, spool]", "[moss, ../spool]")}, f"reference-unknown {PATTERN}"),
)
_RESERVED = ("con", "prn", "aux", "nul", "com1", "lpt9")

CASES: tuple[Case, ...] = (
    *(
        told(
            f"a link out of the folder for {path}",
            {},
            f"outside-folder {path}",
            prepare=_link_to_secret(path),
        )
        for path in _LINKED
    ),
    *(
        told(
            f"a chart named {name}",
            {PATTERN: TINY[PATTERN] + f'chart: "{name}"\n'},
            f"outside-folder {PATTERN}",
        )
        for name in _NAMED_OUTSIDE
    ),
    *(
        told(
            f"a face named {name}",
            {SERIES: TINY[SERIES] + f'look: {{heading: "{name}"}}\n'},
            f"outside-folder {SERIES}",
        )
        for name in _OUTSIDE_FONT
    ),
    *(told(f"a path for the {what}", changes, says) for what, changes, says in _REFERENCES),
    *(
        told(
            f"a pattern called {name}",
            _pattern_called(name),
            f"file-name-kept series/garden-year/{name}",
        )
        for name in _RESERVED
    ),
    told(
        "a thread card called nul",
        {"threads/nul.yaml": TINY[MOSS]},
        "file-name-kept threads/nul.yaml",
    ),
    told(
        "a series called aux",
        {
            path.replace("garden-year", "aux"): text
            for path, text in TINY.items()
            if "garden-year" in path
        },
        "file-name-kept series/aux",
    ),
    told(
        "a name of a hundred letters",
        _pattern_called("a" * 100),
        "file-name-long series/garden-year/aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
    ),
    told(
        "names that differ by a capital letter",
        _second_pattern("Fern"),
        "file-name series/garden-year/Fern",
        f"names-alike {FERN}",
    ),
    told(
        "names that differ by how an accent is written",
        _second_pattern("fe\u0301rn") | {"series/garden-year/f\u00e9rn/story.md": "a"},
        "file-name series/garden-year/férn",
        "names-alike series/garden-year/férn",
    ),
    told(
        "files that differ by a capital letter",
        {f"{FERN}/Story.md": "Other.\n"},
        f"names-alike {STORY}",
    ),
    told(
        "cards that differ by a capital letter",
        {"threads/Moss.yaml": TINY[MOSS]},
        "file-name threads/Moss.yaml",
        f"names-alike {MOSS}",
    ),
    told("a name with a line break", {f"{FERN}/a\nb.md": "a"}, f"file-name {FERN}"),
    told(
        "a name with a colour of the terminal", {f"{FERN}/\x1b[31mred.md": "a"}, f"file-name {FERN}"
    ),
    told("a name that turns the writing", {f"{FERN}/\u202egpj.md": "a"}, f"file-name {FERN}"),
    told("a name with a backslash", {f"{FERN}/a\\x.md": "a"}, f"file-name {FERN}"),
    told(
        "a pattern folder of two dots and more",
        _pattern_called("...x"),
        f"pattern-missing {SERIES}",
    ),
    told(
        "a pattern folder with a space",
        _pattern_called("a fern"),
        "file-name series/garden-year/a fern",
    ),
    told("a pattern folder that ends in a dot", _pattern_called("fern."), f"file-name {FERN}."),
    told(
        "a pattern folder that is a command",
        _pattern_called("-rf"),
        "file-name series/garden-year/-rf",
    ),
    told(
        "a pattern folder of a mark",
        _pattern_called("<script>"),
        "file-name series/garden-year/<script>",
    ),
    told(
        "a pattern folder with a per cent sign",
        _pattern_called("fern%2e%2e"),
        f"file-name {FERN}%2e%2e",
    ),
    told("a pattern folder with a colon", _pattern_called("fern:a"), f"file-name {FERN}:a"),
    told(
        "a link that goes round", {}, f"file-unreadable {STORY}", prepare=_link(STORY, "story.md")
    ),
    told("a link to nothing", {}, f"file-missing {STORY}", prepare=_link(STORY, "not-there.md")),
    told("a link to a device", {}, f"outside-folder {STORY}", prepare=_link(STORY, "/dev/zero")),
    told(
        "a chart that is a device",
        {},
        f"outside-folder {CHART}",
        prepare=_link(CHART, "/dev/random"),
    ),
    told(
        "a card that is a pipe",
        {},
        f"file-unreadable {MOSS}",
        prepare=_instead(MOSS, lambda file: os.mkfifo(file)),
    ),
    told(
        "a story that is a pipe",
        {},
        f"file-unreadable {STORY}",
        prepare=_instead(STORY, lambda file: os.mkfifo(file)),
    ),
    told(
        "a photo that is a pipe",
        {},
        f"file-unreadable {FERN}/photo.jpg",
        prepare=_instead(f"{FERN}/photo.jpg", lambda file: os.mkfifo(file)),
    ),
    told(
        "a story that is a folder",
        {},
        f"file-unreadable {STORY}",
        prepare=_instead(STORY, Path.mkdir),
    ),
    told(
        "a chart that is a folder", {}, f"file-missing {CHART}", prepare=_instead(CHART, Path.mkdir)
    ),
    told(
        "a pattern.yaml that is a folder",
        {},
        f"file-unreadable {PATTERN}",
        prepare=_instead(PATTERN, Path.mkdir),
    ),
    told(
        "a folder of a pattern that is a file",
        dict.fromkeys(_AS_FERN) | {FERN: "a fern"},
        f"pattern-missing {SERIES}",
    ),
    told(
        "a folder of threads that is a file",
        {path: None for path in TINY if path.startswith("threads/")} | {"threads": "a"},
        f"reference-unknown {SERIES}",
    ),
    told(
        "a pattern's folder elsewhere",
        {},
        *(
            f"outside-folder {FERN}/{name}"
            for name in ("pattern.yaml", "chart.txt", "story.md", "stitching.md")
        ),
        prepare=_folder_linked,
    ),
    safe("a pipe and a broken link that nobody reads", {}, prepare=_hard_to_list),
    safe("a link to a file in the folder", {}, prepare=_link(STORY, "stitching.md")),
    told(
        "a text of a hundred megabytes",
        {},
        f"file-too-big {STORY}",
        prepare=_instead(STORY, lambda file: _long(file, 100)),
    ),
    told(
        "a card of a hundred megabytes",
        {},
        f"file-too-big {MOSS}",
        prepare=_instead(MOSS, lambda file: _long(file, 100)),
        heavy=True,
    ),
    told(
        "a chart of a hundred megabytes",
        {},
        f"file-too-big {CHART}",
        prepare=_instead(CHART, lambda file: _long(file, 100)),
        heavy=True,
    ),
    told(
        "a photo of a hundred megabytes",
        {},
        f"file-too-big {FERN}/photo.jpg",
        prepare=_instead(f"{FERN}/photo.jpg", lambda file: _long(file, 100)),
        heavy=True,
    ),
    safe(
        "ten thousand files that nobody reads",
        {},
        prepare=lambda root: _many(root / FERN, 10_000),
        heavy=True,
    ),
)


def _long(file: Path, megabytes: int) -> None:
    """A file of that size which takes no room on the disk."""
    with file.open("wb") as stream:
        stream.truncate(megabytes * 1_000_000)
    assert stat.S_ISREG(file.stat().st_mode)


def _many(folder: Path, number: int) -> None:
    for count in range(number):
        (folder / f"left-over-{count}.bak").touch()
