"""A chart that people are stitching from keeps its symbols when its author corrects it."""

from dataclasses import replace

from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

from packetgen.chart.assignment import shapes_for
from packetgen.cli import main
from packetgen.pipeline import proof
from packetgen.render.symbols_file import symbols_file
from packetgen.shape_names import SHAPE_NAMES, SHAPE_WORDS
from tests.content_builder import FERN, PATTERN, build


def settled(content, code=0):
    result = CliRunner().invoke(main, ["settle", "--content", str(content)])
    assert result.exit_code == code, result.output
    return result.output


def shapes(content, name):
    """Mark → shape of the pattern `name`, as its packet would have them."""
    (each,) = proof(content).reckoned
    figure = next(figure for figure in each.figures if figure.pattern.id == name)
    counts = {work.line.mark: work.total_stitches for work in figure.works}
    return shapes_for(figure.pattern, counts)


def test_settling_changes_no_symbol_and_a_second_time_no_file(tmp_path):
    content = build(tmp_path / "content", {})
    before = shapes(content, "fern")
    first, last = settled(content).splitlines()[-2:]
    assert first == f"Written: {content.as_posix()}/{FERN}/symbols.yaml"
    assert last == "1 file of kept symbols written."
    assert shapes(content, "fern") == before
    assert settled(content).splitlines()[-1] == "0 files of kept symbols written."
    assert [path.name for path in (content / FERN).iterdir() if path.name.startswith("_")] == []


def test_an_edited_colour_moves_no_symbol_of_the_demo(demo):
    """Every line of all three keys, edited to every other colour that its card has: 20 × 3 lines."""
    (each,) = demo.reckoned
    edits = 0
    for figure in each.figures:
        pattern, model_set = figure.pattern, figure.pattern.thread_sets[0].id
        counts = {work.line.mark: work.total_stitches for work in figure.works}
        before = shapes_for(pattern, counts)
        for place, line in enumerate(pattern.key):
            for colour in list(pattern.thread_sets[0].card.colours.values())[::6]:
                edited = replace(line, threads={**line.threads, model_set: (colour,)})
                key = (*pattern.key[:place], edited, *pattern.key[place + 1 :])
                assert shapes_for(replace(pattern, key=key), counts) == before
                edits += 1
    assert edits > 200


def test_a_line_added_anywhere_moves_none_and_gets_a_free_shape(demo):
    (each,) = demo.reckoned
    for figure in each.figures:
        pattern = figure.pattern
        counts = {work.line.mark: work.total_stitches for work in figure.works}
        before = shapes_for(pattern, counts)
        for place in range(len(pattern.key) + 1):
            new = replace(pattern.key[0], mark="*", symbol=None)
            key = (*pattern.key[:place], new, *pattern.key[place:])
            after = shapes_for(replace(pattern, key=key), counts)
            assert after.pop("*") not in before.values()
            assert after == before


def test_what_a_key_line_asks_for_goes_before_what_was_kept(tmp_path):
    """It may also ask for another mark's kept shape, which then is given anew."""
    content = build(
        tmp_path / "content",
        {
            f"{FERN}/symbols.yaml": "symbols:\n  r: disc\n  k: heart\n",
            PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", symbol: heart}'),
        },
    )
    now = shapes(content, "fern")
    assert now["r"] == "heart" and now["k"] not in ("heart", "disc")


@given(
    st.dictionaries(
        st.characters(
            codec="utf-8", exclude_categories=("C", "Z", "M"), exclude_characters=".#\ufffd"
        ),
        st.sampled_from(SHAPE_NAMES),
        min_size=1,
        max_size=8,
    )
)
def test_every_mark_that_a_key_can_have_can_be_kept(tmp_path_factory, kept):
    """Also quotation marks, backslashes, colons and brackets: what was written is what is read."""
    from packetgen.diagnostics import Problems
    from packetgen.load.files import ContentFolder
    from packetgen.load.symbols_file import read_symbols

    unlike = dict(zip(kept, SHAPE_NAMES))
    folder = tmp_path_factory.mktemp("kept")
    (folder / "p").mkdir()
    (folder / "p" / "symbols.yaml").write_text(symbols_file(unlike), "utf-8")
    problems = Problems()
    read = read_symbols(ContentFolder(folder, problems), "p", tuple(unlike), problems)
    assert read == unlike and list(problems) == []


def test_where_the_file_cannot_be_written_the_old_one_stays(tmp_path, monkeypatch):
    content = build(tmp_path / "content", {f"{FERN}/symbols.yaml": "symbols:\n  r: disc\n"})

    def full(*_):
        raise OSError(28, "No space left on device", "symbols.yaml")

    monkeypatch.setattr("packetgen.write.files.os.replace", full)
    said = settled(content, code=2)
    assert "cannot write symbols.yaml: No space left on device" in said
    assert (content / FERN / "symbols.yaml").read_text("utf-8") == "symbols:\n  r: disc\n"


def test_nothing_is_kept_of_content_with_a_fault(tmp_path):
    content = build(tmp_path / "content", {PATTERN: ("colour: k, path", "colour: K, path")})
    assert "nothing was written" in settled(content, code=1)
    assert not (content / FERN / "symbols.yaml").exists()


def test_other_words_for_shapes_are_no_names_themselves_and_mean_one_that_there_is():
    assert not {*SHAPE_WORDS} & {*SHAPE_NAMES}
    assert {*SHAPE_WORDS.values()} <= {*SHAPE_NAMES}
