"""A chart that was redrawn with fewer colours: the texts may name those that went."""

import re

from click.testing import CliRunner

from packetgen.cli import main
from tests.content_builder import CHART, FERN, PATTERN, TINY, build, picture


def test_a_colour_that_went_is_told_with_the_lines_of_text_that_name_it(tmp_path, monkeypatch):
    one_set = re.sub(r", spool(: (\[.*?\]|\"..\"))?", "", TINY[PATTERN]).partition("backstitch:")[0]
    texts = {
        f"{FERN}/story.md": "The wall stood there.\n\nIn its ferns and bricks the peat lay dry.\n",
        f"{FERN}/notes.md": "Brickwork is hard to stitch.\n",
    }
    build(tmp_path / "content", {PATTERN: one_set, CHART: "rrbb\nrrrr\n"} | texts)
    (tmp_path / "design.png").write_bytes(picture([["#6b503a", "#4f7942"] * 3] * 4))
    monkeypatch.chdir(tmp_path)
    words = ["bring", "design.png", "--pattern", "fern", "--replace"]
    first = CliRunner().invoke(main, [*words, "--drop-lines"])
    assert first.exit_code == 0, first.output
    assert (
        "No longer in the key: E2 brick.\n"
        "These texts name what is gone; see whether they are still right:\n"
        f"  content/{FERN}/story.md:3:18: 'bricks'\n"
    ) in first.output
    assert "notes.md" not in first.output, "another word"
    again = CliRunner().invoke(main, [*words, "--drop-lines"])
    assert again.exit_code == 0 and "No longer" not in again.output
