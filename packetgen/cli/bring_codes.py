"""What authors say with --code, and all that cannot be understood of it."""

import re
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from packetgen.bring.written import Codes

_SHOWN = 3
_SEVERAL = re.compile(r"[,;]\s*")  # between codes in one option


def said_codes(given: Sequence[str]) -> tuple[tuple[tuple[str, str], ...], tuple[str, ...]]:
    """Each code with what it is, without blanks round them, and what is wrong with those that say no such thing."""
    parted = [tuple(part.strip() for part in one.rpartition("=")) for one in given]
    wrong = [_wrong(one, *parts) for one, parts in zip(given, parted)]
    return (
        tuple((code, meant) for (code, _, meant), what in zip(parted, wrong) if not what),
        tuple(what for what in wrong if what),
    )


def _wrong(given: str, code: str, sign: str, meant: str) -> str:
    from packetgen.load.words import shown

    several = _SEVERAL.split(given) if _SEVERAL.search(given) else ()
    if several and all(one.count("=") == 1 and not one.strip().startswith("=") for one in several):
        first = " ".join(f"--code {shown(one.strip())}" for one in several[:_SHOWN])
        more = " and so on" if len(several) > _SHOWN else ""
        return f"--code {shown(given)}: each code has a --code of its own: {first}{more}"
    if not (code and sign and meant):
        return f"--code {shown(given)}: write the code, '=' and its thread, for example x=K4"
    return ""


def without_thread(
    said: Sequence[tuple[str, str]], codes: "Codes", card_file: str
) -> Iterator[str]:
    """What is wrong with codes whose thread the card has not."""
    from packetgen.load.references import offered_of
    from packetgen.load.words import shown

    known = {colour.number: colour for colour in codes.card}
    for code, meant in said:
        if codes.meaning(meant) is None and not codes.is_bare(meant):
            yield (
                f"--code {shown(code)}={shown(meant)}: {codes.card_name} has no {shown(meant)!r}; "
                + offered_of(meant, known, card_file)
            )
