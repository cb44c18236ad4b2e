"""Command lines that are offered to an author, as she can type them where she stands."""

import shlex
from pathlib import Path


def content_words(content_folder: Path) -> str:
    """What a command line that is offered needs for that folder; '' for the usual one."""
    usual = content_folder == Path("content")
    return "" if usual else f" --content {shlex.quote(str(content_folder))}"


def bring_words(content_folder: Path, path: str, headed: bool) -> str:
    """The command that makes a chart and its key of the table `path`, which lies in its pattern's folder;
    `headed` says whether it has headings."""
    file = shlex.quote((content_folder / path).as_posix())
    pattern = shlex.quote(path.split("/")[-2])
    if not file.isprintable():  # nobody can type them
        file, pattern = "FILE", "NAME"
    headings, of = " --headings" * headed, content_words(content_folder)
    return f"packetgen bring {file} --pattern {pattern} --replace{headings}{of}"


def shift_words(columns: int, rows: int) -> str:
    """'--left 2 --up 1' for a shift by so many columns to the right and rows down; '' for none."""
    ways = (columns, "--right", "--left"), (rows, "--down", "--up")
    return " ".join(f"{ahead if by > 0 else back} {abs(by)}" for by, ahead, back in ways if by)
