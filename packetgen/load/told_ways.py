"""The trim, and what brushes are cleaned with, that steps tell otherwise than the piece has them."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Paint
from packetgen.nouns import listed

# How people call a trim, or what they do to it → its kind.
_KINDS = {
    "straight": "straight",
    "flat": "straight",
    "round": "round",
    "twisted": "round",
    "gathered": "gathered",
    "ruffled": "gathered",
    "pleated": "gathered",
    "gather": "gathered",
    "ruffle": "gathered",
    "pleat": "gathered",
}
MOUNTED = re.compile(r"\bwadding\b", re.IGNORECASE)  # where mounting is told of, in English
# The noun: 'trim the cloth' is none.
_NAMED = re.compile(
    r"\b(?:the|a|your|its|this|of)\s+(?P<trim>trim)\b(?!\s+(?:the|it|off|away|to|cloth|fabric|card|size))",
    re.IGNORECASE,
)
_TRIM = re.compile(rf"\b(?P<kind>{'|'.join(_KINDS)})\s+(?:(?:the|your)\s+)?trim\b", re.IGNORECASE)
# What is sewn round an edge under another name, and its kind.
_CALLED = {
    "cord": "round",
    "piping": "round",
    "braid": "straight",
    "frill": "gathered",
    "ruffle": "gathered",
}
_SEWN_ROUND = re.compile(
    rf"\b(?:pin|stitch|sew|slip-stitch|lay|run)\s+(?:the|a|your)\s+(?:\w+\s+)?(?P<trim>{'|'.join(_CALLED)})\s+(?:all\s+)?round\b",
    re.IGNORECASE,
)
# As nouns: 'lace the cloth to the back' is none.
_SEWN_ON = re.compile(
    r"\b(?:trims?|(?:cord|braid|ribbon|piping|frill|ruffle|edging)s?|(?:the|a|your|of)\s+lace)\b",
    re.IGNORECASE,
)
_SOLVENTS = r"white\s+spirit|turpentine|turps|mineral\s+spirits|thinners?|solvent"
_CLEANED = re.compile(
    rf"\b(?:clean|wash|rinse)(?:ed|es|ing)?\b[^.!?]{{0,30}}\bbrush(?:es)?\b[^.!?]{{0,30}}?\b(?:in|with)\s+"
    rf"(?:\w+\s+)?(?P<with>water|{_SOLVENTS})\b",
    re.IGNORECASE,
)


def _trim_called(name: str) -> str:
    """What finish.yaml would have for a trim that is called so."""
    kind = _CALLED.get(name.casefold(), "straight")
    ratio = "ratio: 1.5, " * (kind == "gathered")
    return f"{{kind: {kind}, {ratio}overlap: 20 mm, width: {3 if kind == 'round' else 6} mm}}"


def complain_of_told_trim(trim: Filled | None, steps: str, path: str, problems: Problems) -> None:
    """Advice on 'straight trim' where it is gathered, on 'gather the trim' where it is not, and on a cord that is."""
    found = _TRIM.search(steps)
    if (
        found
        and trim is not None
        and trim["kind"]
        and _KINDS[found["kind"].casefold()] != trim["kind"]
    ):
        facts = {"said": said(found[0]), "own": said(trim["kind"])}
        problems.add(place_in(steps, found.start(), path), "trim-told-other", **facts)
        return
    sewn = _SEWN_ROUND.search(steps)
    if sewn and trim is not None and trim["kind"] not in (None, _CALLED[sewn["trim"].casefold()]):
        facts = {"said": said(sewn["trim"]), "own": said(trim["kind"])}
        problems.add(place_in(steps, sewn.start("trim"), path), "trim-told-other", **facts)


def complain_of_no_trim(steps: str, path: str, problems: Problems) -> None:
    """Advice where the steps sew on a trim, and the piece has none."""
    if found := _NAMED.search(steps) or _SEWN_ROUND.search(steps):
        facts = {"said": said(found["trim"]), "entry": _trim_called(found["trim"])}
        problems.add(place_in(steps, found.start("trim"), path), "trim-none", **facts)


def complain_of_unsewn_trim(steps: str, path: str, problems: Problems) -> None:
    """Advice where the steps tell of mounting, and not of the trim that a stitcher is told to buy."""
    mounted = MOUNTED.search(steps)
    if mounted and not _SEWN_ON.search(steps):
        problems.add(place_in(steps, mounted.start(), path), "trim-unsaid")


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
