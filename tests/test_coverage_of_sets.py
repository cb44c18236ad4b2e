"""Strands by which every cloth of a series is thin or crowded are told once, of the thread set."""

from dataclasses import replace

from packetgen.diagnostics import Place, Problems
from packetgen.model import LaidAside
from packetgen.reckon.coverage import complain_of_coverage
from packetgen.reckon.coverage_of_sets import complain_of_sets
from packetgen.reckon.thread import work_of
from tests.stitching import HERE, card, option, pattern, series, thread_set

THREE = (option(14), option(16), option(18))


def advice(*patterns) -> list[str]:
    problems = Problems()
    sets = tuple(replace(one, place=HERE) for one in patterns[0].thread_sets)
    patterns = [replace(one, thread_sets=sets) for one in patterns]
    works = [(one, work_of(one)) for one in patterns]
    told = complain_of_sets(series(*patterns), works, problems)
    for of, its in works:
        complain_of_coverage(of, its, problems, told)
    return [str(problem) for problem in problems]


def test_a_strand_for_two_is_one_line_for_all_cloths():
    """The shares are those that are told of each cloth alone: 29 % on 14 aida, 37 % on 18."""
    said = "with 1 strand of Bramble all 3 choices of cloth are covered to 29 to 37 %, which looks thin"
    assert advice(pattern("mts", cloths=THREE, sets=(thread_set(1),))) == [
        f"tests:1:1: advice: {said}; write strands: 2; or mend 'tex' in threads/{card().id}.yaml"
    ]


def test_a_tex_whose_figures_are_exchanged_is_asked_about_where_the_other_way_covers_well():
    """By hand: 2 strands of tex 42 are wider by the root of 42/24 = 1.32 than those of tex 24, which cover all three well."""
    of = replace(card(), tex=42, tex_place=Place("threads/bramble.yaml", 5, 6))
    (line,) = advice(pattern("mts", cloths=THREE, sets=(thread_set(2, of),)))
    assert line.startswith("threads/bramble.yaml:5:6: advice: ")
    other = f"strands: 1 for '{thread_set().id}'"
    assert line.endswith(f"should 'tex' be 24 in threads/{of.id}.yaml? Else write {other}")
    assert advice(pattern("mts", cloths=THREE, sets=(thread_set(2, replace(of, tex=24)),))) == []


def test_the_cloths_of_all_patterns_count_together():
    one = pattern("mts", cloths=THREE[:2], sets=(thread_set(4),))
    other = replace(one, id="leaf", cloths=THREE[2:])
    (line,) = advice(one, other)
    assert "all 3 choices of cloth" in line and "crowded" in line
    assert len(advice(one)) == 2


def test_where_one_cloth_is_well_covered_each_other_is_told_for_itself():
    cloths = (*THREE, option(9))
    lines = advice(pattern("mts", cloths=cloths, sets=(thread_set(4),)))
    assert len(lines) == 3 and not [one for one in lines if "choices of cloth" in one]


def test_a_thread_without_better_strands_asks_for_other_cloths():
    thick = replace(card(strands=1), tex=150)
    (line,) = advice(pattern("mts", cloths=THREE, sets=(thread_set(1, thick),)))
    assert line.endswith("coarser cloths or a finer thread would lie flatter")


def test_who_lays_one_cloth_aside_looks_at_each():
    aside = (LaidAside("coverage-thin", "the cloth shall show", HERE, "Cloth 14"),)
    of = pattern("mts", cloths=THREE, sets=(thread_set(1),), laid_aside=aside)
    assert len(advice(of)) == 3
