"""The ledger: another program can reckon every figure again, from its own inputs alone."""

import copy
import json
import re
from math import ceil, dist, floor, sqrt

import jsonschema
import pytest

from packetgen.model import Daisy, Fraction, Knot, Line, Magnets, Stitch
from packetgen.reckon.figures import figures
from packetgen.render.ledger import ledger
from packetgen.render.ledger_schema import schema, schema_file
from packetgen.render.packet import symbols_of
from tests.demo_patterns import CONTENT, PATTERNS
from tests.stitching import HERE, option, pattern, piece, series

# --- the formulas once more, written here from their words alone ------------------------------------


def up(value: float) -> int:
    return ceil(value - 1e-9)


def groups_mm(i):
    return [
        (done * i["each_mm"] + behind * i["travel_mm"], times)
        for done, behind, times in i["groups"]
    ]


def strand_m(i) -> float:
    total = 0.0
    for worked, times in groups_mm(i):
        eased = worked * (1 + i["ease"])
        needlefuls = up(eased / (i["needleful_mm"] - 2 * i["tail_mm"]))
        total += times * (eased + needlefuls * 2 * i["tail_mm"])
    return total / 1000


def shoelace(corners) -> float:
    pairs = zip(corners, [*corners[1:], corners[0]])
    return abs(sum(x * v - u * y for (x, y), (u, v) in pairs)) / 2


def round_it(corners) -> float:
    return sum(dist(a, b) for a, b in zip(corners, [*corners[1:], corners[0]]))


def clipped(corners, left, top, right, bottom):
    """A polygon cut down to a rectangle (Sutherland and Hodgman 1974)."""
    edges = ((0, left, 1), (0, right, -1), (1, top, 1), (1, bottom, -1))
    for axis, at, sign in edges:
        kept = []
        for a, b in zip(corners, [*corners[1:], *corners[:1]]):
            inside_a, inside_b = (sign * (p[axis] - at) >= 0 for p in (a, b))
            if inside_a:
                kept.append(a)
            if inside_a != inside_b:
                share = (at - a[axis]) / (b[axis] - a[axis])
                kept.append([a[k] + share * (b[k] - a[k]) for k in (0, 1)])
        corners = kept
    return corners


def verdict(i) -> str:
    (x, y), (wide, high) = i["at_mm"], i["covered_mm"]
    window = (x, y, x + wide, y + high)
    held = shoelace(clipped(i["panel"], *window) or [[0, 0]])
    lost = sum(shoelace(clipped(one, *window) or [[0, 0]]) for one in i["keep_outs"])
    if abs(held - wide * high) > 1e-3 or lost > 1e-3:
        return "does not fit"
    return "tight" if min(i["free_mm"]) < i["tight_mm"] else "fits"


def pieces(i) -> int:
    def cut(mm):
        return max(up(mm / 25.4 * 8) / 8 * 25.4, up(mm / 5) * 5)

    wide, high = i["cloth_width_mm"], i["cloth_height_mm"]
    w, h = cut(i["piece_width_mm"]), cut(i["piece_height_mm"])

    def times(room, side):
        return max(0, floor(room / side + 1e-9))

    layouts = [0]
    for k in range(times(wide, w) + 1):
        layouts.append(k * times(high, h) + times(wide - k * w, h) * times(high, w))
    for k in range(times(high, h) + 1):
        layouts.append(k * times(wide, w) + times(wide, h) * times(high - k * h, w))
    return max(layouts)


def bead(i) -> str:
    if i["size_mm"] > sqrt(2) * i["cell_mm"]:
        return "crowds"
    return "loose" if i["size_mm"] < i["loose_below"] * i["cell_mm"] else "fits"


def cover(i) -> float:
    ribbon = sqrt(2) * i["section_mm2"] * i["strands"] / i["layer_mm"] / i["cell_mm"]
    return 1 - (1 - min(1, ribbon)) ** 2


def cover_word(i) -> str:
    if i["share"] < i["thin_below"]:
        return "thin"
    return "crowded" if i["share"] > i["crowded_above"] else "good"


def painted(i) -> float:
    edge = i["edges"] * i["perimeter_mm"] * i["thickness_mm"]
    return i["pieces"] * (i["faces"] * i["face_mm2"] + edge)


AGAIN = {
    "cell": lambda i: 25.4 * i["over"] / i["count_per_inch"],
    "finished size": lambda i: i["stitches"] * i["cell_mm"],
    "with margin": lambda i: i["length_mm"] + 2 * i["margin_mm"],
    "eighths of an inch": lambda i: up(i["length_mm"] / 25.4 * 8) / 8,
    "half centimetres": lambda i: up(i["length_mm"] / 5) / 2,
    "pieces from cloth": pieces,
    "most stitches": lambda i: floor(
        (i["panel_mm"] - 2 * (i["border_mm"] + i["trim_mm"])) / i["cell_mm"] + 1e-9
    ),
    "free before": lambda i: i["at_mm"] - i["edge_mm"],
    "free after": lambda i: i["edge_mm"] - i["at_mm"] - i["covered_mm"],
    "verdict": verdict,
    "trim": lambda i: (
        2 * (i["width_mm"] + i["height_mm"]) * i["ratio"] + 4 * i["corner_mm"] + i["overlap_mm"]
    ),
    "magnets by weight": lambda i: up(
        i["heaviest_g"] / (i["holds_g"] * i["through_cloth"] * i["against_sliding"])
    ),
    "the most of these": lambda i: max(i["fewest"], i["asked"], i["by_weight"]),
    "evenly between": lambda i: (
        i["first_mm"] + (i["last_mm"] - i["first_mm"]) * i["step"] / i["steps"]
    ),
    "area": lambda i: shoelace(i["outline"]),
    "perimeter": lambda i: round_it(i["outline"]),
    "painted area": painted,
    "paint": lambda i: (
        sum(area * coats for area, coats in i["parts"])
        / 1e6 / i["covers_m2_per_litre"] * 1000 / (1 - i["loss"])
    ),
    "sum": lambda i: sum(i["parts"]),
    "in chart and close-ups": lambda i: i["in_chart"] + i["in_close_ups"],
    "number of groups": lambda i: sum(times for _, _, times in i["groups"]),
    "places": lambda i: len(i["at"]),
    "share": lambda i: i["part"] / i["whole"] if i["whole"] else 0,
    "worked thread": lambda i: sum(times * worked for worked, times in groups_mm(i)),
    "one strand": strand_m,
    "strand of a colour": lambda i: sum(
        p["one_strand_m"] * p["strands"] / p["colours_in_needle"] for p in i["parts"]
    ),
    "units to buy": lambda i: up(i["strand_m"] / (i["length_m"] * i["strands"])),
    "with spares": lambda i: i["sewn"] + max(i["fewest"], up(i["sewn"] * i["share"])),
    "whole packs": lambda i: up(i["amount"] / i["in_one"]),
    "bead on cell": bead,
    "section": lambda i: i["tex"] / 1000 / (i["fibre_g_per_cm3"] * i["packed"]),
    "cover": cover,
    "cover in words": cover_word,
    "weighed": lambda i: sum(weight * number for weight, number in i["parts"]),
    "hours": lambda i: i["stitches"] / i["stitches_an_hour"],
    "points": lambda i: sum((m > one) + (m > two) for m, one, two in i["measures"]),
    "word for points": lambda i: max(pair for pair in i["words"] if pair[0] <= i["points"])[1],
}  # fmt: skip


@pytest.fixture(scope="module")
def ledgers(demo):
    """Pattern id → the ledger of the demo, as a reader's program has it."""
    each = demo.reckoned[0]
    return {f.pattern.id: json.loads(ledger(each.series, f, symbols_of(f))) for f in each.figures}


def of_everything():
    """A small pattern with every kind of stitch, held by magnets at its sides too."""
    drawn = pattern(
        "mmm.t", "s...t", "s....",
        cloths=(option(14), option(32, 2)),
        fractions=(Fraction(4, 3, "t", Stitch.QUARTER, None),),
        lines=(Line("m", ((1, 1), (4, 1)), False, HERE), Line("s", ((1, 1), (4, 4)), True, HERE)),
        knots=(Knot("t", (2.5, 2.5), HERE),),
        daisies=(Daisy("s", (2, 2), (3, 3), HERE),),
    )  # fmt: skip
    whole = series(drawn, finish=piece(border_mm=40.0, magnets=Magnets(6, 10.0, 2.0, 18.0, 900.0)))
    return whole, figures(drawn, whole.finish)


@pytest.fixture(scope="module")
def small():
    whole, reckoned = of_everything()
    return json.loads(ledger(whole, reckoned, symbols_of(reckoned)))


# --- what a checker needs --------------------------------------------------------------------------


@pytest.mark.parametrize("name", PATTERNS)
def test_every_figure_follows_from_its_own_inputs(ledgers, name):
    """Reckoned again by the table above, which knows nothing of the tool but the formulas' words."""
    entries = ledgers[name]["figures"]
    assert len(entries) > 1500
    for entry in entries:
        again = AGAIN[entry["formula"]](entry["inputs"])
        if isinstance(again, float | int):
            assert entry["value"] == pytest.approx(again, rel=1e-6, abs=1e-6), entry
        else:
            assert entry["value"] == again, entry


def test_so_does_every_figure_of_a_pattern_with_every_kind_of_stitch(small):
    for entry in small["figures"]:
        again = AGAIN[entry["formula"]](entry["inputs"])
        assert entry["value"] == (
            again if isinstance(again, str) else pytest.approx(again, rel=1e-6, abs=1e-6)
        ), entry
    kinds = {entry["of"].get("kind") for entry in small["figures"]}
    assert {"full", "quarter", "lines", "knots", "daisies"} <= kinds


def test_a_wrong_figure_would_be_found(ledgers):
    """The check above can fail: of every formula one figure is changed by a hundredth or to another word,
    and no longer follows from its inputs."""
    first = {e["formula"]: e for e in reversed(ledgers["squash-barrow"]["figures"])}
    for entry in first.values():
        wrong = entry["value"] * 1.01 + 0.01 if not isinstance(entry["value"], str) else "moss"
        again = AGAIN[entry["formula"]](entry["inputs"])
        assert wrong != (again if isinstance(again, str) else pytest.approx(again, rel=1e-6))


def test_every_formula_of_the_list_is_used_and_said_in_words(ledgers, small):
    used = {e["formula"] for one in (small, *ledgers.values()) for e in one["figures"]}
    for one in (small, *ledgers.values()):
        assert used == set(one["formulas"]) == set(AGAIN)
        assert all(len(text) >= 5 for text in one["formulas"].values())


@pytest.mark.parametrize("name", PATTERNS)
def test_no_figure_stands_twice(ledgers, name):
    """A figure is told apart by its name, what it is of, and its unit."""
    names = [
        (e["figure"], e["unit"], json.dumps(e["of"], sort_keys=True))
        for e in ledgers[name]["figures"]
    ]
    assert len(names) == len(set(names))


def figures_named(one, name):
    return [entry for entry in one["figures"] if entry["figure"] == name]


@pytest.mark.parametrize("name", PATTERNS)
def test_one_figure_is_the_input_of_the_next(ledgers, name):
    """Cells, one-strand lengths and the generous figure are the same wherever they are used."""
    one = ledgers[name]
    at = ("cloth", "cloth_colour", "over")
    cells = {tuple(map(e["of"].get, at)): e["value"] for e in figures_named(one, "cell")}
    for entry in figures_named(one, "finished width"):
        if "cloth" in entry["of"]:
            assert entry["inputs"]["cell_mm"] == cells[tuple(map(entry["of"].get, at))]
    strands = {
        (*map(e["of"].get, at), e["of"]["mark"], e["of"]["kind"], e["of"]["way"]): e["value"]
        for e in figures_named(one, "one strand")
    }
    generous = {}
    for entry in figures_named(one, "strand"):
        where = tuple(map(entry["of"].get, at))
        for part in entry["inputs"]["parts"]:
            key = (*where, part["mark"], part["kind"], entry["of"]["way"])
            assert part["one_strand_m"] == strands[key]
        if entry["of"]["way"] == "generous":
            generous[(*where, entry["of"]["set"], entry["of"]["card"], entry["of"]["colour"])] = (
                entry["value"]
            )
    bought = figures_named(one, "to buy")
    assert len(bought) == len(generous)
    for entry in bought:
        key = (*map(entry["of"].get, at), *(entry["of"][k] for k in ("set", "card", "colour")))
        assert entry["inputs"]["strand_m"] == generous[key]


@pytest.mark.parametrize("name", PATTERNS)
def test_stitches_are_those_of_the_author_s_chart(ledgers, name):
    """Counted here in the author's own file: the chart's rows, mark by mark."""
    one = ledgers[name]
    path = CONTENT / "series" / one["pattern"]["series"] / name / "chart.txt"
    rows = [r for r in path.read_text("utf-8").splitlines() if r and not r.startswith("#")]
    assert one["pattern"]["chart"] == rows
    grid = "".join(rows)
    for line in one["pattern"]["key"]:
        mark = line["mark"]
        counted = [e for e in figures_named(one, "stitches") if e["of"]["mark"] == mark]
        assert sum(e["inputs"]["in_chart"] for e in counted) == grid.count(mark)
        small = sum(f["mark"] == mark for f in one["pattern"]["fractions"])
        assert sum(e["value"] for e in counted) == grid.count(mark) + small


@pytest.mark.parametrize("name", PATTERNS)
def test_patches_lose_no_stitch(ledgers, name):
    one = ledgers[name]
    stitches = {
        (e["of"]["mark"], e["of"]["kind"]): e["value"] for e in figures_named(one, "stitches")
    }
    for entry in figures_named(one, "patches"):
        key = (entry["of"]["mark"], entry["of"]["kind"])
        if key in stitches:
            assert (
                sum(done * times for done, _, times in entry["inputs"]["groups"]) == stitches[key]
            )


def test_what_the_packet_says_to_buy_is_what_the_ledger_says(demo, ledgers):
    """For every colour on every cloth in every thread set."""
    for figure in demo.reckoned[0].figures:
        bought = figures_named(ledgers[figure.pattern.id], "to buy")
        assert len(bought) == sum(len(needs) for on in figure.cloths for _, needs in on.needs)
        said = {
            (e["of"]["cloth"], e["of"]["set"], e["of"]["card"], e["of"]["colour"]): e["value"]
            for e in bought
        }
        for on in figure.cloths:
            for thread_set, needs in on.needs:
                for need in needs:
                    key = (on.option.cloth.id, thread_set.id, need.card.id, need.colour.number)
                    assert said[key] == need.units


def test_a_ledger_names_no_path_and_is_the_same_again(demo):
    each = demo.reckoned[0]
    for figure in each.figures:
        data = ledger(each.series, figure, symbols_of(figure))
        assert data == ledger(each.series, figure, symbols_of(figure))
        text = data.decode("utf-8")
        assert str(CONTENT) not in text and "/home" not in text and "/work" not in text
        assert not re.search(r"\b(NaN|Infinity)\b", text)


# --- the schema ------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def validator():
    """Draft 2020-12, by a library of its own."""
    jsonschema.Draft202012Validator.check_schema(schema())
    return jsonschema.Draft202012Validator(json.loads(schema_file()))


@pytest.mark.parametrize("name", PATTERNS)
def test_every_ledger_of_the_demo_is_as_the_schema_says(ledgers, validator, name):
    validator.validate(ledgers[name])


def test_so_is_that_of_a_pattern_with_every_kind_of_stitch(small, validator):
    validator.validate(small)


def first_of(one, formula):
    return next(e for e in one["figures"] if e["formula"] == formula)


def without(place, name):
    del place[name]


BROKEN = {
    "another format": lambda one: one.update(ledger=2),
    "no format": lambda one: without(one, "ledger"),
    "no revision": lambda one: without(one["pattern"], "revision"),
    "a date that is none": lambda one: one["pattern"]["revision"].update(date="last May"),
    "a key line without threads": lambda one: without(one["pattern"]["key"][0], "threads"),
    "a mark of two letters": lambda one: one["pattern"]["key"][0].update(mark="mm"),
    "no chart": lambda one: one["pattern"].update(chart=[]),
    "no figures": lambda one: one.update(figures=[]),
    "a figure without its unit": lambda one: without(one["figures"][0], "unit"),
    "a unit that nobody knows": lambda one: one["figures"][0].update(unit="furlong"),
    "a number written as text": lambda one: one["figures"][0].update(value="1.814"),
    "a word that is a number": lambda one: first_of(one, "verdict").update(value=3),
    "a formula that nobody knows": lambda one: one["figures"][0].update(formula="guess"),
    "an input missing": lambda one: without(first_of(one, "cell")["inputs"], "over"),
    "an input too many": lambda one: first_of(one, "cell")["inputs"].update(moss=1),
    "an input of another formula": lambda one: first_of(one, "cell").update(formula="trim"),
    "an input that is text": lambda one: first_of(one, "cell")["inputs"].update(over="two"),
    "a group of two": lambda one: first_of(one, "one strand")["inputs"]["groups"].append([1, 2]),
    "no strands in the needle": lambda one: first_of(one, "strand of a colour")["inputs"]["parts"][
        0
    ].update(strands=0),
    "a formula with other words": lambda one: one["formulas"].update(cell="a guess"),
    "a formula left out": lambda one: without(one["formulas"], "cell"),
    "something besides": lambda one: one.update(path="/"),
    "a character that is none": lambda one: one["character_map"].update({"E001": "m"}),
    "ease left out": lambda one: without(one["assumptions"]["ease"], "usual"),
}


@pytest.mark.parametrize("slip", BROKEN)
def test_the_schema_refuses_a_ledger_with(small, validator, slip):
    broken = copy.deepcopy(small)
    BROKEN[slip](broken)
    assert broken != small
    assert not validator.is_valid(broken)


def test_figures_follow_what_the_series_assumes():
    """A ledger says what was assumed: with longer tails more thread is written down, and the tails."""
    whole, reckoned = of_everything()
    longer = type(reckoned.assumptions)(tail_mm=80.0)
    other = figures(reckoned.pattern, piece(), assumptions=longer)
    before, after = (json.loads(ledger(whole, one, symbols_of(one))) for one in (reckoned, other))
    assert after["assumptions"]["tail_mm"] == 80
    assert first_of(after, "one strand")["inputs"]["tail_mm"] == 80
    assert first_of(after, "one strand")["value"] > first_of(before, "one strand")["value"]
