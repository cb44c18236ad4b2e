"""Which number an author means who writes a word, or a unit that nobody asked for."""

import pytest

from packetgen.load.number_words import meant_number


@pytest.mark.parametrize(
    ("said", "number"),
    [
        ("14ct", 14),
        ("28-count", 28),
        ("8 m", 8),
        ("12,5", 12.5),
        ("12,5 tex", 12.5),
        ("0.5mm", 0.5),
        ("six", 6),
        ("Twenty-eight", 28),
        ("thirty two", 32),
    ],
)
def test_a_number_with_a_unit_or_in_words_is_understood(said, number):
    assert meant_number(said) == number


@pytest.mark.parametrize(
    "said",
    [
        "",
        "heavy",
        "2 to 3",
        "1e3",
        "1,000",
        "1,000 m",
        "2026-02-30",
        "two and",
        "eight twenty",
        "0x6",
        "1:30",
    ],
)
def test_nothing_is_guessed_where_the_number_is_not_plain(said):
    assert meant_number(said) is None
