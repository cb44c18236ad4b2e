"""Who made a pattern: its credits, and advice on names in them that are nearly those of others."""

from collections.abc import Collection, Mapping, Sequence
from difflib import get_close_matches

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.load.words import said, shown
from packetgen.model import Designer, Pattern

# Share of letters in common from which on two names are taken for one: our own choice.
_ONE_NAME = 0.9


def check_credits(
    filled: Filled, designers: Mapping[str, Designer | None] | None, problems: Problems
) -> None:
    """Advice on the short name of a designer, which would be printed as it stands, and on a name that is nearly hers, or
    another's of the credits."""
    credits: Filled | None = filled["credits"]
    others = {one.name: "among the designers" for one in (designers or {}).values() if one}
    for name, given in credits.given.items() if credits else ():
        known = (designers or {}).get(given.value) if isinstance(given.value, str) else None
        if known and known.name != given.value:
            facts = {"said": said(given.value), "name": shown(known.name)}
            problems.add(given.place, "credit-by-id", **facts, craft=name)
        elif isinstance(given.value, str) and given.value not in others:
            if near := _near(given.value, others):
                facts = {"said": said(given.value), "near": said(near[0]), "where": others[near[0]]}
                problems.add(given.place, "credit-near", **facts)
            others[given.value] = "among the credits"


def _near(name: str, others: Collection[str]) -> list[str]:
    """The one that is nearly called so, or has one more name behind it: 'Nell Tansley-Crake' of 'Nell Tansley'."""
    longer = [one for one in others if " " in name and one.startswith((f"{name}-", f"{name} "))]
    return longer[:1] or get_close_matches(name, others, n=1, cutoff=_ONE_NAME)


def check_credits_of_all(patterns: Sequence[Pattern], problems: Problems) -> None:
    """Advice, once for each pattern, on a name in its credits that is nearly one in those of a pattern before it."""
    seen: dict[str, str] = {}
    for pattern in patterns:
        own = (pattern.model_stitcher, pattern.finisher, pattern.dyer, pattern.photographer)
        names = [name for name in dict.fromkeys(own) if name and name != pattern.designer.name]
        strange = [name for name in names if name not in seen]
        found = ((name, get_close_matches(name, seen, n=1, cutoff=_ONE_NAME)) for name in strange)
        told = next(((name, near[0]) for name, near in found if near), None)
        if told and pattern.credits_place and told[1] not in names:
            facts = {"said": said(told[0]), "near": said(told[1])}
            facts["where"] = f"in {shown(seen[told[1]])}"
            problems.add(pattern.credits_place, "credit-near", **facts)
        seen |= {name: pattern.title for name in strange}


def credit(filled: Filled, name: str) -> str:
    """The name that stands for a craft, as 'finisher'; empty where there is none."""
    name_given: str = filled["credits"][name] if filled["credits"] else ""
    return name_given
