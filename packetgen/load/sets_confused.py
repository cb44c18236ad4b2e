"""Two thread sets of a series with one name or one card, by a slip: told once, and not of each pattern whose key then
agrees with nothing."""

from collections.abc import Sequence

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.load.words import said, shown

_SEVERAL = 2  # patterns; of one it may be the key


def tell_sets_confused(filled: Filled, order: Sequence[str], path: str, problems: Problems) -> None:
    """`order` are the folders of the patterns below `path`."""
    sets = [one.value for one in filled.each("thread_sets") if one.value is not None]
    names, cards = [one["name"] for one in sets], [one["card"] for one in sets]
    files = {f"{path}/{name}/pattern.yaml" for name in order}
    if len(set(names)) < len(names):
        for one in tuple(problems):
            nameless = one.code == "reference-unknown" and one.wrong.startswith(
                "there is no thread set"
            )
            if nameless and one.place.path in files:
                problems.forget(one.code, one.place.path, one.place.line)
    for number, one in enumerate(sets):
        name, card = one["name"], one["card"]
        told = [each for each in problems if _is_of(each.code, each.wrong, name)]
        where = {each.place.path for each in told} & files
        if card not in cards[:number] or len(where) < _SEVERAL:
            continue
        problems.leave_out({"colours-of-another"}, where)
        facts = {"name": said(name), "other": said(names[cards.index(card)]), "card": shown(card)}
        problems.add(one.place_of("card"), "sets-one-card", **facts)


def _is_of(code: str, wrong: str, name: str | None) -> bool:
    return code == "colours-of-another" and name is not None and f" for {said(name)} " in wrong
