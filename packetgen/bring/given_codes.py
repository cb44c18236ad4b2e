"""What an author says of codes that cannot be said of one: of several at once, or of a thread instead of a code."""

import re
import shlex
from collections.abc import Collection, Iterator, Sequence

from packetgen.bring.codes import Codes
from packetgen.diagnostics import Place, Problems
from packetgen.load.words import shown

_OPTIONS = 60  # letters, in a line that says more


def complain_of_given(
    codes: Codes, met: Collection[str], path: str, problems: Problems
) -> Iterator[tuple[tuple[str, str], tuple[tuple[str, str], ...]]]:
    """Report what is said of several codes at once, or of a thread instead of a code; each with the codes that
    are meant. `met` are the codes of the file."""
    for code, meant in dict.fromkeys(codes.given):
        if code in met:
            continue
        what = shown(f"{code}={meant}")
        if meant in met and codes.is_thread(code) and not codes.is_thread(meant):
            turned = ((meant, code),)
            problems.add(Place(path), "bring-code-turned", what=what, words=options(turned))
            yield (code, meant), turned
        elif parts := _said_together(code, meant):
            problems.add(Place(path), "bring-codes-together", what=what, words=options(parts))
            yield (code, meant), parts


def _said_together(code: str, meant: str) -> tuple[tuple[str, str], ...]:
    """The codes, each with what it is, of which one option says several: 'a=1,b=2' or 'a=1 b=2', parted at its
    last '='. None where it looks like one code, or could not be typed."""
    whole = f"{code}={meant}"
    if not whole.isprintable():
        return ()
    for between in (r"[,;]", r"\s+"):
        parts = [part.partition("=") for part in re.split(between, whole)]
        each = tuple((one.strip(), said.strip()) for one, _, said in parts)
        if len(each) > 1 and all(one and said and "=" not in said for one, said in each):
            return each
    return ()


def options(parts: Sequence[tuple[str, str]]) -> str:
    """A --code for each, as they are typed; the first of them where they are too long for a line."""
    words = [f"--code {shlex.quote(f'{code}={meant}')}" for code, meant in parts]
    fit = next((n for n in range(len(words), 1, -1) if len(" ".join(words[:n])) <= _OPTIONS), 1)
    return " ".join(words[:fit]) + " …" * (fit < len(words))
