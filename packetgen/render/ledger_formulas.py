"""The formulas of the ledger by name: what each says, and what it is reckoned from.

A reader's program needs no more than these words and a figure's own inputs to reckon the figure again.
Lengths in a formula are in the unit that the name of the input ends with. "Up" means rounded up to a whole
number; what is whole but for a billionth is whole.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.units import MM_PER_INCH


@dataclass(frozen=True)
class Formula:
    """`inputs` name each input with the kind of value that it is: see `ledger_schema.KINDS`."""

    text: str
    inputs: Mapping[str, str]


def _numbers(*names: str) -> dict[str, str]:
    return dict.fromkeys(names, "number")


_STEP = {"groups": "groups", **_numbers("each_mm", "travel_mm")}

FORMULAS: Mapping[str, Formula] = {
    # sizes and cuts
    "cell": Formula(f"{MM_PER_INCH} · over / count_per_inch", _numbers("count_per_inch", "over")),
    "finished size": Formula("stitches · cell_mm", _numbers("stitches", "cell_mm")),
    "with margin": Formula("length_mm + 2 · margin_mm", _numbers("length_mm", "margin_mm")),
    "eighths of an inch": Formula(f"up(length_mm / {MM_PER_INCH} · 8) / 8", _numbers("length_mm")),
    "half centimetres": Formula("up(length_mm / 10 · 2) / 2", _numbers("length_mm")),
    "pieces from cloth": Formula(
        "piece sides first rounded up to the eighth of an inch or the half centimetre, the larger of the "
        "two. Then the most of these: k columns of upright pieces and the rest of the width filled with "
        "turned ones; k rows of upright pieces and the rest of the height filled with turned ones; for "
        "every k from 0 up",
        _numbers("cloth_width_mm", "cloth_height_mm", "piece_width_mm", "piece_height_mm"),
    ),
    # on the finishing piece
    "most stitches": Formula(
        "down((panel_mm − 2 · (border_mm + trim_mm)) / cell_mm)",
        _numbers("panel_mm", "border_mm", "trim_mm", "cell_mm"),
    ),
    "free before": Formula("at_mm − edge_mm", _numbers("at_mm", "edge_mm")),
    "free after": Formula(
        "edge_mm − at_mm − covered_mm", _numbers("at_mm", "edge_mm", "covered_mm")
    ),
    "verdict": Formula(
        "'does not fit' where card and trim at their place are not wholly inside the panel or lie on a part to be "
        "kept out of; else 'tight' where the least of the free lengths is below tight_mm; else 'fits'",
        {
            "panel": "points",
            "keep_outs": "outlines",
            "at_mm": "point",
            "covered_mm": "point",
            "free_mm": "numbers",
            "tight_mm": "number",
        },
    ),
    "trim": Formula(
        "2 · (width_mm + height_mm) · ratio + 4 · corner_mm + overlap_mm",
        _numbers("width_mm", "height_mm", "ratio", "corner_mm", "overlap_mm"),
    ),
    "magnets by weight": Formula(
        "up(heaviest_g / (holds_g · through_cloth · against_sliding))",
        _numbers("heaviest_g", "holds_g", "through_cloth", "against_sliding"),
    ),
    "the most of these": Formula(
        "the largest of fewest, asked and by_weight", _numbers("fewest", "asked", "by_weight")
    ),
    "evenly between": Formula(
        "first_mm + (last_mm − first_mm) · step / steps",
        _numbers("first_mm", "last_mm", "step", "steps"),
    ),
    # paint
    "area": Formula("of the polygon with these corners", {"outline": "points"}),
    "perimeter": Formula("of the polygon with these corners", {"outline": "points"}),
    "painted area": Formula(
        "pieces · (faces · face_mm2 + edges · perimeter_mm · thickness_mm); faces counts the faces "
        "painted, edges is 1 where they are painted too",
        _numbers("pieces", "faces", "face_mm2", "edges", "perimeter_mm", "thickness_mm"),
    ),
    "paint": Formula(
        "Σ area_mm2 · coats / 1 000 000 / covers_m2_per_litre · 1000 / (1 − loss); parts are pairs of "
        "area_mm2 and coats",
        {"parts": "pairs", **_numbers("covers_m2_per_litre", "loss")},
    ),
    # stitches
    "sum": Formula("Σ parts", {"parts": "numbers"}),
    "in chart and close-ups": Formula(
        "in_chart + in_close_ups", _numbers("in_chart", "in_close_ups")
    ),
    "number of groups": Formula("Σ times; groups are done, behind, times", {"groups": "groups"}),
    "places": Formula("how many", {"at": "points"}),
    "share": Formula("part / whole, 0 where there is nothing", _numbers("part", "whole")),
    # thread
    "worked thread": Formula(
        "Σ times · (done · each_mm + behind · travel_mm); groups are done, behind, times", _STEP
    ),
    "one strand": Formula(
        "Σ times · (w + up(w / (needleful_mm − 2 · tail_mm)) · 2 · tail_mm) / 1000, with "
        "w = (done · each_mm + behind · travel_mm) · (1 + ease); groups are done, behind, times",
        {**_STEP, **_numbers("ease", "needleful_mm", "tail_mm")},
    ),
    "strand of a colour": Formula(
        "Σ one_strand_m · strands / colours_in_needle over the parts", {"parts": "needles"}
    ),
    "units to buy": Formula(
        "up(strand_m / (length_m · strands))", _numbers("strand_m", "length_m", "strands")
    ),
    # beads
    "with spares": Formula(
        "sewn + the larger of fewest and up(sewn · share)", _numbers("sewn", "share", "fewest")
    ),
    "whole packs": Formula("up(amount / in_one)", _numbers("amount", "in_one")),
    "bead on cell": Formula(
        "'crowds' where size_mm > √2 · cell_mm; else 'loose' where size_mm < loose_below · cell_mm; else "
        "'fits'",
        _numbers("size_mm", "cell_mm", "loose_below"),
    ),
    # cover
    "section": Formula(
        "tex / 1000 / (fibre_g_per_cm3 · packed)", _numbers("tex", "fibre_g_per_cm3", "packed")
    ),
    "cover": Formula(
        "1 − (1 − the smaller of 1 and √2 · section_mm2 · strands / layer_mm / cell_mm)²",
        _numbers("section_mm2", "strands", "layer_mm", "cell_mm"),
    ),
    "cover in words": Formula(
        "'thin' where share < thin_below, 'crowded' where share > crowded_above, else 'good'",
        _numbers("share", "thin_below", "crowded_above"),
    ),
    # time and difficulty
    "weighed": Formula(
        "Σ weight · number; parts are pairs of weight and number", {"parts": "pairs"}
    ),
    "hours": Formula("stitches / stitches_an_hour", _numbers("stitches", "stitches_an_hour")),
    "points": Formula(
        "for each measure one where it is above the first limit, two where it is above the second, added "
        "up; measures are measure, first limit, second limit",
        {"measures": "groups"},
    ),
    "word for points": Formula(
        "the word of the greatest number of points that is not above these",
        {"points": "number", "words": "words"},
    ),
}
