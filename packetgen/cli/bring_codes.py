"""What authors say with --code, and all that cannot be understood of it."""

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from packetgen.bring.codes import Codes


def said_codes(given: Sequence[str]) -> tuple[tuple[tuple[str, str], ...], tuple[str, ...]]:
    """Each code with what it is, without the blanks round both, and what is wrong with those that say no such
    thing."""
    from packetgen.load.words import shown

    parted = [
        (_without_blanks(code), sign, meant.strip())
        for code, sign, meant in (one.rpartition("=") for one in given)
    ]
    whole = [bool(code and sign and meant) for code, sign, meant in parted]
    return (
        tuple((code, meant) for (code, _, meant), right in zip(parted, whole) if right),
        tuple(
            f"--code {shown(one)}: write the code, '=' and its thread, for example x=K4"
            for one, right in zip(given, whole)
            if not right
        ),
    )


def _without_blanks(code: str) -> str:
    """The code alone; one that is itself a blank, as of another width, stays."""
    return code.strip() or code.strip(" ") or code


def without_thread(
    said: Sequence[tuple[str, str]], codes: "Codes", card_file: str
) -> Iterator[str]:
    """What is wrong with codes whose thread the card has not."""
    from packetgen.load.references import offered_of
    from packetgen.load.words import shown

    known = {colour.number: colour for colour in codes.card}
    for code, meant in said:
        if not codes.is_thread(meant):
            yield (
                f"--code {shown(code)}={shown(meant)}: {codes.card_name} has no {shown(meant)!r}; "
                + offered_of(meant, known, card_file)
            )
