"""Steps that the steps themselves name by their number, beside those that there are; and those that stand there twice."""

import re
from itertools import pairwise

from packetgen.diagnostics import Place, Problems, place_in
from packetgen.load.prose_words import words_of_entry
from packetgen.load.words import said

_NAMED = re.compile(r"\bsteps?\s+(?P<number>\d{1,2})\b", re.IGNORECASE)
_ENTRY = re.compile(r"^ {0,3}(\d{1,2})[.)][ \t]+\S", re.MULTILINE)
# What stands below one heading.
_LISTS = re.compile(r"(?:^(?!#).*\n?)+", re.MULTILINE)
_A_STEP = 5  # words of a step that nobody writes twice: our own choice


def complain_of_step_twice(steps: str, path: str, problems: Problems) -> None:
    """Advice on the first step that stands there a second time, word for word."""
    seen: dict[str, int] = {}
    for row, line in enumerate(steps.split("\n"), 1):
        words = words_of_entry(line)
        first = seen.setdefault(" ".join(words), row)
        if first != row and len(words) >= _A_STEP:
            problems.add(Place(path, row), "step-twice", line=first)
            return


def complain_of_mixed_steps(text: str, path: str, problems: Problems) -> None:
    """Advice on the first step of each list whose number does not follow the one before it: all are counted anew in print."""
    for part in _LISTS.finditer(text):
        entries = list(_ENTRY.finditer(part[0]))
        numbers = [int(entry[1]) for entry in entries]
        for printed, (before, own) in enumerate(pairwise(numbers), 2):
            new_list = own == 1 and 1 in numbers[: printed - 1]
            if new_list or own in (before, before + 1):  # an entry put in, or one after the other
                continue
            lost = own > before and not any(before < one < own for one in numbers[printed:])
            mend = "put back what stood between them" if lost else "put them in order"
            facts = {"own": own, "before": before, "printed": printed, "mend": mend}
            place = place_in(text, part.start() + entries[printed - 1].start(1), path)
            problems.add(place, "step-order-mixed", **facts)
            break


def complain_of_told_steps(steps: str, path: str, problems: Problems) -> None:
    """Advice where a text names a step by a number that none of its lists reaches."""
    numbers = [int(entry[1]) for entry in _ENTRY.finditer(steps)]
    if not numbers:
        return
    # Who writes '1.' before each leaves the counting to the page.
    last = len(numbers) if len(set(numbers)) == 1 else max(numbers)
    for named in _NAMED.finditer(steps):
        if int(named["number"]) > last:
            facts = {"said": said(named[0]), "last": last}
            problems.add(place_in(steps, named.start(), path), "step-missing", **facts)
