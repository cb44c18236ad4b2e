"""A packet prints every letter it is given, or its author is told where one stands that it cannot."""

from dataclasses import replace
from importlib.resources import files
from io import BytesIO

import pytest
from fontTools.ttLib import TTFont

from packetgen.diagnostics import Problems
from packetgen.model import Faces, FontFile, Look
from packetgen.reckon.letters import OWN_LETTERS, complain_of_letters
from tests.stitching import DESIGNER, pattern, series

FACES = ("text-regular", "text-bold", "heading")


def letters_of(name: str) -> set[int]:
    font = (files("packetgen") / "fonts" / f"{name}.ttf").read_bytes()
    return set(TTFont(BytesIO(font)).getBestCmap())


def test_the_letters_that_are_promised_are_in_every_face():
    """Each face with the file that holds its letters of further languages."""
    shared = set.intersection(*(letters_of(name) | letters_of(f"{name}-ext") for name in FACES))
    assert shared == OWN_LETTERS


def told(of, **changes) -> list[str]:
    problems = Problems()
    complain_of_letters(replace(series(of), **changes), problems)
    return [str(problem) for problem in problems]


@pytest.mark.parametrize("word", ["Robin", "Zażółć gęślą jaźń", "tūī", "½ × 3 “…” – €", "a\u00adb"])
def test_european_letters_and_signs_are_printed(word):
    assert told(pattern("m", title=word, story_markdown=f"One.\n\n{word}")) == []


@pytest.mark.parametrize("word", ["נועה", "Ω", "日本", "❀", "\U0001f600"])
def test_other_letters_are_told_with_their_place(word):
    (line,) = told(pattern("m", title=word))
    assert line.startswith("tests:1:1: the type of the packet has no ") and word[0] in line


def test_a_letter_in_a_story_is_told_with_its_line():
    (line,) = told(pattern("m", story_markdown="One.\n\nTwo ❀.\n"))
    assert line.startswith("/story.md:3:1: ") or line.startswith("story.md:3:1: ")


def test_a_designer_may_have_any_name_once_there_is_a_face_for_it():
    named = replace(DESIGNER, name="נועה")
    face = FontFile("hebrew.ttf", b"", frozenset(map(ord, "נועה")))
    look = Look(faces=Faces(text=face))
    of = pattern("m", designer=named)
    assert len(told(of, designers=(named,))) == 1
    assert told(of, designers=(named,), look=look) == []
