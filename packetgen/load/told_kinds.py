"""Kinds of stitches that an author's notes speak of, beside those that the pattern has."""

import re
from collections.abc import Collection

from packetgen.diagnostics import Problems, place_in
from packetgen.load.prose_words import SENTENCE
from packetgen.load.words import said

# What lies on a chart, by its name in pattern.yaml → what people call it.
_CALLED = {
    # 'Outline the wings … with one strand' is backstitch, whatever it is called.
    "backstitch": r"(?:back[ -]?stitch(?:es|ed|ing)?|outlined?(?=\s[^.;]{0,80}\b(?:one|1)\s+strand))",
    "lazy_daisies": r"lazy dais(?:y|ies)",
    "french_knots": r"french knots?",
    "beads": r"beads?(?!\s+of\s+(?:water|rain|dew|light|sap|resin|sweat|honey|ice)\b)",
}
# In notes, plain words for them, where they are spoken of as work.
_PLAINLY = {
    "backstitch": r"the\s+(?:out)?lines",
    "french_knots": r"the\s+knots",
}
_AS_WORK = r"(?=\s+(?:until|come|last\b|are\s+(?:worked|stitched|done|made)|take|with\s+(?:one|two|1|2)\b|at\s+the\s+end))"
_NO_KIND = ("beads",)  # of a story: those may be of dew
_HALF = r"half[ -](?:cross(?:es)?|stitch(?:es)?)"
_WITHOUT = re.compile(
    r"\b(?:no|not|never|nor|neither|without|instead|if|may|might|could|can|like)\b|n't\b",
    re.IGNORECASE,
)


def complain_of_told_kinds(
    text: str, path: str, on_chart: Collection[str], halves: bool, problems: Problems
) -> None:
    """Advice on the first 'French knot' of story or notes to a pattern that has none; `halves`: whether its key has half
    stitches. What an author may do, or need not, is let be; lines may be told of as long stitches."""
    kinds = _CALLED | ({} if halves else {"stitch: half": _HALF})
    for name, called in kinds.items():
        if name in on_chart or (name == "backstitch" and "long_stitch" in on_chart):
            continue
        if name in _NO_KIND and path.endswith("story.md"):
            continue
        if name in _PLAINLY and not path.endswith("story.md"):
            called = rf"(?:{called}|{_PLAINLY[name]}{_AS_WORK})"
        for sentence in SENTENCE.finditer(text):
            found = re.search(rf"\b{called}\b", sentence[0], re.IGNORECASE)
            if found and not _WITHOUT.search(sentence[0]):
                facts = {"said": said(found[0]), "name": said(name)}
                place = place_in(text, sentence.start() + found.start(), path)
                problems.add(place, "kind-told-none", **facts)
                break
