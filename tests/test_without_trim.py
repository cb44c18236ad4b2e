"""A finishing piece without a trim: nothing of one is cut, bought, reckoned or drawn."""

import re

from packetgen.model import NO_TRIM, Trim
from packetgen.pipeline import proof
from packetgen.reckon.figures import figures
from packetgen.reckon.mounting import trim_mm
from packetgen.reckon.series_list import finishing_rows, series_list
from packetgen.reckon.sizes import Size
from packetgen.render.packet import packet
from packetgen.render.picture_trim import trim_layers
from packetgen.render.templates import environment
from tests.content_builder import FINISH, TINY, build
from tests.stitching import option, pattern, piece, series
from tests.test_series_list import designs

SPRIG = pattern("..mm..", ".mttm.", cloths=(option(14),))
LINE = "trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}\n"


def test_a_piece_without_the_line_has_none(tmp_path):
    checked = proof(build(tmp_path, {FINISH: (LINE, "")}))
    assert not checked.problems.errors
    assert checked.reckoned[0].series.finish.trim == NO_TRIM
    assert all(on.mounting.trim_mm == 0 for on in checked.reckoned[0].figures[0].cloths)


def test_a_word_for_none_is_told_with_what_says_so(tmp_path):
    changed = {FINISH: TINY[FINISH].replace(LINE, "trim: none\n")}
    (line,) = map(str, proof(build(tmp_path, changed)).problems.errors)
    assert line.endswith("'trim' is 'none'; take this line away where there is none")


def test_no_length_of_it_is_reckoned_whatever_the_card():
    assert trim_mm(Size(120.0, 80.0), NO_TRIM) == 0


def test_none_is_bought():
    for trim, listed in ((Trim("straight", 1.0, 20.0), True), (NO_TRIM, False)):
        finish = piece(trim=trim)
        rows = finishing_rows(series_list(designs((20, 20), finish=finish), finish))
        assert ("trim" in {row.item for row in rows}) == listed


def test_the_packet_has_no_column_and_no_word_of_it():
    for trim, columns in ((Trim("straight", 1.0, 20.0), 4), (NO_TRIM, 3)):
        finish = piece(trim=trim)
        of = series(SPRIG, finish=finish)
        html = packet(of, figures(SPRIG, finish), b"", environment()).html
        (table,) = re.findall(r"What to cut</h3>\s*<table.*?</table>", html, re.S)
        (row,) = re.findall(r"<tbody>.*?</tbody>", table, re.S)
        assert row.count("<td>") == columns
        assert (">Trim</th>" in table) == ("The trim is straight" in html) == (columns == 4)


def test_no_edge_of_it_is_drawn():
    light, mask = trim_layers(NO_TRIM, (60, 40), 2.0)
    assert light.size == mask.size == (60, 40) and mask.getextrema() == (0, 0)
