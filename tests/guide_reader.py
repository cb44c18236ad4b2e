"""Follows a page of the documentation as its reader does, in a folder of her own.

What a fenced block is follows from its language:

- `sh`: commands, run in their order. One that ends badly is right only where the block below it shows so.
- `text`: what the command above it says; `…` stands for what differs from day to day, or is left out.
- `yaml`, `text`: when the first line is `# in ` and a file, lines of that file. Of a YAML file that is there
  each field takes the place of the field of that name, or goes to the end; another file is these lines.
- no language: folders, drawn; nothing to do.

In a table a command that begins with `packetgen` is one to run.
"""

import re
import shlex
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from unittest.mock import patch

from click.testing import CliRunner, Result

from packetgen.cli import main
from tests.previewing import previewing

_FENCE = re.compile(r"^```(\w*)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
_ROW = re.compile(r"^\| `(packetgen [^`]*)` \|", re.MULTILINE)
_IN = re.compile(r"# in (content/\S+)\n")
_FIELD = re.compile(r"^([\w-]+):")
_SAVE = re.compile(r"(?<!!)\[[^\]]*\]\((pictures/[\w.-]+\.png)\)")
_MENDS = re.compile(
    r"^…?(\d+ things? to mend(?:; nothing was written)?\.|--strict: \d+ piece)", re.MULTILINE
)


@dataclass(frozen=True)
class Block:
    """One thing to do or to see; `line` is where it stands on its page."""

    kind: str
    text: str
    line: int

    @property
    def goes_into(self) -> str:
        named = _IN.match(self.text)
        return named[1] if named and self.kind in ("yaml", "text") else ""

    @property
    def fails(self) -> bool:
        return self.kind == "text" and bool(_MENDS.search(self.text))


def blocks_of(page: str) -> tuple[Block, ...]:
    found = [(match.start(), match[1], match[2]) for match in _FENCE.finditer(page)]
    found += [(match.start(), "sh", f"{match[1]}\n") for match in _ROW.finditer(page)]
    return tuple(
        Block(kind, text, page.count("\n", 0, start) + 1) for start, kind, text in sorted(found)
    )


def to_save(page: str) -> tuple[str, ...]:
    """Pictures that the page tells to save, by their paths in the guide."""
    return tuple(dict.fromkeys(_SAVE.findall(page)))


@dataclass
class Reader:
    """Does what a page says in `folder`, which the process must stand in; `name` is for what goes wrong."""

    folder: Path
    name: str
    said: str = ""
    done: list[str] = field(default_factory=list)  # commands

    def follow(self, page: str) -> "Reader":
        blocks = blocks_of(page)
        for block, after in zip(blocks, [*blocks[1:], Block("", "", 0)], strict=True):
            where = f"{self.name}:{block.line}"
            if block.kind == "sh":
                self.said = "".join(self._run(line, after.fails, where) for line in _lines(block))
            elif block.goes_into:
                self._put(block, where)
            elif block.kind == "text":
                assert as_shown(block.text).fullmatch(f"{self.said.rstrip()}\n"), (
                    f"{where}\n{self.said}"
                )
            elif block.kind:
                raise AssertionError(f"{where}: nobody runs a block of kind {block.kind!r}")
        return self

    def _run(self, line: str, fails: bool, where: str) -> str:
        self.done.append(line)
        if line.startswith(("python3 ", "source ")):
            return ""  # the machine's own set-up, which this test is a part of
        program, *words = shlex.split(line)
        assert program == "packetgen", f"{where}: {line}"
        if words[0] == "preview" and "--help" not in words:
            return self._look(words[1:])
        words, target = words[:-2] if ">" in words else words, words[-1] if ">" in words else ""
        result = _answered(words)
        assert not result.exception or isinstance(result.exception, SystemExit), where
        right = {0, 1} if "--strict" in words else {int(fails)}
        assert result.exit_code in right, f"{where}: {line}\n{result.output}"
        if target:
            (self.folder / target).write_text(result.stdout, "utf-8")
            return result.stderr
        return result.output

    def _look(self, words: list[str]) -> str:
        """One page is asked for, then Ctrl-C. No browser opens."""
        quiet = [word for word in words if word != "--open"]
        with previewing(self.folder / "content", *quiet) as preview:
            preview.out.until(": shown,")
            status, html, _ = preview.get("/")
            assert status == 200 and b"<title>" in html
            assert preview.interrupt() == 0
        return ""

    def _put(self, block: Block, where: str) -> None:
        file = self.folder / block.goes_into
        text = block.text.partition("\n")[2]
        if block.kind == "yaml" and file.exists():
            text = with_fields(file.read_text("utf-8"), text)
        else:
            assert file.parent.is_dir() or block.kind == "yaml", where
            file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")


def _answered(words: list[str]) -> Result:
    """`packetgen begin` alone is on a terminal, where Enter takes whatever is offered."""
    with patch("packetgen.cli.begin._on_terminal", lambda: words == ["begin"]):
        return CliRunner().invoke(main, words, input="\n" * 20, prog_name="packetgen")


def _lines(block: Block) -> Iterator[str]:
    joined = block.text.replace("\\\n", " ")
    for line in joined.splitlines():
        command = line.partition("  #")[0].strip()
        if command and not command.startswith("#"):
            yield command


def as_shown(text: str) -> re.Pattern[str]:
    """What may stand where the page shows `text`: a line `…` is any lines, or none."""
    shown = (
        r"(?:.*\n)*" if line == "…" else ".*".join(map(re.escape, line.split("…"))) + r"\n"
        for line in text.rstrip().splitlines()
    )
    return re.compile("".join(shown))


def with_fields(file: str, lines: str) -> str:
    """The file, with these fields in the place of those of the same name, or at its end."""
    for name, part in _fields(lines):
        old = re.search(rf"^{name}:.*\n(?:(?:#.*\n|\n)*[ -].*\n)*", file, re.MULTILINE)
        if old:
            file = file[: old.start()] + part + file[old.end() :]
        else:
            file = file.rstrip("\n") + "\n\n" + part
    return file


def _fields(lines: str) -> Iterator[tuple[str, str]]:
    parts: list[list[str]] = []
    for line in lines.splitlines(keepends=True):
        if _FIELD.match(line):
            parts.append([])
        parts[-1].append(line)
    for part in parts:
        named = _FIELD.match(part[0])
        assert named
        yield named[1], "".join(part)
