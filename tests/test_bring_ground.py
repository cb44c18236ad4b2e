"""What of a drawing is bare cloth: told by its author, seen along soft edges, or asked about. No colour that
somebody has drawn is lost to it."""

import random
import re
from io import BytesIO

import numpy as np
import pytest
from click.testing import CliRunner
from PIL import Image, ImageDraw, ImageFilter

from packetgen.bring.drawing import Drawing, Wish
from packetgen.bring.ground import ground_of, trimmed, with_bare
from packetgen.cli import bring_questions, main
from tests.content_builder import MOSS, TINY, build, picture

WHITE, BRICK, PEAT, LEAF = "#ffffff", "#a04030", "#6b503a", "#4f7942"
DRAWN = ("#3f6f8f", "#8fb4c9", "#8a97a3", "#e0a03a", "#4a3b2a", "#5a7a4a", "#a03040", "#f2c9a0")
CARD = TINY[MOSS].replace("Moss Stranded", "Drawn").partition("  - ")[0]


@pytest.fixture
def desk(tmp_path, monkeypatch):
    """An author's folder, with a thread card of the very colours that are drawn with."""
    build(tmp_path / "content")
    colours = (*DRAWN, "#ffffff", "#d8d8d8", "#fdf8f0", "#fffff0")
    lines = [
        f'  - {{number: "{n}", name: {chr(97 + n)}, hex: "{one}"}}\n'
        for n, one in enumerate(colours)
    ]
    (tmp_path / "content/threads/drawn.yaml").write_text(CARD + "".join(lines))
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*words: str, code: int = 0, answers: str = "") -> str:
    result = CliRunner().invoke(main, ["bring", *words], input=answers)
    assert result.exit_code == code, result.output
    return result.output


def colours_of(path) -> set[tuple[int, ...]]:
    return {one for _, one in Image.open(path).convert("RGB").getcolors(1 << 20)}


def joined(said: str) -> str:
    return " ".join(said.split())


def rows(path) -> list[str]:
    return [line for line in path.read_text("utf-8").splitlines() if not line.startswith("#")]


def patches(seed: int, pale: str = DRAWN[-1], wide: int = 50, high: int = 64) -> Image.Image:
    """Patches of eight colours on a white ground of which a margin is left, one pixel a stitch."""
    chance = random.Random(seed)
    drawn = Image.new("RGB", (wide, high), WHITE)
    pen = ImageDraw.Draw(drawn)
    for colour in (*DRAWN[:-1], pale, *DRAWN[:5]):
        left, top = chance.randint(3, wide - 14), chance.randint(3, high - 14)
        right = min(left + chance.randint(5, wide // 3), wide - 4)
        bottom = min(top + chance.randint(5, high // 3), high - 4)
        shape = pen.rectangle if chance.random() < 0.5 else pen.ellipse
        shape((left, top, right, bottom), fill=colour)
    left, top = chance.randint(3, wide - 14), chance.randint(3, high - 14)
    pen.rectangle((left, top, left + 7, top + 6), fill=pale)
    return drawn


def large(drawn: Image.Image, cell_px: int = 6) -> Image.Image:
    size = drawn.width * cell_px, drawn.height * cell_px
    return drawn.resize(size, Image.Resampling.NEAREST)


def softened(drawn: Image.Image, how: str) -> Image.Image:
    """Six pixels a stitch, as programs for pictures soften edges."""
    if how.startswith("blur"):
        return large(drawn).filter(ImageFilter.GaussianBlur(float(how.partition(" ")[2])))
    if how == "drawn at ten pixels":
        return large(drawn, 10).resize(large(drawn).size, Image.Resampling.LANCZOS)
    size = drawn.width * 6, drawn.height * 6
    return drawn.resize(size, getattr(Image.Resampling, how.upper()))


SOFT = ("blur 1", "blur 1.5", "blur 2", "bilinear", "bicubic", "lanczos", "drawn at ten pixels")


def is_(drawn: Image.Image, colour: str) -> np.ndarray:
    rgb = tuple(int(colour[n : n + 2], 16) for n in (1, 3, 5))
    return (np.asarray(drawn) == rgb).all(-1)


# --- which colours are bare ---


def test_several_colours_may_be_bare(desk):
    """Each counts, and none is forgotten for the next."""
    (desk / "design.png").write_bytes(picture([[WHITE, BRICK, LEAF, PEAT]]))
    asked = ("--bare", WHITE, "--bare", BRICK, "--bare", "4F7942")
    run("design.png", "--threads", "moss", *asked, "--into", "new")
    assert rows(desk / "new/chart.txt") == ["...p"]


def test_a_colour_of_a_table_may_be_bare_too(desk):
    (desk / "design.csv").write_text(f"{WHITE},{WHITE},{WHITE}\n{WHITE},{BRICK},{LEAF}\n")
    run("design.csv", "--threads", "moss", "--bare", WHITE, "--trim", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["bf"]


def test_where_all_is_bare_that_is_told(desk):
    (desk / "design.png").write_bytes(picture([[WHITE, BRICK]]))
    said = run("design.png", "--threads", "moss", "--bare", WHITE, "--bare", BRICK, code=1)
    assert "there is no stitch in it, all is bare cloth" in said


@pytest.mark.parametrize("how", SOFT)
@pytest.mark.parametrize("seed", range(3))
def test_soft_edges_on_bare_cloth_make_no_further_colour(desk, how, seed, record_property):
    """What is left of them, one square in 500 at most, is told with the option that leaves it bare."""
    drawn = patches(seed)
    softened(drawn, how).save(desk / "design.png")
    said = run("design.png", "--threads", "drawn", "--bare", WHITE, "--into", "new")
    bare = np.array([list(row) for row in rows(desk / "new/chart.txt")]) == "."
    wrong = int((bare != is_(drawn, WHITE)).sum())
    record_property("shown", f"{how}, drawing {seed}: {wrong} of {bare.size} squares wrong")
    assert not (bare & ~is_(drawn, WHITE)).any(), "nothing that was drawn is lost"
    assert wrong <= bare.size / 500
    if wrong:
        options = re.findall(r'--bare "(#[0-9a-f]{6})"', joined(said))
        told = re.search(r"(\d+) squares?.{,50} nearly a bare colour, and stitched", joined(said))
        assert told and int(told[1]) == wrong
        more = [word for one in options for word in ("--bare", one)]
        run("design.png", "--threads", "drawn", "--bare", WHITE, *more, "--into", "again")
        bare = np.array([list(row) for row in rows(desk / "again/chart.txt")]) == "."
        assert int((bare != is_(drawn, WHITE)).sum()) < wrong


@pytest.mark.parametrize("how", ["blur 1", "blur 1.5", "blur 2", "bilinear"])
@pytest.mark.parametrize("pale", ["#fdf8f0", "#fffff0", "#f4f1ee"])
def test_a_pale_colour_that_is_drawn_stays(desk, how, pale):
    """Cream, ivory and a grey are 7 to 3 from white (CIEDE2000); all but a corner of two is kept. Filters that
    overshoot are left out: they make a rim of pale colours white itself."""
    drawn = patches(1, pale)
    softened(drawn, how).save(desk / "design.png")
    run("design.png", "--threads", "drawn", "--bare", WHITE, "--into", "new")
    bare = np.array([list(row) for row in rows(desk / "new/chart.txt")]) == "."
    own = is_(drawn, pale)
    assert own.sum() > 50
    assert int((bare & own).sum()) <= 2


def test_a_glint_within_a_motif_stays():
    """It is as near to white as an edge may be, and one square large; but no bare cloth is beside it."""
    colours = np.array([(255, 255, 255), (107, 80, 58), (255, 250, 250)], np.uint8)
    cells = np.full((9, 9), 1, np.int32)
    cells[2:7, 2:7], cells[4, 4], cells[1, 4] = 2, 3, 3
    left = with_bare(Drawing(cells, colours, soft=True), ("#ffffff",))
    assert int((left.cells > 0).sum()) == 25 and left.cells[1, 4] == 0
    assert left.colours[left.cells[4, 4] - 1].tolist() == [255, 250, 250]
    assert 'add --bare "#fffafa"' in left.told[-1]


def test_of_crisp_drawings_only_the_very_colour_is_bare(desk):
    """One pixel a stitch: a line of a pale grey is meant as it is, however near to white; and told."""
    rows_of = [
        [WHITE] * 5,
        [WHITE, "#fdfdfd", "#fdfdfd", BRICK, WHITE],
        [WHITE, BRICK, BRICK, BRICK, WHITE],
    ]
    (desk / "design.png").write_bytes(picture(rows_of))
    said = joined(run("design.png", "--threads", "moss", "--bare", WHITE))
    assert "5 × 3 stitches, 6 of them worked" in said
    assert (
        "2 squares, the first at row 2, column 2, are nearly a bare colour, and stitched: where that is a soft "
        'edge, add --bare "#fdfdfd".'
    ) in said


def test_a_mark_that_its_file_names_goes_with_its_colour():
    """What is left keeps the wishes that it had, under its new number."""
    colours = np.array([(255, 255, 255), (160, 64, 48), (107, 80, 58)], np.uint8)
    drawing = Drawing(np.array([[1, 2, 3]], np.int32), colours, {1: Wish("w"), 3: Wish("k")})
    left = with_bare(drawing, ("#ffffff",))
    assert left.cells.tolist() == [[0, 1, 2]] and left.wishes == {2: Wish("k")}
    assert left.colours.tolist() == [[160, 64, 48], [107, 80, 58]]


# --- a ground of which nobody has said anything ---


@pytest.mark.parametrize("how", ["crisp", "blur 1.5"])
def test_a_ground_that_would_be_stitched_is_told_with_the_option_to_add(desk, how):
    drawn = patches(2)
    (large(drawn) if how == "crisp" else softened(drawn, how)).save(desk / "design.png")
    ground = int(is_(drawn, WHITE).sum())
    said = joined(run("design.png", "--threads", "drawn"))
    found = re.search(
        r"#ffffff is most of the border and ([\d,]+) of 3,200 stitches; if it is bare cloth, add "
        r'--bare "#ffffff"\.',
        said,
    )
    assert found and int(found[1].replace(",", "")) == pytest.approx(ground, abs=3200 / 500)
    assert "most of the border" not in run("design.png", "--threads", "drawn", "--bare", WHITE)


@pytest.mark.parametrize(
    ("cells", "why"),
    [
        ([[BRICK] * 4] * 4, "one colour alone is the design"),
        ([[WHITE] * 4, [WHITE, BRICK, (0, 0, 0, 0), WHITE]], "some of the cloth is bare already"),
        ([[BRICK, LEAF, PEAT, WHITE]] * 4, "no colour is most of the border"),
        ([[WHITE] * 12] + [[WHITE] + [BRICK, LEAF] * 5 + [WHITE]] * 40, "a frame is no ground"),
    ],
)
def test_what_is_no_ground_is_not_told_as_one(desk, cells, why):
    (desk / "design.png").write_bytes(picture(cells))
    assert "most of the border" not in run("design.png", "--threads", "moss"), why


def test_white_paper_between_a_hedge_and_the_earth_is_told_as_a_ground(desk):
    """It is not most of the border, and a design may well reach two edges; of another colour nothing is said."""
    hedge, earth = [[LEAF] * 12] * 6, [[PEAT] * 12] * 6
    for sky, told in ((WHITE, True), ("#8fb4c9", False)):
        (desk / "design.png").write_bytes(picture([*hedge, *[[sky] * 12] * 8, *earth]))
        said = joined(run("design.png", "--threads", "drawn"))
        words = f"{WHITE} is much of the border and 96 of 240 stitches; if it is bare cloth, add"
        assert (words in said) is told
        assert ("of the border" in said) is told


def test_white_paper_beside_a_large_design_on_the_earth_is_told_as_a_ground(desk):
    """Most of the border, though less than a quarter of the whole."""
    sky = [[WHITE] * 2 + [LEAF] * 16 + [WHITE] * 2] * 14
    rows = [[WHITE] * 20] * 2 + sky + [[PEAT] * 20] * 6
    (desk / "design.png").write_bytes(picture(rows))
    said = joined(run("design.png", "--threads", "drawn"))
    assert f"{WHITE} is most of the border and 96 of 440 stitches; if it is bare cloth, add" in said


@pytest.mark.parametrize(("inside", "told"), [(WHITE, True), ("#fdf8f0", True), ("#8fb4c9", False)])
def test_white_paper_within_a_frame_is_told_and_what_is_pale(desk, inside, told):
    """By hand: 24 × 24 within a frame of one stitch, less a square of 4 × 4: 560 of 676."""
    rows = [[LEAF] * 26, *([LEAF, *[inside] * 24, LEAF] for _ in range(24)), [LEAF] * 26]
    for row in range(5, 9):
        rows[row][5:9] = [BRICK, PEAT, PEAT, BRICK] if row % 2 else [PEAT, BRICK, BRICK, BRICK]
    (desk / "design.png").write_bytes(picture(rows))
    said = joined(run("design.png", "--threads", "drawn"))
    words = (
        f"{inside}, within what is drawn round it, is 560 of 676 stitches; if it is bare cloth, add"
    )
    assert (words in said) is told


def test_a_pale_colour_that_is_less_than_half_is_no_ground(desk):
    rows = [[LEAF] * 20, *([LEAF, *["#fdf8f0"] * 10, *[PEAT] * 9] for _ in range(14)), [LEAF] * 20]
    (desk / "design.png").write_bytes(picture(rows))
    assert "if it is bare cloth" not in joined(run("design.png", "--threads", "drawn"))


def test_threads_that_a_file_names_are_meant():
    colours = np.array([(255, 255, 255), (160, 64, 48)], np.uint8)
    cells = np.array([[1, 1, 1], [1, 2, 1], [1, 1, 1]], np.int32)
    assert ground_of(Drawing(cells, colours)) is not None
    for wish in (Wish("w"), Wish(number="C1", coloured=False)):
        assert ground_of(Drawing(cells, colours, {1: wish})) is None


# --- told where nobody can be asked ---


def _on_white() -> list[list[str]]:
    """A brick square on white."""
    drawn = [[WHITE] * 8 for _ in range(8)]
    for row in range(2, 6):
        drawn[row][2:6] = [BRICK] * 4
    return drawn


def test_a_ground_that_is_stitched_is_told_beside_the_picture_too(desk):
    """With the option that keeps it bare."""
    (desk / "design.png").write_bytes(picture(_on_white()))
    said = run("design.png", "--threads", "moss", "--look", "look.png")
    assert f'; if it is bare cloth, add --bare "{WHITE}".' in " ".join(said.split())
    assert (
        f'Side by side in look.png, with {WHITE} stitched: --bare "{WHITE}" keeps it bare.' in said
    )


def test_that_the_ground_is_stitched_is_the_first_that_is_told(desk):
    """With the thread in which the picture shows it, however strange that is: the nearest that the card has."""
    lemon = TINY[MOSS].partition("  - ")[0] + (
        '  - {number: "E2", name: brick, hex: "#a04030"}\n'
        '  - {number: "L1", name: lemon, hex: "#fff060"}\n'
    )
    (desk / "content/threads/lemon.yaml").write_text(lemon)
    (desk / "design.png").write_bytes(picture(_on_white()))
    said = run("design.png", "--threads", "lemon", "--look", "look.png")
    first = said[: said.index("8 × 8 stitches")]
    assert joined(first) == (
        f"The ground is stitched, in L1 lemon: {WHITE} is most of the border and 48 of 64 stitches; "
        f'if it is bare cloth, add --bare "{WHITE}".'
    )
    assert max(map(len, first.splitlines())) <= 80
    assert (255, 240, 96) in colours_of(desk / "look.png"), "the look shows what is written"


@pytest.mark.parametrize(("answer", "stitched"), [("y", False), ("n", True)])
def test_on_a_terminal_the_look_shows_the_ground_as_was_answered(
    desk, monkeypatch, answer, stitched
):
    monkeypatch.setattr(bring_questions, "_on_terminal", lambda: True)
    (desk / "design.png").write_bytes(picture(_on_white()))
    words = ("design.png", "--threads", "drawn", "--look", "look.png")
    said = run(*words, answers=f"{answer}\n")
    assert said.index("Is that bare cloth") < said.index("stitches, ") < said.index("Side by side")
    assert "The ground is stitched" not in said, "it is answered"
    right = Image.open(desk / "look.png").convert("RGB")
    right = right.crop((right.width // 2 + 20, 0, right.width, right.height))
    assert ((255, 255, 255) in {one for _, one in right.getcolors(1 << 20)}) == stitched


@pytest.mark.parametrize("more", [("--bare", WHITE), ("--bare", BRICK)])
def test_nothing_is_told_of_a_ground_when_its_author_has_said_what_is_bare(desk, more):
    (desk / "design.png").write_bytes(picture(_on_white()))
    said = run("design.png", "--threads", "moss", "--look", "look.png", *more)
    assert "Side by side in look.png.\n" in said and "most of the border" not in said


def test_nothing_is_told_of_a_ground_that_is_clear(desk):
    (desk / "design.png").write_bytes(picture(_on_white()))
    drawn = np.array(Image.open(desk / "design.png").convert("RGBA"))
    drawn[(drawn == 255).all(2), 3] = 0
    Image.fromarray(drawn).save(desk / "design.png")
    said = run("design.png", "--threads", "moss", "--look", "look.png")
    assert "Side by side in look.png.\n" in said and "most of the border" not in said


def test_the_ground_of_a_photograph_is_told_with_the_way_that_there_is(desk):
    (desk / "photo.png").write_bytes(picture(_on_white()))
    said = run("photo.png", "--threads", "moss", "--wide", "8", "--look", "look.png")
    told = f"{WHITE} is most of the border and 48 of 64 stitches; if it is bare cloth, make it clear in "
    assert told in " ".join(said.split()) and "--bare" not in said


# --- asked on a terminal ---


@pytest.mark.parametrize(("answer", "chart"), [("y", [".....", ".bbb.", "....."]), ("n", None)])
def test_on_a_terminal_the_ground_is_asked_for(desk, monkeypatch, answer, chart):
    monkeypatch.setattr(bring_questions, "_on_terminal", lambda: True)
    ground = [[WHITE] * 5, [WHITE, BRICK, BRICK, BRICK, WHITE], [WHITE] * 5]
    (desk / "design.png").write_bytes(picture(ground))
    said = run("design.png", "--threads", "moss", "--into", "new", answers=f"{answer}\n")
    assert "#ffffff is most of the border and 12 of 15 stitches. Is that bare cloth" in said
    assert "add --bare" not in joined(said), "it is answered"
    drawn = rows(desk / "new/chart.txt")
    assert drawn == chart if chart else not any("." in row for row in drawn)


def test_what_is_given_is_not_asked_for(desk, monkeypatch):
    monkeypatch.setattr(bring_questions, "_on_terminal", lambda: True)
    (desk / "design.png").write_bytes(picture([[WHITE] * 3, [WHITE, BRICK, WHITE], [WHITE] * 3]))
    said = run("design.png", "--threads", "moss", "--bare", WHITE)
    assert "Is that" not in said and "3 × 3 stitches, 1 of them worked" in said


# --- rows and columns that have nothing ---


def test_bare_edges_are_told_with_the_option_that_leaves_them_out(desk):
    """Four rows above and below, two columns at the left, one at the right."""
    clear = (0, 0, 0, 0)
    body = [[clear, clear, BRICK, LEAF, clear]]
    (desk / "design.png").write_bytes(picture([[clear] * 5] * 4 + body * 2 + [[clear] * 5] * 4))
    said = joined(run("design.png", "--threads", "moss"))
    words = "rows 1–4 and 7–10 and columns 1–2 and 5"
    assert f"bare: {words}; --trim leaves them out." in said
    said = joined(run("design.png", "--threads", "moss", "--trim", "--into", "new"))
    assert (
        f"bare and left out: {words}; points that you noted on it are less by 2 across and 4 down."
        in said
    )
    assert rows(desk / "new/chart.txt") == ["bf", "bf"]
    (desk / "cut.png").write_bytes(picture([[BRICK, LEAF]]))
    assert "bare:" not in run("cut.png", "--threads", "moss")


def test_one_bare_row_alone_is_called_a_row():
    drawing = Drawing(np.array([[0, 0], [1, 1]], np.int32), np.array([(9, 9, 9)], np.uint8))
    assert trimmed(drawing, False).told == ("bare: row 1; --trim leaves it out",)


def test_a_grid_of_signs_is_trimmed_too(desk):
    (desk / "grid.txt").write_text("......\n..x...\n......\n")
    run("grid.txt", "--threads", "moss", "--code", "x=E2", "--trim", "--into", "new")
    assert rows(desk / "new/chart.txt") == ["x"]


def test_the_picture_beside_a_trimmed_chart_shows_the_same_part(desk):
    """Both halves, the author's and the chart, have bare cloth in the same places."""
    cells = np.full((9, 12, 3), 255, np.uint8)
    cells[2:8, 1:7] = (0x6B, 0x50, 0x3A)
    cells[2, 1] = 255
    large(Image.fromarray(cells), 12).save(desk / "design.png")
    words = ("--bare", "#ffffff", "--look", "look.png")
    run("design.png", "--threads", "moss", *words, "--trim")
    look = np.asarray(Image.open(desk / "look.png").convert("L")).astype(int)
    high, wide = look.shape[0] - 48, (look.shape[1] - 72) // 2
    assert high == wide, "six stitches each way"
    stitch = high // 6
    for left in (24, 48 + wide):
        half = look[24 : 24 + high, left : left + wide]
        middles = half[stitch // 2 :: stitch, stitch // 2 :: stitch] > 180
        assert middles.sum() == 1 and middles[0, 0], "all of it is stitched but the first"


# --- saved with loss ---


def test_a_size_found_in_a_picture_of_much_loss_is_told_as_unsure(desk):
    """Of JPEG quality 10; as it was before, and at quality 95, it is told without a doubt."""
    drawn = large(patches(1), 12)
    for quality, sure in ((10, False), (95, True)):
        file = BytesIO()
        drawn.save(file, "JPEG", quality=quality)
        Image.open(file).save(desk / "design.png")
        said = joined(run("design.png", "--threads", "drawn"))
        assert "a stitch was found to be 12 px wide" in said
        assert ("run into each other" in said and "with --cell" in said) != sure
    drawn.save(desk / "design.png")
    assert "with --cell" not in run("design.png", "--threads", "drawn")


def test_any_colour_that_is_named_is_bare_however_many_others_there_are():
    """Its distance from itself may be told as a hair more than nothing."""
    chance = np.random.default_rng(5)
    for number in (1, 2, 3, 5, 8):
        for _ in range(200):
            colours = chance.integers(0, 256, (number, 3)).astype(np.uint8)
            drawing = Drawing(np.arange(1, number + 1, dtype=np.int32)[None], colours)
            named = "#" + bytes(colours[0]).hex()
            assert with_bare(drawing, (named,)).cells[0, 0] == 0
