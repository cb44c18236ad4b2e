"""Apostrophes of what an author types are set as a printer sets them, and nothing else is changed."""

import pytest

from packetgen.render.apostrophes import curled
from packetgen.render.templates import environment


@pytest.mark.parametrize(
    ("typed", "set_"),
    [
        ("Robin's Bootlace", "Robin’s Bootlace"),
        ("don't say 'nettle'", "don’t say 'nettle'"),
        ("https://alder.example/o'clock", "https://alder.example/o'clock"),
        ("6' × 4'", "6' × 4'"),
        ("The Hens' Sunday", "The Hens’ Sunday"),
        ("'the hens' say", "'the hens' say"),
    ],
)
def test_only_what_stands_within_a_word_or_ends_an_owner_s_is_an_apostrophe(typed, set_):
    assert curled(typed) == set_


def test_pages_print_titles_so_and_leave_numbers_and_html_as_they_are():
    page = environment().from_string("{{ title }}|{{ number }}|{{ '<i>o\\'er</i>'|safe }}")
    assert page.render(title="The Mole's Lamp", number=7) == "The Mole’s Lamp|7|<i>o'er</i>"
