"""A build writes down what it made and what from; the next one believes it only where it can."""

import json
from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from packetgen.load.inputs import Seen
from packetgen.record import (
    Issued,
    Output,
    Record,
    SeriesRecord,
    as_json,
    from_json,
    issued_as_json,
    signs_as_json,
)

HEDGE = SeriesRecord(
    "The Hedge Year",
    "Small",
    "",
    ("sprig",),
    "Europe/London",
    False,
    False,
    "2027-01-15T23:59:59+00:00",
    "2027-03-01T09:00:00+00:00",
)
MADE = Record(
    made_with="a1",
    advice=("a: b",),
    inputs={"content/moss.yaml": Seen("b2", "12 3 4 5"), "content/leaf.yaml": Seen("c3", "")},
    series={"hedge-year": HEDGE},
    outputs={
        "site/index.html": Output("d4", 120, "hedge-year"),
        "packets/hedge-year/sprig-a4.pdf": Output("e5", 9, "hedge-year", "f6"),
    },
    drawn={"a7": "site/sprig/mounted-480.jpg"},
    issued={
        "ledger/hedge-year/sprig.json": Issued("Sprig", 2, "sprig/pattern.yaml:9:3", "b8", "c9")
    },
)


def test_a_record_comes_back_as_it_was_written():
    assert from_json(as_json(MADE), signs_as_json(MADE), issued_as_json(MADE)) == MADE
    assert from_json(as_json(Record("x"))) == Record("x")


def test_a_record_is_sorted_and_has_a_line_for_each_file():
    """So that a program for comparing texts shows what has changed."""
    lines = as_json(MADE).decode().splitlines()
    assert sum('"sha256"' in line for line in lines) == 2
    turned = replace(MADE, inputs=dict(reversed(MADE.inputs.items())))
    assert as_json(turned) == as_json(MADE)


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"{",
        b"[]",
        b"null",
        b"\xff",
        b"{}",
        as_json(MADE)[:-40],
        as_json(MADE).replace(b'"form": 1', b'"form": 0'),
        as_json(MADE).replace(b'"sha256"', b'"sha1"'),
        as_json(MADE).replace(b'"advice"', b'"advise"'),
    ],
)
def test_a_record_of_another_version_or_a_broken_one_is_as_good_as_none(data):
    assert from_json(data) is None


@pytest.mark.parametrize("data", [b"{", b"[1]", b'{"ledger/a/b.json": {"title": "B"}}'])
def test_neither_is_one_beside_which_it_is_not_told_how_patterns_were_stitched(data):
    assert from_json(as_json(MADE), signs_as_json(MADE), data) is None


def test_the_record_holds_what_sha256_needs_to_check_a_build():
    read = json.loads(as_json(MADE))["outputs"]
    assert (
        read["site/index.html"]["sha256"] == "d4" and read["site/index.html"]["size_bytes"] == 120
    )


@pytest.mark.parametrize(
    ("as_of", "stands"),
    [
        (datetime(2027, 1, 15, 12, tzinfo=UTC), False),  # earlier: something may not have been out
        (date(2027, 1, 15), True),
        (datetime(2027, 1, 16, tzinfo=UTC), True),
        (datetime(2027, 3, 1, 8, 59), True),
        (datetime(2027, 3, 1, 9), False),  # something comes out
        (date(2027, 3, 1), False),
        (None, False),  # a site of everything is another one
    ],
)
def test_a_site_stands_until_something_comes_out(as_of, stands):
    assert HEDGE.still_stands(as_of) is stands


def test_a_site_of_everything_stands_for_ever():
    everything = replace(HEDGE, shows_all=True, stands_from="", stands_until="")
    assert everything.still_stands(None)
    assert not everything.still_stands(date(2027, 3, 1))


def test_a_record_says_nothing_of_the_machine():
    """Neither times nor numbers of the disk: two machines write the same."""
    assert b"12 3 4 5" not in as_json(MADE) and b"12 3 4 5" in signs_as_json(MADE)
