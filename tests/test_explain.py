"""`packetgen proof --explain`: what a message means, and what to do about it."""

import re

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS
from packetgen.faults.whys import WHYS
from packetgen.program import message_examples
from packetgen.reference.catalogue import (
    SECTIONS,
    all_codes,
    catalogue_page,
    explained,
    nearest_code,
    read_examples,
    words_of,
)
from tests.content_builder import MOSS, build
from tests.test_wrong_input import JARGON

EXAMPLES = read_examples(message_examples())


def test_every_message_has_its_cause_and_its_cure():
    assert set(WHYS) == set(FAULTS)
    assert [code for faults in SECTIONS.values() for code in faults] == list(FAULTS)


@pytest.mark.parametrize("code", FAULTS)
def test_a_message_is_explained_in_plain_words(code):
    why = WHYS[code]
    for sentence in (why.cause, why.cure):
        assert sentence[0].isupper() and sentence.endswith(".")
        assert not JARGON.search(sentence), sentence
    said = explained(code, EXAMPLES)
    assert said and said.startswith(f"{code} ({FAULTS[code].level.value})\n")
    assert why.cause in said and why.cure in said and words_of(code) in said
    assert not re.search(r"\{\w*\}", words_of(code))
    if code in EXAMPLES:
        assert EXAMPLES[code].told in said and EXAMPLES[code].told.endswith(f"[{code}]")


def test_every_message_stands_in_the_catalogue():
    page = catalogue_page(EXAMPLES)
    for code in FAULTS:
        assert page.count(f"\n### `{code}`\n") == 1


def test_a_code_that_there_is_not_has_a_nearest():
    assert explained("name-unknwon", EXAMPLES) is None
    assert nearest_code("name-unknwon") == "did you mean 'name-unknown'?"


def test_a_code_spelt_alike_goes_before_one_that_has_the_words():
    assert nearest_code("row-short") == "did you mean 'rows-short'?"


@pytest.mark.parametrize("asked", ["short-row", "row-length", "row too long", "ragged"])
def test_who_asks_in_words_of_her_own_is_offered_the_code_that_has_them(asked):
    assert nearest_code(asked).startswith("did you mean 'row-ragged'")


@pytest.mark.parametrize("asked", ["zzz", "foo"])
def test_words_that_no_message_has_are_answered_with_codes_that_there_are(asked):
    """A word that begins as another one does is not near it: 'foo' is no foot."""
    assert nearest_code(asked).startswith("known here: ")


def test_the_list_has_every_code_once():
    lines = all_codes().splitlines()
    assert sorted(line.split()[0] for line in lines if line.startswith("  ")) == sorted(FAULTS)


def test_a_line_ends_with_the_code_to_ask_about():
    problems = Problems()
    problems.add(Place("threads/moss.yaml", 6, 7), "list-empty", name="'colours'", example="x")
    (problem,) = problems
    assert problem.printed == f"{problem} [list-empty]"


def asked(*words: str, code: int = 0) -> str:
    result = CliRunner().invoke(main, ["proof", *words])
    assert result.exit_code == code, result.output
    return result.output


def test_a_message_of_changing_words_alone_is_called_by_its_code():
    assert words_of("rows-broken") == "rows broken"
    assert words_of("name-unknown") == "… is not part of …; …"


def test_the_command_explains_a_code():
    assert asked("--explain", "name-unknown") == f"{explained('name-unknown', EXAMPLES)}\n"


def test_the_command_answers_a_slip_in_a_code_with_the_nearest():
    assert "did you mean 'name-unknown'?" in asked("--explain", "name-unknwon", code=2)


def test_the_command_lists_all_codes_when_asked_for_none():
    assert asked("--explain") == f"{all_codes()}\n"


def test_what_proof_prints_can_be_explained(tmp_path):
    """From the line to the explanation: the code at the end of a line is one that is known."""
    content = build(tmp_path / "content", {MOSS: ("length: 8 m", "lenght: 8 m")})
    said = asked("--content", str(content), code=1).splitlines()
    (line,) = (line for line in said if "lenght" in line)
    code = line.rpartition("[")[2].removesuffix("]")
    assert code == "name-unknown" and WHYS[code].cause in asked("--explain", code)
