"""What the PDF engine complains of, in words for whoever wrote the template: file, line, what would be right.

The engine reads a page that has been filled in, and knows no templates. Where it gives a line of the page's
style sheet, the same line is looked for in the templates; else what it quotes is.
"""

import re
from collections.abc import Iterator, Mapping

from jinja2 import Environment

# What the engine says, what is wrong and would be right, and how the cause looks in a template; names are
# those of the groups, and without a cause the whole page is to blame.
_DECLARED, _QUOTED = r"(?<![\w-]){name}\s*:\s*{value}", "{quoted}"
_WORDS: tuple[tuple[str, str, str], ...] = (
    (
        r"(?:Ignored|Deprecated) `(?P<quoted>.*?)` at .*?, (?P<why>.*)",
        "the PDF engine passes over '{quoted}', {why}; correct it or leave it out",
        _DECLARED,
    ),
    (
        r"Invalid or unsupported selector, '(?P<quoted>.*?)'(?P<why>.*)",
        "the PDF engine knows no selector '{quoted}'{why}; write it in another way",
        _QUOTED,
    ),
    (
        r"Unknown (?:empty|@page) rule <AtRule (?P<quoted>@[\w-]+) .*",
        "the PDF engine knows no '{quoted}' there; correct it or leave it out",
        _QUOTED,
    ),
    (
        r"(?:Parse error|Error:) (?P<why>.*) at [\d:]+|Parse error at [\d:]+: (?P<reason>.*)",
        "this is no CSS: {why}{reason}; look for a bracket, colon or semicolon that is missing",
        "",
    ),
    (
        r'\.notdef glyph .*: "(?P<quoted>.)" \((?P<code>U\+\w+)\)',
        "the type of the packet has no '{quoted}' ({code}); write it in letters that it has",
        _QUOTED,
    ),
    (
        r"(?:a packet may not fetch|Failed to load \w+ at) '(?P<quoted>[^']*)'.*",
        "there is no '{quoted}' for a packet; name only what the project's own templates name, as 'asset:…'",
        _QUOTED,
    ),
    (
        r'Image "(?P<quoted>.*)" has no required alt description',
        "the picture '{quoted}' has no words for who cannot see it; give it alt=\"…\"",
        r"<img(?![^>]*\salt=)[^>]*{quoted}",
    ),
    (
        r"No anchor #(?P<quoted>.*) for internal URI reference",
        "a link leads to '#{quoted}', which is nowhere; give that id to an element",
        "#{quoted}",
    ),
    (
        r"Anchor defined twice: '(?P<quoted>.*)'",
        "the id '{quoted}' is given twice; an id names one element",
        r"id=[\"']{quoted}[\"']",
    ),
    (
        r'Missing required "lang" attribute.*',
        "the page does not say its language; begin it with <html lang=\"en-GB\">",
        "",
    ),
    (
        r'Invalid date in <meta name="(?P<quoted>.*?)"> (?P<why>.*)',
        "'{quoted}' is no date: {why}; write it as 2026-11-25",
        _QUOTED,
    ),
)  # fmt: skip
_LINE = re.compile(r"\bat (\d+):(\d+)")


def told(complaint: str, page: str, main: str, templates: Mapping[str, str]) -> str:
    """One complaint of the engine as a located line, or in its own words where it is like none that we know.

    `page` is what the engine was given, `main` the template that it was filled from, `templates` the
    sources of all templates by name, as they were used.
    """
    words, cause = _in_words(complaint)
    spots = [*_lines_of_style(complaint, cause, page, templates), *_looking_so(cause, templates)]
    if not words:
        if not spots:
            return complaint
        words = f"the PDF engine says: {complaint.rstrip('.')}; correct it or leave it out"
    name, line, column = spots[0] if spots else (main, 1, 1)
    return f"templates/{name}:{line}:{column}: {words}"


def sources(env: Environment) -> dict[str, str]:
    """The templates as they are used, by name, those of packets first."""
    names = sorted(env.list_templates(), key=lambda name: not name.startswith("packet/"))
    return {name: env.loader.get_source(env, name)[0] for name in names} if env.loader else {}


def _in_words(complaint: str) -> tuple[str, str]:
    """The complaint for an author, and how its cause looks in a template, as a regular expression."""
    for pattern, words, cause in _WORDS:
        if found := re.fullmatch(pattern, complaint, re.DOTALL):
            said = {key: (value or "").strip(" .\n") for key, value in found.groupdict().items()}
            name, _, value = said.get("quoted", "").partition(":")
            parts = said | {"name": name, "value": value.strip()}
            looks = cause.format(**{key: re.escape(part) for key, part in parts.items()})
            return words.format(**said), looks
    return "", ""


def _lines_of_style(
    complaint: str, cause: str, page: str, templates: Mapping[str, str]
) -> Iterator[tuple[str, int, int]]:
    """The places in templates whose line is the one that the engine means of a style sheet of the page."""
    if not (at := _LINE.search(complaint)):
        return
    number, column = map(int, at.groups())
    for sheet in re.findall(r"<style[^>]*>(.*?)</style>", page, re.DOTALL):
        lines = sheet.split("\n")
        meant = lines[number - 1] if number <= len(lines) else ""
        if not meant.strip() or not re.search(cause, meant):
            continue
        for name, source in templates.items():
            written = source.split("\n")
            if meant in written:
                yield name, written.index(meant) + 1, column


def _looking_so(cause: str, templates: Mapping[str, str]) -> Iterator[tuple[str, int, int]]:
    """The places in templates that look like the cause."""
    for name, source in templates.items() if cause else ():
        if found := re.search(cause, source):
            before = source[: found.start()]
            yield name, before.count("\n") + 1, found.start() - before.rfind("\n")
