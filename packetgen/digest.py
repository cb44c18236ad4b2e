"""Names things by what they are made of, so that what was made once need not be made again."""

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import Enum
from functools import cache
from typing import Any

# Gives the bytes kept under a digest, or makes them (and may keep them for the next time).
Keep = Callable[[str, Callable[[], bytes]], bytes]


def afresh(_: str, make: Callable[[], bytes]) -> bytes:
    """The `Keep` that keeps nothing."""
    return make()


def digest(*values: object) -> str:
    """A name for these values, the same in every process: 64 hexadecimal digits.

    Takes frozen dataclasses of text, numbers, days, enumerations, bytes, tuples and mappings, however
    deep. A field that does not count when two of them are compared (a place in a file) does not count
    here. Raises TypeError for anything else, since a name that missed something would be worse than none.
    """
    return Digests().digest(*values)


class Digests:
    """Gives digests of values that share parts: a thread card hangs on every need for it in every pattern
    of a series, and is walked through only once. Holds on to what it has walked through."""

    def __init__(self) -> None:
        self._named: _Named = {}

    def digest(self, *values: object) -> str:
        """As `digest` gives it."""
        taken = hashlib.sha256()
        _take(values, taken.update, self._named)
        return taken.hexdigest()


# The names of dataclasses that were met, by identity, which is theirs for as long as they are held here.
_Named = dict[int, tuple[object, bytes]]


def _take(value: object, update: Callable[[bytes], None], named: _Named) -> None:
    """Every value goes in with its kind and its length, so that no two different ones read alike."""
    match value:
        case bytes():
            _part(b"b", value, update)
        case str():
            _part(b"s", value.encode("utf-8", "surrogatepass"), update)
        case Enum():
            _part(b"e", f"{type(value).__name__}.{value.name}".encode(), update)
        case None | bool() | int() | float() | Decimal():
            _part(b"n", f"{type(value).__name__} {value!r}".encode(), update)
        case datetime():
            zone = getattr(value.tzinfo, "key", "")
            _part(b"t", f"{value.isoformat()} {zone}".encode(), update)
        case date():
            _part(b"d", value.isoformat().encode(), update)
        case tuple() | list() if _only_text(value):  # a row of a chart: many, and short
            _part(b"r", repr(tuple(value)).encode(), update)
        case tuple() | list():
            _part(b"l", str(len(value)).encode(), update)
            for one in value:
                _take(one, update, named)
        case Mapping():
            _part(b"m", str(len(value)).encode(), update)
            for pair in value.items():  # in order: two orders may print two pages
                _take(pair, update, named)
        case _ if is_dataclass(value) and not isinstance(value, type):
            if id(value) not in named:
                named[id(value)] = value, _name_of(value, named)
            _part(b"o", named[id(value)][1], update)
        case _:
            raise TypeError(f"{type(value).__name__} cannot be named by its contents")


def _only_text(values: tuple[object, ...] | list[object]) -> bool:
    return set(map(type, values)) == {str}


def _name_of(value: object, named: _Named) -> bytes:
    """Of a dataclass."""
    taken = hashlib.sha256()
    kind: Any = type(value)
    counted = _counted(kind)
    _part(b"o", f"{kind.__name__} {len(counted)}".encode(), taken.update)
    for name in counted:
        _take((name, getattr(value, name)), taken.update, named)
    return taken.digest()


@cache
def _counted(kind: type) -> tuple[str, ...]:
    """The fields that count when two of a kind are compared."""
    return tuple(field.name for field in fields(kind) if field.compare)


def _part(kind: bytes, data: bytes, update: Callable[[bytes], None]) -> None:
    update(kind + str(len(data)).encode() + b":")
    update(data)
