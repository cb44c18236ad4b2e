"""No public picture of a sold pattern gives its chart away, whatever the design and however it is attacked."""

from dataclasses import replace
from functools import cache
from hashlib import sha256
from io import BytesIO
from itertools import product

import numpy as np
import pytest
from PIL import Image, ImageChops, ImageStat

from packetgen.colour import channels
from packetgen.digest import afresh
from packetgen.model import BARE
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import Standing
from packetgen.render import picture_bench, picture_retold, public_picture
from packetgen.render.picture_file import png_bytes
from packetgen.render.picture_retold import retold
from packetgen.render.picture_told import Detail
from packetgen.render.picture_view import DETAIL_PX, detail_view
from packetgen.render.picture_window import bordered, window
from packetgen.render.pictures import WIDTHS_PX, pattern_pictures, site_pictures
from packetgen.render.public_picture import bench, face, gathering, mounted_public
from packetgen.render.share_picture import PICTURE_PX
from packetgen.render.site_pictures import (
    OF_PIECE,
    OF_SERIES,
    SHARE_SIZES_PX,
    Picture,
    Shares,
    SitePictures,
    share_path,
)
from packetgen.render.stitched_picture import stitched_layers
from tests.attacked_designs import DESIGNS, flowers
from tests.chart_attack import (
    Attacker,
    close_up_share_view,
    close_up_view,
    mounted_view,
    share_view,
    without_words,
)
from tests.demo_patterns import PATTERNS
from tests.stitching import pattern, piece, series

# How much of the detail somebody may read out of public pictures: at once, and after undoing what was done.
MOST_AT_ONCE, MOST_DEBLURRED = 0.60, 0.70
# Of fewer cells than this, a share says nothing: with 60, chance alone makes it 6 % more or less.
_FEWEST_CELLS = 60
_AWAITED = "awaited"


@cache
def designed(name):
    return figures(DESIGNS[name](), piece())


@pytest.fixture(scope="module", params=[*PATTERNS, *DESIGNS])
def published(request):
    """(figures, series, every public picture of one design, both before it is out and after)."""
    if request.param in DESIGNS:
        of = designed(request.param)
        its = series(of.pattern)
    else:
        shown = request.getfixturevalue("demo").reckoned[0]
        its = shown.series
        of = next(each for each in shown.figures if each.pattern.id == request.param)
        if not of.pattern.given_away:
            built, before = map(request.getfixturevalue, ("built", "awaited"))
            return of, its, as_built(request.param, built / "site", before / "site")
        # One that is given away is attacked as if it were sold.
        of = replace(of, pattern=replace(of.pattern, given_away=()))
    awaited = replace(of, pattern=replace(of.pattern, id=_AWAITED))
    whole, its_shares = pattern_pictures(its, of, True, afresh)
    part, awaited_shares = pattern_pictures(its, awaited, False, afresh)
    shares = {of.pattern.id: its_shares, _AWAITED: awaited_shares}
    return of, its, SitePictures({of.pattern.id: whole}, {_AWAITED: part}, shares, ())


def as_built(name, site, before):
    """What a build has published of a pattern, out and before that."""
    whole, part = (
        tuple(Picture(path.read_bytes(), *opened(path.read_bytes()).size) for path in paths)
        for paths in (
            [site / name / f"mounted-{width_px}.jpg" for width_px in WIDTHS_PX],
            [before / name / f"detail-{width_px}.jpg" for width_px in WIDTHS_PX],
        )
    )
    shares, awaited_shares = (
        Shares(**{shape: (of / share_path(name, shape)).read_bytes() for shape in SHARE_SIZES_PX})
        for of in (site, before)
    )
    return SitePictures(
        {name: whole}, {_AWAITED: part}, {name: shares, _AWAITED: awaited_shares}, ()
    )


def opened(data):
    return Image.open(BytesIO(data))


@pytest.fixture(scope="module")
def laid(published):
    """Name → (picture, where the chart lies in it) of each of those files."""
    of, its, made = published
    finish, shown = its.finish, face(of, its.finish)
    border = finish.border_mm
    pictures = {
        f"mounted {one.width_px}": (opened(one.data), mounted_view(of, finish, one.width_px))
        for one in made.mounted[of.pattern.id]
    }
    pictures |= {
        f"detail {one.width_px}": (
            opened(one.data),
            close_up_view(of, shown, border, one.width_px),
        )
        for one in made.details[_AWAITED]
    }
    for shape in SHARE_SIZES_PX:
        out, before = (
            without_words(opened(getattr(made.shares[name], shape)), shape)
            for name in (of.pattern.id, _AWAITED)
        )
        pictures[f"share {shape}"] = out, share_view(of, finish, shape)
        pictures[f"teaser {shape}"] = before, close_up_share_view(of, shown, border, shape)
    return pictures


def test_no_chart_can_be_read_out_of_a_public_picture(published, laid):
    """Nor out of all of them laid over one another, which tell no more than one."""
    of, its, _ = published
    attacks = {name: [picture] for name, picture in laid.items()} | {"all": [*laid.values()]}
    for name, pictures in attacks.items():
        attacker = Attacker(pictures, of, its.finish)
        if (attacker.chart.detail & attacker.visible).sum() < _FEWEST_CELLS:
            continue
        at_once, deblurred = attacker.as_published(), attacker.deblurred()
        print(f"{of.pattern.id}, {name}: {at_once:.0%} at once, {deblurred:.0%} deblurred")
        assert at_once <= MOST_AT_ONCE and deblurred <= MOST_DEBLURRED, name


def test_the_other_chart_itself_keeps_the_sold_one(published, laid):
    """Whoever had all of what the pictures are worked from would still not have the chart; and there is
    nothing else in them, so no further picture of it can tell more."""
    of, its, _ = published
    shown = face(of, its.finish)
    attacker = Attacker([laid["mounted 480"]], of, its.finish)
    chart = attacker.chart
    crosses = chart.palette[chart.indices(shown.pattern.grid.rows)]
    whole = attacker.deblurred((crosses, np.ones(crosses.shape[:2], bool)))
    print(f"{of.pattern.id}: {whole:.0%} from the other chart")
    assert whole <= MOST_DEBLURRED


def test_pictures_are_light_to_load(published):
    of, _, made = published
    for widths in (made.mounted[of.pattern.id], made.details[_AWAITED]):
        assert [one.width_px for one in widths] == [480, 800, 1200] == list(WIDTHS_PX)
        assert all(len(one.data) <= WIDTHS_PX[one.width_px] for one in widths)
    assert WIDTHS_PX[800] < 120_000
    for shares in made.shares.values():
        for shape, size in SHARE_SIZES_PX.items():
            data = getattr(shares, shape)
            assert data.startswith(b"\x89PNG") and opened(data).size == size
            assert len(data) < 1_100_000


@pytest.mark.slow
def test_pictures_of_the_bench_and_the_series_are_light_to_load(built):
    for width_px, most_bytes in WIDTHS_PX.items():
        (bench,) = (built / "site").glob(f"finishing-piece-{width_px}.*")
        assert bench.stat().st_size <= most_bytes
    shares = [*(built / "site").glob("share*.png")]
    assert len(shares) == 6 and all(path.stat().st_size < 1_100_000 for path in shares)


@pytest.fixture
def unhidden(monkeypatch):
    """Pictures that hide nothing: small crosses, and places that do not stray."""
    monkeypatch.setattr(picture_retold, "SHOWN_CELLS", 0.5)
    monkeypatch.setattr(picture_retold, "MOST_CROSSES", 500)
    monkeypatch.setattr(picture_retold, "REACHES", (0.0,))


def test_the_attack_reads_a_picture_that_hides_nothing(unhidden):
    """Else its failure above would say nothing. So all the places and scales are right too."""
    of, finish = designed("flowers"), piece()
    shown = face(of, finish)
    its = series(of.pattern)
    awaited = replace(of, pattern=replace(of.pattern, id=_AWAITED))
    made = site_pictures(Standing(its, (of,), (), (awaited,)), afresh)
    views = {
        "mounted": (
            opened(made.mounted["flowers"][-1].data),
            mounted_view(of, finish, 1200),
        ),
        "detail": (
            opened(made.details[_AWAITED][-1].data),
            close_up_view(of, shown, finish.border_mm),
        ),
    }
    for shape in SHARE_SIZES_PX:
        out, before = (
            without_words(opened(getattr(made.shares[name], shape)), shape)
            for name in ("flowers", _AWAITED)
        )
        views[f"share {shape}"] = out, share_view(of, finish, shape)
        views[f"teaser {shape}"] = (
            before,
            close_up_share_view(of, shown, finish.border_mm, shape),
        )
    for name, picture in views.items():
        assert Attacker([picture], of, finish).as_published() > 0.8, name


# --- the other chart ------------------------------------------------------------------------------


def other(of, finish=None):
    return retold(of.pattern, of.cloths[0], (finish or piece()).border_mm)


@pytest.mark.parametrize("name", DESIGNS)
def test_the_other_chart_says_how_much_it_tells(name):
    """What the build measured is what a count of right cells gives, after the best shift."""
    of = designed(name)
    made = other(of)
    border = piece().border_mm / of.cloths[0].cell_mm
    rows, shown = of.pattern.grid.rows, made.pattern.grid.rows
    of_all, right = 0, dict.fromkeys(product((-1, 0, 1), repeat=2), 0)
    for y, row in enumerate(rows):
        for x, mark in enumerate(row):
            near = [
                rows[y + dy][x + dx]
                for dx, dy in ((-1, 0), (1, 0), (0, -1), (0, 1))
                if 0 <= x + dx < len(row) and 0 <= y + dy < len(rows)
            ]
            if set(near) <= {mark}:
                continue
            of_all += 1
            for dx, dy in right:
                across = (x + dx + 0.5 + border) / (len(row) + 2 * border) * len(shown[0])
                down = (y + dy + 0.5 + border) / (len(rows) + 2 * border) * len(shown)
                right[dx, dy] += shown[int(down)][int(across)] == mark
    assert made.told.at_once == pytest.approx(max(right.values()) / of_all)
    assert made.told.at_once <= picture_retold.MOST_AT_ONCE


@pytest.mark.parametrize("name", ["flowers", "lace", "heart", "ripples"])
def test_the_other_chart_stays_on_its_card(name):
    """However far places stray, nobody sees a picture whose edge is cut off."""
    rows = other(designed(name)).pattern.grid.rows
    assert {*rows[0], *rows[-1], *(row[0] for row in rows), *(row[-1] for row in rows)} == {BARE}


def test_a_design_of_one_colour_strays_further_than_one_of_many():
    assert other(designed("heart")).reach_cells > other(designed("flowers")).reach_cells


def test_where_places_stray_depends_on_the_whole_chart():
    """One stitch more, and everything has strayed otherwise: without the chart nobody can stray back."""
    of = flowers()
    rows = of.grid.rows
    changed = replace(of, grid=replace(of.grid, rows=(*rows[:-1], "r" + rows[-1][1:])))
    one, another = (other(figures(each, piece())).pattern.grid.rows for each in (of, changed))
    far_away = [(a, b) for a, b in zip(one[:30], another[:30])]
    assert sum(a != b for a, b in far_away) > 20


def test_the_same_chart_strays_alike_in_every_release():
    """Two tellings of one chart, laid over one another, would tell more than either: whoever changes this
    number gives away more of every chart whose pictures are out already."""
    shown = other(designed("flowers")).pattern.grid.rows
    assert sha256("\n".join(shown).encode()).hexdigest()[:16] == "32af3157c073a56a"


def test_a_design_that_fills_its_edges_is_shown_with_straight_ones():
    """Crosses within the design are stitched and those of its border are bare; it tells no more for that."""
    rows = ["".join("ms"[(x // 5 + y // 4) % 2] for x in range(60)) for y in range(45)]
    made = other(figures(pattern(*rows), piece()))
    shown = [row for row in made.pattern.grid.rows if set(row) != {BARE}]
    assert {row.strip(BARE) for row in shown} == {row.replace(BARE, "") for row in shown}
    assert len({(row.index(row.strip(BARE)), len(row.strip(BARE))) for row in shown}) == 1
    assert made.told.at_once <= picture_retold.MOST_AT_ONCE


def test_a_frame_of_one_stitch_is_shown_whole():
    rows = ["s" * 60, *["s" + "m" * 58 + "s"] * 43, "s" * 60]
    shown = other(figures(pattern(*rows), piece())).pattern.grid.rows
    inside = [row.strip(BARE) for row in shown if row.strip(BARE)]
    edge = {*inside[0], *inside[-1], *(row[0] for row in inside), *(row[-1] for row in inside)}
    assert edge == {"s"} and "m" in inside[len(inside) // 2]


def test_a_sparse_design_tells_no_more_than_may_be_guessed():
    """Single stitches on a wide ground: four of five cells beside them are bare, which needs no picture."""
    rows = ("".join("m" if x % 7 == y % 7 == 3 else BARE for x in range(70)) for y in range(70))
    made = other(figures(pattern(*rows), piece()))
    assert made.told.guessed == pytest.approx(0.8)
    assert made.told.at_once < made.told.guessed and made.told.voted <= made.told.guessed
    assert made.reach_cells < picture_retold.REACHES[-1]


def test_a_few_pebbles_stay_few_in_the_bed():
    """Single stitches, one in thirteen: as crosses they are hardly more, though each cross is larger than a cell."""
    rows = ["".join("t" if (5 * x + y) % 13 == 0 else "m" for x in range(60)) for y in range(45)]
    assert sum(row.count("t") for row in rows) == pytest.approx(60 * 45 / 13, abs=5)
    shown = "".join(other(figures(pattern(*rows), piece())).pattern.grid.rows)
    share = shown.count("t") / (len(shown) - shown.count(BARE))
    assert 0.5 / 13 < share < 2 / 13


def test_what_is_thin_is_not_lost():
    """Lines one stitch wide are still lines in the other chart, and hardly ever broken."""
    rows = ("m" * 63 if y % 9 == 4 else BARE * 63 for y in range(63))
    shown = other(figures(pattern(*rows), piece())).pattern.grid.rows
    crosses = sum(row.count("m") for row in shown)
    assert crosses > 0.9 * 7 * 63 / picture_retold.SHOWN_CELLS


def test_bare_cloth_stays_bare_and_flat_colour_stays_flat():
    """Nothing is dreamt up: a design without detail has none in its picture."""
    shown = other(figures(pattern(*["m" * 40] * 40), piece())).pattern.grid.rows
    assert set("".join(shown)) == {"m", BARE}
    assert set(shown[len(shown) // 2][8:-8]) == {"m"}
    assert Detail(("...", "..."), 1).told(("...", "...")).at_once == 0


def test_a_chart_that_is_given_away_is_shown_as_it_is():
    of = figures(replace(flowers(), given_away=("chart",)), piece())
    shown = face(of, piece()).pattern
    border = (shown.grid.width - of.pattern.grid.width) // 2
    inside = [row[border:-border] for row in shown.grid.rows[border:-border]]
    assert tuple(inside) == of.pattern.grid.rows


def test_a_chart_that_will_be_given_away_is_hidden_until_it_is_out():
    sold, given = (figures(replace(small(), given_away=away), piece()) for away in ((), ("chart",)))
    before, given_before = (
        site_pictures(Standing(series(of.pattern), (), (), (of,)), afresh).details["sprig"]
        for of in (sold, given)
    )
    assert before == given_before


def test_a_huge_design_is_told_in_no_more_crosses_than_a_picture_shows():
    of = figures(pattern(*["mt" * 150, "..tt" * 75] * 100), piece(900, 700))
    assert max(face(of, piece(900, 700)).size) <= picture_retold.MOST_CROSSES


# --- close-ups ------------------------------------------------------------------------------------


def test_a_close_up_shows_where_there_is_most_to_see():
    """A bright flower in a corner of a plain ground."""
    rows = [["m"] * 60 for _ in range(60)]
    for y in range(40, 58):
        for x in range(38, 58):
            rows[y][x] = "ts."[(x + y) % 3]
    view = detail_view(pattern(*("".join(row) for row in rows)))
    assert all(view.shows(x, y) for x, y in ((41, 43), (56, 43), (41, 55), (56, 55)))
    assert not view.shows(10, 10)
    assert DETAIL_PX[0] / DETAIL_PX[1] == 3 / 2


def test_a_close_up_shows_the_bird_and_not_only_the_hedge():
    """A hedge of one green with light between its leaves is the liveliest part of all."""
    rows = [["."] * 60 for _ in range(40)]
    for y in range(4, 36):
        for x in range(2, 40):
            rows[y][x] = "m."[(x + y) % 2]
    for y in range(14, 26):
        for x in range(42, 56):
            rows[y][x] = "ts"[(x // 4 + y // 4) % 2]
    view = detail_view(pattern(*("".join(row) for row in rows)))
    assert all(view.shows(x, y) for x, y in ((30, 20), (44, 16), (48, 24)))


def test_a_window_of_a_pattern_keeps_everything_in_its_place(demo):
    """Drawn by itself it looks as it does in the whole."""
    of = demo.reckoned[0].figures[0].pattern
    whole = stitched_layers(of, of.cloths[0], 12, 0).colour.crop((240, 240, 480, 480))
    part = stitched_layers(window(of, 20, 20, 20, 20), of.cloths[0], 12, 0).colour
    inner = (24, 24, 216, 216)
    off = ImageChops.difference(whole.crop(inner), part.crop(inner))
    assert ImageStat.Stat(off.convert("L")).mean[0] < 4
    assert bordered(of, 3).grid.rows[3][3:-3] == of.grid.rows[0]


# --- what is kept ---------------------------------------------------------------------------------


def keeper():
    kept, made = {}, []

    def keep(name, make):
        if name not in kept:
            made.append(name)
            kept[name] = make()
        return kept[name]

    return keep, made


def small():
    return pattern(*["mts." * 6] * 20)


def test_nothing_is_drawn_again_for_another_story_or_price():
    keep, made = keeper()
    of = small()
    site_pictures(Standing(series(of), (figures(of, piece()),)), keep)
    count = len(made)
    retold_story = replace(of, story_markdown="Quite another story.", about="And another.")
    site_pictures(Standing(series(retold_story), (figures(retold_story, piece()),)), keep)
    assert len(made) == count > 10


@pytest.mark.parametrize(
    ("change", "drawn_again"),
    [
        (lambda of: replace(of, title="Another Sprig"), {"share"}),
        (
            lambda of: replace(of, grid=replace(of.grid, rows=of.grid.rows[:-1])),
            {"share", "mounted"},
        ),
    ],
)
def test_what_is_seen_is_drawn_again_when_it_changes(change, drawn_again):
    """A new title is set in new share pictures; another stitch changes every picture of the design."""
    keep, made = keeper()
    of = small()
    before = site_pictures(Standing(series(of), (figures(of, piece()),)), keep)
    count = len(made)
    of = change(of)
    after = site_pictures(Standing(series(of), (figures(of, piece()),)), keep)
    mounted = {one.data for one in before.mounted["sprig"]} != {
        one.data for one in after.mounted["sprig"]
    }
    assert mounted is ("mounted" in drawn_again)
    assert before.shares["sprig"].wide != after.shares["sprig"].wide
    assert before.shares[OF_PIECE] == after.shares[OF_PIECE]
    assert len(made) > count


def test_a_series_of_which_nothing_is_out_is_shared_with_its_empty_bench():
    """Its share picture is the piece's own, but for the words."""
    of = figures(small(), piece())
    made = site_pictures(Standing(series(of.pattern), (), (), (of,)), afresh)
    assert not made.mounted and list(made.details) == ["sprig"]
    one, other_one = (
        without_words(opened(made.shares[key].upright), "upright") for key in (OF_SERIES, OF_PIECE)
    )
    assert ImageStat.Stat(ImageChops.difference(one, other_one)).mean[0] < 2


def test_a_png_has_every_colour_unless_it_must_be_light():
    busy = Image.merge("RGB", [Image.effect_noise((200, 200), 90) for _ in range(3)])
    assert ImageChops.difference(opened(png_bytes(busy)), busy).getbbox() is None
    light = [opened(png_bytes(busy, most)) for most in (100_000, 1000)]
    assert [len(one.getcolors()) for one in light] == [256, 64]


def test_a_light_png_keeps_the_colour_of_what_is_small_and_bright():
    """A blue bow of a few px on a great deal of uneven cloth, which has more shades than the palette."""
    shade = Image.linear_gradient("L").resize((600, 600)).point(lambda v: 150 + v // 3)
    cloth = Image.merge("RGB", (shade, shade.rotate(90), shade.rotate(180)))
    cloth.paste("#2f6fb0", (300, 300, 316, 316))
    light = opened(png_bytes(cloth, 200_000)).convert("RGB").crop((302, 302, 314, 314))
    mean = ImageStat.Stat(light).mean
    assert max(abs(a - b) for a, b in zip(mean, channels("#2f6fb0"))) < 6


def test_the_designs_of_a_gathering_are_stitched_once_for_all_shapes(monkeypatch):
    stitched = []

    def counted(*of):
        stitched.append(of)
        return stitched_layers(*of)

    monkeypatch.setattr(public_picture, "stitched_layers", counted)
    shown = [face(figures(small(), piece()), piece())] * 3
    for size in ((290, 315), (540, 400)):
        gathering(shown, piece(), *size)
    assert len(stitched) == 1


def test_only_what_lies_near_the_design_is_painted_again(monkeypatch):
    """And so the picture is the one that painting everything gives."""
    of, finish = figures(pattern(*["m" * 40] * 30), piece()), piece()
    quick = mounted_public(face(of, finish), finish, 400)
    monkeypatch.setattr(picture_bench, "_meet", lambda one, other: True)
    whole = (0, 0, 400, picture_bench.scene(finish, 400).height_px)
    monkeypatch.setattr(picture_bench, "_round", lambda *_: whole)
    slow = mounted_public(face(of, finish), finish, 400)
    assert ImageChops.difference(quick, slow).getbbox() is None


@pytest.mark.parametrize("shape", PICTURE_PX)
def test_the_finishing_piece_is_shown_whole_wherever_it_is_shared(shape):
    """With wall all round: no part of it reaches the picture's edge."""
    width, height = PICTURE_PX[shape]
    view = picture_bench.scene(piece(), width, height)
    corners = [view.px(*corner) for part in piece().parts for corner in part.outline]
    assert all(0.04 * width < x < 0.96 * width for x, _ in corners)
    assert all(0.04 * height < y < 0.96 * height for _, y in corners)
    assert bench(piece(), width, height).size == (width, height)
