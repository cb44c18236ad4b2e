"""The YAML library's events for a text, by its quick reader where that surely reads as the careful one does.

The careful reader, in Python, is the one that finds and words faults; the quick one, in C, takes a tenth of
the time and lets a few things pass that the other refuses (YAML 1.1 has room for both). So whatever is out of
the ordinary is read by the careful one, from the beginning.
"""

import re
from collections.abc import Iterable
from itertools import islice

import yaml

# Not everywhere is the library built with its part in C.
_QUICK = getattr(yaml, "CSafeLoader", None)
# What the two take differently: tabs between words, a byte order mark, a '?' for a name between brackets,
# a remark close behind the sign of a text in lines.
_READ_WITH_CARE = re.compile("[\t\ufeff?]|[|>][-+0-9]*#")


def events(text: str, most: int) -> Iterable[yaml.Event]:
    """They are the same, with the same places, whichever reader gives them; more than `most` are read with
    care, one by one. Raises as `yaml.parse` does."""
    return _quickly(text, most) or yaml.parse(text, Loader=yaml.SafeLoader)


def _quickly(text: str, most: int) -> tuple[yaml.Event, ...]:
    """None at all where the careful reader must be asked."""
    if _QUICK is None or _READ_WITH_CARE.search(text):
        return ()
    try:
        found = tuple(islice(yaml.parse(text, Loader=_QUICK), most + 1))
    except (yaml.YAMLError, ValueError, OverflowError):  # the careful one has words for it
        return ()
    return () if len(found) > most or not all(map(_is_ordinary, found)) else found


def _is_ordinary(event: yaml.Event) -> bool:
    """No name, tag or alias, which are refused, and no value left out, which has another place."""
    if isinstance(event, yaml.AliasEvent):
        return False
    if isinstance(event, yaml.ScalarEvent) and not event.value and not event.style:
        return False
    return getattr(event, "anchor", None) is None and getattr(event, "tag", None) is None
