"""Advice that an author has thought of is not told again, and her reason for it is."""

from pathlib import Path

import pytest

from packetgen.cli import main
from packetgen.model import Look
from packetgen.pipeline import proof, review
from packetgen.render.proof_page import proof_page
from packetgen.render.proof_report import lines_of, summary
from packetgen.render.templates import environment
from tests.content_builder import CHART, FERN, FINISH, MOSS, PATTERN, SERIES, TINY, build
from tests.wrong_input_review import FIVE_COLOURS, SHORT_SKEINS

WORTH_IT = "laid_aside:\n  - {advice: skein-little, because: the fern is worth a skein}\n"
NO_MODEL = "laid_aside:\n  - {advice: photo-missing, because: the model is still on the frame}\n"
BOTH = WORTH_IT + NO_MODEL.removeprefix("laid_aside:\n")
UNUSED = "laid_aside:\n  - {advice: to-come-here, because: it is the same}\n"


def folder(tmp_path: Path, pattern: str = "", series: str = "") -> Path:
    changes = {PATTERN: TINY[PATTERN] + pattern, SERIES: TINY[SERIES] + series}
    return build(tmp_path / "content", changes)


def codes(of) -> list[str]:
    return [problem.code for problem in of]


def told(found) -> list[str]:
    return [problem.code for chapter in found.chapters for problem in chapter.problems]


def test_what_is_laid_aside_is_not_told_and_the_rest_is(tmp_path):
    before = told(review(proof(folder(tmp_path / "before"))))
    after = told(review(proof(folder(tmp_path / "after", BOTH))))
    assert "skein-little" in before and "photo-missing" in before
    assert after == [code for code in before if code not in ("skein-little", "photo-missing")]


def test_a_build_does_not_tell_it_either(tmp_path):
    assert "photo-missing" in codes(proof(folder(tmp_path / "before")).problems)
    checked = proof(folder(tmp_path / "after", NO_MODEL))
    assert "photo-missing" not in codes(checked.problems)
    assert codes(checked.aside) == ["photo-missing"]


def test_the_reason_stands_in_the_report(tmp_path):
    found = review(proof(folder(tmp_path, BOTH)))
    lines = [line.text for line in lines_of(found, "content", with_places=False)]
    number = told(review(proof(folder(tmp_path / "before")))).count("skein-little")
    assert number > 1
    assert f"  laid aside: skein-little ({number} times): the fern is worth a skein" in lines
    assert "  laid aside: photo-missing: the model is still on the frame" in lines
    assert "2 laid aside" in summary(found)
    page = proof_page(found, "Fern", "content", Look(), environment()).decode()
    assert "the fern is worth a skein" in page and "the model is still on the frame" in page


def test_a_pattern_lays_aside_only_its_own_and_a_series_only_its_own(tmp_path):
    found = review(proof(folder(tmp_path, UNUSED, BOTH)))
    assert {"skein-little", "photo-missing"} <= set(told(found))
    assert told(found).count("laid-aside-idle") == 3


def test_it_is_said_which_file_lays_aside_what_is_told_of_patterns(tmp_path):
    series = lines(review(proof(folder(tmp_path / "series", series=WORTH_IT))))
    (idle,) = (
        line for line in series if "is laid aside, and no advice of that kind comes here" in line
    )
    assert idle.startswith(f"{SERIES}:")
    assert "it is told of patterns: lay it aside in the pattern.yaml of each" in idle
    changes = {
        PATTERN: TINY[PATTERN] + "laid_aside:\n  - {advice: named-twice, because: it is her}\n",
        SERIES: ("about: Draws what", "about: Wren Alder draws what"),
    }
    pattern = lines(review(proof(build(tmp_path / "pattern", changes))))
    (idle,) = (
        line for line in pattern if "is laid aside, and no advice of that kind comes here" in line
    )
    assert idle.startswith(f"{PATTERN}:")
    assert "it is told of the series: lay it aside in series.yaml" in idle


def test_a_series_lays_aside_what_is_told_of_its_finishing_piece(tmp_path):
    paints = '  - {name: NAME, hex: "#d8c48a", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n'
    two = "".join(paints.replace("NAME", name) for name in ("straw", "chalk"))
    series = "laid_aside:\n  - {advice: paint-unused, about: straw, because: pieces to come}\n"

    def checked(series: str):
        changes = {FINISH: ("paints:\n", f"paints:\n{two}"), SERIES: TINY[SERIES] + series}
        return proof(build(tmp_path / "content", changes))

    unused = [one for one in checked(series).problems if one.code == "paint-unused"]
    assert [one.wrong.rpartition(" ")[2] for one in unused] == ["chalk"]
    found = review(checked(series))
    assert "laid-aside-idle" not in told(found) and "1 laid aside" in summary(found)
    idle = [
        line for line in lines(review(checked(series.replace("straw", "stray")))) if "stray" in line
    ]
    assert len(idle) == 1 and "let about be 'straw'" in idle[0]


def test_a_series_lays_aside_what_is_told_of_its_cards(tmp_path):
    """A thread that is as dear as it looks."""
    aside = "laid_aside:\n  - {advice: price-dear, about: 80 EUR, because: it is spun with gold}\n"
    card = ("length: 8 m", "length: 8 m\nprice: 80 EUR")
    dear = proof(build(tmp_path / "content", {MOSS: card}))
    assert "price-dear" in {one.code for one in dear.problems}
    kept = proof(build(tmp_path / "content", {MOSS: card, SERIES: TINY[SERIES] + aside}))
    assert not {"price-dear", "laid-aside-idle"} & {one.code for one in kept.problems}
    assert "1 laid aside" in summary(review(kept))


def test_what_is_laid_aside_stays_so_where_a_slip_elsewhere_keeps_all_from_being_reckoned(tmp_path):
    """Of a piece and a card by series.yaml, and of its own folder by pattern.yaml; of a series.yaml that cannot
    be read nobody knows what it lays aside."""
    thick = TINY[FINISH].replace("thickness: 6 mm", "thickness: 60 mm", 1)
    of_series = (
        "laid_aside:\n  - {advice: part-thick, about: 60 mm, because: it is a beam}\n"
        "  - {advice: price-dear, about: 80 EUR, because: it is spun with gold}\n"
    )
    of_pattern = "laid_aside:\n  - {advice: file-not-read, about: notes.md, because: my own}\n"
    slip = ("E2", "E99")
    changes = {
        FINISH: thick,
        MOSS: ("length: 8 m", "length: 8 m\nprice: 80 EUR"),
        SERIES: TINY[SERIES] + of_series,
        PATTERN: TINY[PATTERN].replace(*slip) + of_pattern,
        FERN + "/notes.md": "To do.",
    }
    found = review(proof(build(tmp_path / "content", changes)))
    assert set(told(found)) == {"colour-unknown"}
    changes[PATTERN] = changes[PATTERN].replace(of_pattern, "")
    assert "file-not-read" in told(review(proof(build(tmp_path / "second", changes))))
    changes[SERIES] = changes[SERIES].replace("title:", "title")
    anyway = told(review(proof(build(tmp_path / "third", changes))))
    assert {"part-thick", "price-dear"} <= set(anyway)


def test_what_is_laid_aside_in_the_wrong_file_is_told_while_an_example_is_left(tmp_path):
    """Other advice may come again with the author's own lines; this is told of patterns whatever she writes."""
    aside = "laid_aside:\n  - {advice: photo-missing, because: no model yet}\n"
    idle = "  - {advice: paint-unused, because: pieces to come}\n"
    changes = {SERIES: TINY[SERIES] + aside + idle}
    whole = lines(review(proof(build(tmp_path / "whole", changes))))
    assert sum("of that kind comes here" in one for one in whole) == 2
    changes[CHART] = f"# EXAMPLE: a sprig. Draw your own, and take this line out.\n{TINY[CHART]}"
    checked = proof(build(tmp_path / "begun", changes))
    assert checked.examples
    (line,) = [one for one in lines(review(checked)) if "of that kind comes here" in one]
    assert "it is told of patterns: lay it aside in the pattern.yaml of each" in line


def test_beside_a_fault_nothing_laid_aside_is_called_idle(tmp_path):
    """When the fault is mended, the advice may be given again."""
    aside = "laid_aside:\n  - {advice: skein-little, because: the eye is worth a skein}\n"
    changes = {MOSS: SHORT_SKEINS, PATTERN: TINY[PATTERN] + aside}
    assert "laid-aside-idle" in told(review(proof(build(tmp_path / "content", changes))))
    small = TINY[FINISH].replace("0,0 100,0 100,100 0,100", "0,0 12,0 12,12 0,12")
    changes[FINISH] = small.replace("border: 6 mm", "border: 3 mm").replace("pairs: 4", "pairs: 0")
    with_fault = proof(build(tmp_path / "content", changes))
    assert {one.code for one in with_fault.problems.errors} == {"does-not-fit"}
    assert "laid-aside-idle" not in told(review(with_fault))


def test_beside_a_fault_no_bare_edges_are_advised(tmp_path):
    """They may be what the next advice asks for when the design fits."""
    rows = ["........"] * 4
    chart = "\n".join([*rows, "..rrbb..", "..rk....", *rows, ""])
    changes = {CHART: chart, PATTERN: ("at: 3,2", "at: 5,6")}
    assert "edges-bare" in told(review(proof(build(tmp_path / "content", changes))))
    small = TINY[FINISH].replace("0,0 100,0 100,100 0,100", "0,0 12,0 12,12 0,12")
    small = small.replace("border: 6 mm", "border: 1 mm").replace("pairs: 4", "pairs: 0")
    with_fault = proof(build(tmp_path / "content", {**changes, FINISH: small}))
    assert {one.code for one in with_fault.problems.errors} == {"does-not-fit"}
    assert "edges-bare" not in told(review(with_fault))


def test_a_photograph_left_out_of_one_pattern_hides_none_that_another_lacks(tmp_path):
    """What is laid aside for the fern says nothing of a photograph that the ivy loses later."""
    ivy = {path.replace("fern", "ivy"): text for path, text in TINY.items() if FERN in path}
    ivy[f"{FERN}/pattern.yaml".replace("fern", "ivy")] = TINY[PATTERN].replace("Fern", "Ivy")
    changes = {
        **ivy,
        PATTERN: TINY[PATTERN] + NO_MODEL,
        SERIES: ("order: [fern]", "order: [fern, ivy]"),
    }
    checked = proof(build(tmp_path, changes))
    assert [one.place.path for one in checked.aside] == [PATTERN]
    left = [one.place.path for one in checked.problems if one.code == "photo-missing"]
    assert left == [PATTERN.replace("fern", "ivy")]


ONE = "laid_aside:\n  - {advice: skein-little, about: K4 peat, because: the earth is worth it}\n"


def lines(found) -> list[str]:
    return [str(problem) for chapter in found.chapters for problem in chapter.problems]


def test_one_line_of_a_kind_is_laid_aside_by_what_it_is_about(tmp_path):
    before = lines(review(proof(folder(tmp_path / "before"))))
    (earth,) = (line for line in before if "of K4 peat would take a whole skein" in line)
    found = review(proof(folder(tmp_path / "after", ONE)))
    assert lines(found) == [line for line in before if line != earth]
    reported = [line.text for line in lines_of(found, "content", with_places=False)]
    assert "  laid aside: skein-little about K4 peat: the earth is worth it" in reported


@pytest.mark.parametrize("about", ["k4", "K4 PEAT", "peat", "pattern.yaml"])
def test_words_of_the_line_or_of_its_file_are_enough(tmp_path, about):
    found = review(proof(folder(tmp_path, ONE.replace("K4 peat", about))))
    assert not any("of K4 peat would take a whole skein" in line for line in lines(found))
    assert "laid-aside-idle" not in told(found)


@pytest.mark.parametrize("about", ["K", "4 pea", "T9 moss", ".*", "whole spool"])
def test_what_is_about_nothing_here_is_told(tmp_path, about):
    found = review(proof(folder(tmp_path, ONE.replace("K4 peat", f'"{about}"'))))
    (line,) = (line for line in lines(found) if "is laid aside" in line)
    assert (
        f"'skein-little about {about}' is laid aside, and no advice of that kind comes here" in line
    )
    assert any("of K4 peat would take a whole skein" in line for line in lines(found))


@pytest.mark.parametrize(
    ("about", "meant"), [("K4 beat", "K4 peat"), ("peats", "peat"), ("T9 moss", None)]
)
def test_words_that_are_nearly_those_of_the_advice_are_told(tmp_path, about, meant):
    found = review(proof(folder(tmp_path, ONE.replace("K4 peat", about))))
    (line,) = (line for line in lines(found) if "is laid aside" in line)
    if meant:
        assert f"; let about be '{meant}', or take this entry out" in line
    else:
        assert "; take this entry out" in line


def test_one_line_and_the_rest_of_its_kind_have_each_their_reason(tmp_path):
    both = ONE + WORTH_IT.removeprefix("laid_aside:\n")
    found = review(proof(folder(tmp_path, both)))
    assert not {"skein-little", "laid-aside-idle"} & set(told(found))
    reported = [line.text for line in lines_of(found, "content", with_places=False)]
    aside = [line for line in reported if "laid aside: skein-little" in line]
    assert [line.rpartition(": ")[2] for line in aside] == [
        "the earth is worth it",
        "the fern is worth a skein",
    ]


def test_the_same_line_cannot_be_laid_aside_twice(tmp_path):
    content = folder(
        tmp_path, ONE + ONE.removeprefix("laid_aside:\n").replace("K4 peat", "k4 Peat")
    )
    (line,) = (str(one) for one in proof(content).problems if one.code == "name-twice")
    assert "the kind of advice 'skein-little about k4 Peat' stands here a second time" in line


def test_praise_is_not_had_by_laying_aside(tmp_path):
    plain, aside = (
        review(proof(folder(tmp_path / name, pattern))).chapters[0]
        for name, pattern in (("plain", ""), ("aside", WORTH_IT))
    )
    assert aside.praise == plain.praise


def test_a_fault_cannot_be_laid_aside(tmp_path, capsys):
    content = folder(tmp_path, "laid_aside: [{advice: reference-unknown, because: no time}]\n")
    with pytest.raises(SystemExit) as ended:
        main(["proof", "--content", str(content)])
    assert ended.value.code == 1
    assert "there is no kind of advice 'reference-unknown'" in capsys.readouterr().out


def test_a_release_passes_when_all_advice_is_laid_aside(tmp_path, capsys):
    content = folder(tmp_path)
    kinds = {(problem.place.path, problem.code) for problem in _all_advice(content)}
    lines = {
        name: "laid_aside:\n"
        + "".join(f"  - {{advice: {code}, because: thought of}}\n" for code in sorted(of))
        for name in (PATTERN, SERIES)
        if (of := {code for path, code in kinds if (path == SERIES) == (name == SERIES)})
    }
    folder(tmp_path, lines.get(PATTERN, ""), lines.get(SERIES, ""))
    with pytest.raises(SystemExit) as ended:
        main(["proof", "--strict", "--content", str(content)])
    assert ended.value.code == 0, capsys.readouterr()


def _all_advice(content: Path):
    return [one for chapter in review(proof(content)).chapters for one in chapter.advice]


def test_while_a_pattern_is_still_the_example_nothing_laid_aside_is_called_idle(tmp_path):
    changes = {
        PATTERN: TINY[PATTERN] + UNUSED,
        CHART: f"# EXAMPLE: a sprig. Draw your own design, and take this line out.\n{TINY[CHART]}",
    }
    found = told(review(proof(build(tmp_path, changes))))
    assert "example-remark" in found and "laid-aside-idle" not in found


def test_a_photograph_that_is_gone_makes_no_idle_words_of_what_was_laid_aside_for_it(tmp_path):
    of_photo = "laid_aside:\n  - {advice: photo-tells-chart, because: the frame hides most of it}\n"
    found = told(review(proof(folder(tmp_path / "gone", of_photo))))
    assert "photo-missing" in found and "laid-aside-idle" not in found
    assert "laid-aside-idle" in told(review(proof(folder(tmp_path / "other", UNUSED))))


def of_five(tmp_path: Path, entry: str = "", length: str = "8 m") -> tuple[list[str], list[str]]:
    """What is told of thread that is hardly used, and of what is laid aside for nothing."""
    changes = {
        PATTERN: FIVE_COLOURS[PATTERN] + entry,
        MOSS: FIVE_COLOURS[MOSS].replace("8 m", length),
    }
    found = lines(review(proof(build(tmp_path, FIVE_COLOURS | changes))))
    little = [
        line for line in found if "Moss Stranded" in line and "would take a whole skein" in line
    ]
    return little, [line for line in found if "is laid aside" in line]


def test_nearly_all_colours_of_a_card_are_told_of_in_one_line(tmp_path):
    (line,), _ = of_five(tmp_path / "all")
    assert "5 of 5 colours of Moss Stranded would take a whole skein of 8 m each" in line
    few, _ = of_five(tmp_path / "few", length="5 m")  # the backstitch takes more than that
    assert len(few) == 4 and not any(" of 5 colours" in line for line in few)


def test_nearly_all_colours_of_a_card_are_laid_aside_by_one_entry_or_one_by_one(tmp_path):
    for number, about in enumerate(("", "about: Moss Stranded, ")):
        entry = f"laid_aside: [{{advice: skein-little, {about}because: it is tiny}}]\n"
        assert of_five(tmp_path / str(number), entry) == ([], [])
    little, idle = of_five(tmp_path / "one", ONE)
    assert len(little) == 4 and idle == []


def test_advice_laid_aside_by_half_its_name_is_told_whole(tmp_path):
    """A red and a green are one to some eyes: that is other advice than of two that are alike to all."""
    aside = "laid_aside:\n  - {advice: colours-alike, because: the key has numbers}\n"
    one_to_some = SHORT_SKEINS.replace("#a04030", "#a9522f").replace("#6b503a", "#43642c")
    changes = {PATTERN: TINY[PATTERN] + aside, MOSS: one_to_some}
    found = review(proof(build(tmp_path, changes)))
    idle = [
        problem.right
        for chapter in found.chapters
        for problem in chapter.problems
        if problem.code == "laid-aside-idle"
    ]
    assert idle == ["did you mean colours-alike-to-some? Else take this entry out"]
