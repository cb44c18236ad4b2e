"""The catalogues that the bench of scale builds are content like any author's."""

from tests.bench.catalogue import catalogue, first_story
from tests.bench.catalogue_words import pattern_title, series_title


def test_a_catalogue_of_two_patterns_passes_proof(tmp_path):
    """What the bench builds must not stop at a fault; only the missing photographs are told."""
    from packetgen.pipeline import proof

    catalogue(2, tmp_path)
    checked = proof(tmp_path / "content")
    assert [one.code for one in checked.problems] == ["photo-missing"] * 2
    (each,) = checked.reckoned
    first, second = (figure.pattern for figure in each.figures)
    assert first.title != second.title and first.grid != second.grid
    for pattern in (first, second):
        width, height = len(pattern.grid.rows[0]), len(pattern.grid.rows)
        assert 80 <= width <= 120 and 80 <= height <= 120
        assert 15 <= len(pattern.key) <= 30
        assert len(pattern.cloths) == 3 and len(pattern.thread_sets) == 2
        assert pattern.lines and pattern.knots and pattern.story_markdown.count("\n\n") >= 2


def test_a_catalogue_is_the_same_every_time(tmp_path):
    made = []
    for name in ("one", "other"):
        catalogue(2, tmp_path / name)
        files = sorted((tmp_path / name).rglob("*.*"))
        made.append([(path.relative_to(tmp_path / name), path.read_bytes()) for path in files])
    assert made[0] == made[1]
    assert first_story(tmp_path / "one").is_file()


def test_no_two_of_a_thousand_are_called_alike():
    assert len({pattern_title(number) for number in range(1000)}) == 1000
    assert len({series_title(number) for number in range(1000)}) == 1000
