"""What is drawn from the same things has the same name, in any process."""

import subprocess
import sys
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime
from decimal import Decimal
from enum import Enum
from pathlib import Path

import pytest

from packetgen.diagnostics import Place
from packetgen.digest import afresh, digest
from tests.stitching import pattern, piece


def test_equal_designs_have_one_name():
    assert digest(pattern("mt."), piece()) == digest(pattern("mt."), piece())


@pytest.mark.parametrize(
    "other",
    [
        pattern("mt.", title="Another"),
        pattern("mtm"),
        pattern("mt", "."),
        replace(pattern("mt."), photo_alt="A sprig."),
        replace(pattern("mt."), given_away=("chart",)),
    ],
)
def test_one_changed_thing_gives_another_name(other):
    assert digest(other) != digest(pattern("mt."))


def test_where_a_thing_stands_in_a_file_does_not_count():
    assert digest(pattern("m", place=Place("a", 1))) == digest(pattern("m", place=Place("b", 9)))


class Weft(Enum):
    LINEN = "x"


@dataclass(frozen=True)
class Warp:
    value: object
    unread: object = field(default=None, compare=False)


DIFFERENT = (
    *(1, 1.0, True, None, "", "1", b"1", "None", (), ("",), ("", ""), ("1",), (1,), ((1,),)),
    *({"a": "b"}, {"a": ("b",)}, ("a", "b"), ("ab",), {"b": "a"}, Weft.LINEN, "Weft.LINEN"),
    *(date(2027, 1, 15), datetime(2027, 1, 15), datetime(2027, 1, 15, tzinfo=UTC), "2027-01-15"),
    *(Decimal("1.0"), Decimal("1"), Warp(1), Warp("1"), Warp((1,)), {"value": 1}, "\ud800"),
)


def test_no_two_different_values_share_a_name():
    names = {digest(value) for value in DIFFERENT}
    assert len(names) == len(DIFFERENT)


def test_several_values_are_not_one_joined_value():
    assert digest("ab", "c") != digest("a", "bc") != digest("abc")


def test_a_thing_that_hangs_in_many_places_is_named_as_its_copies_are():
    """Whether a card is one object or many alike makes no other name of it."""
    card = Warp("moss")
    assert digest((card, card)) == digest((Warp("moss"), Warp("moss")))
    assert digest((card, card)) != digest((card, Warp("sage")))


def test_what_hangs_in_many_places_is_walked_through_once():
    """Else forty floors of pairs, each twice the floor below, would never end."""
    floor = Warp(1)
    for _ in range(40):
        floor = Warp((floor, floor))
    assert len(digest(floor)) == 64


def test_a_thing_without_contents_of_its_own_is_refused():
    """A name that left something out would bring an old picture back."""
    with pytest.raises(TypeError, match="object"):
        digest(object())
    with pytest.raises(TypeError, match="type"):
        digest(Warp)


def test_the_name_is_the_same_in_another_process():
    code = "from tests.stitching import *; from packetgen.digest import digest; print(digest(pattern('mt.'), piece()))"
    said = subprocess.run(
        [sys.executable, "-c", code],
        cwd=Path(__file__).parent.parent,
        env={"PYTHONHASHSEED": "9", "PYTHONPATH": "."},
        capture_output=True,
        text=True,
        check=True,
    ).stdout.strip()
    assert said == digest(pattern("mt."), piece())


def test_what_is_made_afresh_is_made_every_time():
    made = []
    for _ in range(2):
        afresh("name", lambda: made.append(1) or b"x")
    assert len(made) == 2
