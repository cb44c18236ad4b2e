"""The reference of all files that are written in YAML, as a page in Markdown."""

import json
import re
from textwrap import indent

from packetgen.load.schema import FileShape
from packetgen.load.shapes import FILES
from packetgen.reference.beyond import BEYOND
from packetgen.reference.codes import OF_ANY_FILE, codes_of
from packetgen.reference.codes_by_field import BY_FIELD
from packetgen.reference.fields import (
    Entry,
    default_text,
    entries,
    limits,
    required_words,
    shape_name,
    type_words,
)

_HEAD = """# Every field of every file

Files that end in `.yaml` are made of lines with a name, a colon and a value. A name such as
`colours[].hex` is the `hex` of each entry of the list `colours`; `key.<name>.stitch` is the `stitch` of
each line of the `key`, whatever you call the line. Under each field stand what may be written, its limits,
what is taken when you leave it out, an example, and the [messages](messages.md) that it can give.

Charts, close-ups, texts, photographs and fonts have [a page of their own](other-files.md).

## Help while you type

Editors that know the JSON Schema of a file offer its names while you type and mark what is wrong. The
schemas lie beside this page in the folder `schemas`; the paths below are those of `build/guide`, where
`packetgen guide` writes them. Many editors take a first line that names the schema, by its path from the
folder where the file lies. It stands below under each kind of file, and is a remark for this tool. Or the
editor is told once for all files, in its settings for YAML, where the folder that is opened in it is the one
that `content` lies in:

{setting}

An editor sees less than `packetgen proof`. It does not see:"""


def reference_page() -> str:
    """The page, from the schema alone."""
    parts = [
        _HEAD.replace("{setting}", _setting()),
        "\n".join(f"- {reason}" for reason, _ in BEYOND),
        "## Messages of any YAML file",
        "A file can be missing, be named wrongly, hold what cannot be read, or have a name in it that does "
        f"not belong there:\n\n{_linked(OF_ANY_FILE)}.",
    ]
    for file in FILES:
        parts += _file(file)
    return "\n\n".join(parts) + "\n"


def schema_path(file: FileShape) -> str:
    """Where the schema lies, from the folder that `content` lies in."""
    return f"build/guide/schemas/{shape_name(file)}.schema.json"


def first_line(file: FileShape) -> str:
    """The remark by which an editor finds the schema of a file in which it stands."""
    up = "../" * (file.path.count("/") + 1)
    return f"# yaml-language-server: $schema={up}{schema_path(file)}"


def files_of(file: FileShape) -> str:
    """All files of the kind, as editors name them: content/threads/*.yaml."""
    return f"content/{re.sub('<[^>]*>', '*', file.path)}"


def _setting() -> str:
    files = {schema_path(file): files_of(file) for file in FILES}
    return indent(f'"yaml.schemas": {json.dumps(files, indent=2)}', "    ")


def anchor(file: FileShape, entry: Entry) -> str:
    """The heading of a field."""
    return f"`{entry.path}` in {file.shape.what}"


def _file(file: FileShape) -> list[str]:
    parts = [
        f"## {_title(file)}",
        f"`{file.path}` — {file.doc} Schema: "
        f"[{shape_name(file)}.schema.json](schemas/{shape_name(file)}.schema.json). "
        f"First line: `{first_line(file)}`.",
    ]
    of_file = BY_FIELD[file.path].get("", ())
    if of_file:
        parts.append(f"Messages about the whole of it: {_linked(of_file)}.")
    return parts + [_field(file, entry) for entry in entries(file)]


def _title(file: FileShape) -> str:
    what = file.shape.what
    return what[0].upper() + what[1:]


def _field(file: FileShape, entry: Entry) -> str:
    field = entry.field
    bounds = "".join(f"; {limit}" for limit in limits(field.kind))
    lines = [f"### {anchor(file, entry)}", "", _safe(field.doc), ""]
    lines.append(f"- *What:* {_safe(type_words(field.kind) + bounds)}")
    lines.append(f"- *Needed:* {_safe(required_words(entry))}")
    if default_text(field):
        lines.append(f"- *Left out:* `{default_text(field)}`")
    lines.append(f"- *Example:* `{_example(entry)}`")
    lines.append(f"- *Messages:* {_linked(codes_of(file, entry))}")
    return "\n".join(lines)


def _example(entry: Entry) -> str:
    field = entry.field
    name = "larkmoss" if field is entry.group.others else field.name
    if field.example.startswith("- "):
        return f"{name}: [{field.example[2:]}]"
    return f"{name}: {field.example}"


def _safe(words: str) -> str:
    """Angle brackets are no markup here."""
    return words.replace("<", "\\<").replace("*", "\\*").replace("_", "\\_").replace("|", "\\|")


def _linked(codes: tuple[str, ...]) -> str:
    return ", ".join(f"[{code}](messages.md#{code})" for code in codes)
