"""What is known to be there although its type cannot say so."""

from collections.abc import Iterable
from typing import TypeVar

T = TypeVar("T")


def sure(value: T | None) -> T:
    """`value`, which an earlier check has made certain. Raises AssertionError where that check failed:
    a fault of the program, never of an author's file.
    """
    if value is None:
        raise AssertionError("a value is missing although nothing was found to be wrong")
    return value


def all_sure(values: Iterable[T | None]) -> tuple[T, ...]:
    """Each of `values`, as `sure` gives it."""
    return tuple(sure(value) for value in values)
