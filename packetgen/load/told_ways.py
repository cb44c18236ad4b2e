"""The kind of trim, and what brushes are cleaned with, that steps tell otherwise than the piece has them."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Paint
from packetgen.nouns import listed

# How people call a trim → its kind.
_KINDS = {
    "straight": "straight",
    "flat": "straight",
    "round": "round",
    "twisted": "round",
    "gathered": "gathered",
    "ruffled": "gathered",
    "pleated": "gathered",
}
_TRIM = re.compile(rf"\b(?P<kind>{'|'.join(_KINDS)})\s+trim\b", re.IGNORECASE)
_SOLVENTS = r"white\s+spirit|turpentine|turps|mineral\s+spirits|thinners?|solvent"
_CLEANED = re.compile(
    rf"\b(?:clean|wash|rinse)(?:ed|es|ing)?\b[^.!?]{{0,30}}\bbrush(?:es)?\b[^.!?]{{0,30}}?\b(?:in|with)\s+"
    rf"(?:\w+\s+)?(?P<with>water|{_SOLVENTS})\b",
    re.IGNORECASE,
)


def complain_of_told_trim(trim: Filled | None, steps: str, path: str, problems: Problems) -> None:
    """Advice on 'straight trim' where it is gathered."""
    found = _TRIM.search(steps)
    if (
        found
        and trim is not None
        and trim["kind"]
        and _KINDS[found["kind"].casefold()] != trim["kind"]
    ):
        facts = {"said": said(found[0]), "own": said(trim["kind"])}
        problems.add(place_in(steps, found.start(), path), "trim-told-other", **facts)


def complain_of_told_cleaning(
    paints: Sequence[Paint], steps: str, path: str, problems: Problems
) -> None:
    """Advice on brushes washed in water where every paint wants solvent, and the other way about."""
    found = _CLEANED.search(steps)
    if found and paints:
        meant = "water" if found["with"].casefold() == "water" else "solvent"
        if meant not in {paint.cleaned_with for paint in paints}:
            own = listed(tuple(dict.fromkeys(said(paint.cleaned_with) for paint in paints)))
            facts = {"said": said(found[0]), "own": own}
            problems.add(place_in(steps, found.start(), path), "step-cleans-other", **facts)
