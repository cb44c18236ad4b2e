"""The rooms of the house: imports point one way, and each library has its own door."""

import ast
from pathlib import Path

import pytest

PACKAGE = Path(__file__).parent.parent / "packetgen"

# A room may import from itself and from rooms before it. Rooms of one line stand side by side.
LINE = (
    (
        *("faults", "cautions", "digest", "edition_names", "markdown_text", "nouns", "offered"),
        *("shape_names", "systemlibs"),
    ),
    ("colour", "diagnostics", "program", "units", "yarn_numbers"),
    ("model",),
    ("load",),
    ("chart_edit", "reckon", "reference"),
    ("bring", "chart"),
    ("render",),
    ("write", "record", "starting"),
    ("pipeline",),
    ("preview",),
    ("cli", "firstrun"),
    ("__main__",),
)
RANK = {room: rank for rank, rooms in enumerate(LINE) for room in rooms}

# Library → the only modules that may import it.
DOORS = {
    "yaml": {"load.yaml_nodes", "load.yaml_events"},
    "shapely": {
        "load.narrow_joints",
        "load.outlines",
        "load.panel_on_wood",
        "load.placed_parts",
        "reckon.outline",
    },
    "dateutil": {"reckon.calendar"},
    "fontTools": {"load.font_files", "render.faces", "render.text_face"},
    "markdown": {"markdown_text"},
    "nh3": {"markdown_text"},
    "jinja2": None,  # its Environment is handed round in render; see below
    "weasyprint": {"render.pdf"},
    "pydyf": {"render.pdf", "render.pdf_charts"},
    "click": {
        "cli",
        "cli.begin",
        "cli.begin_questions",
        "cli.begin_writing",
        "cli.bring",
        "cli.bring_options",
        "cli.bring_questions",
        "cli.bring_writing",
        "cli.build",
        "cli.chart",
        "cli.chart_editing",
        "cli.chart_edits",
        "cli.chart_picture",
        "cli.command_first",
        "cli.common",
        "cli.elsewhere",
        "cli.ending",
        "cli.group",
        "cli.guide",
        "cli.kit",
        "cli.match",
        "cli.not_given",
        "cli.one_pattern",
        "cli.preview",
        "cli.proof",
        "cli.saying",
        "cli.settle",
        "cli.telling",
        "cli.yes_or_no",
    },
    "watchfiles": {"preview.watching"},
    "coloraide": {"reckon.vision"},
    "numpy": {
        "bring.apart",
        "bring.borne_out",
        "bring.brought",
        "bring.cells",
        "bring.comb",
        "bring.cut_edge",
        "bring.lattice",
        "bring.noise",
        "bring.own_colours",
        "bring.choosing",
        "bring.chosen",
        "bring.drawing",
        "bring.drawn",
        "bring.ground",
        "bring.loss",
        "bring.moved",
        "bring.photograph",
        "bring.picture",
        "bring.pixel_chart",
        "bring.reading",
        "bring.speckles",
        "bring.together",
        "bring.written",
        "reckon.patches",
        "render.photo_told",
        "render.picture_file",
        "render.picture_retold",
        "render.picture_told",
        "render.picture_view",
        "render.picture_wander",
        "chart.tints",
    },
    "scipy": {"bring.photograph", "reckon.matching"},
    "svgwrite": {
        "chart.drawing",
        "chart.diagrams",
        "chart.full_size",
        "chart.page_chart",
        "chart.paint_timeline",
        "chart.piece_drawing",
        "chart.size_drawing",
    },
}


def modules():
    for path in sorted(PACKAGE.rglob("*.py")):
        parts = path.relative_to(PACKAGE).with_suffix("").parts
        yield ".".join(parts[:-1] if parts[-1] == "__init__" and len(parts) > 1 else parts), path


def imports(path: Path):
    """Full names of all modules that a file imports, also inside functions."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: write the import out in full"
            yield node.module or ""
            if node.module == "packetgen":
                yield from (f"packetgen.{alias.name}" for alias in node.names)


def room_of(module: str) -> str:
    return module.split(".")[0]


@pytest.mark.parametrize(("module", "path"), modules(), ids=lambda value: str(value).split("/")[-1])
def test_imports_point_one_way(module, path):
    """No room knows a later one, and no room beside it."""
    here = room_of(module)
    if here == "__init__":
        return
    for name in imports(path):
        if not name.startswith("packetgen."):
            continue
        there = room_of(name.removeprefix("packetgen."))
        if there == "__version__":
            continue
        assert there == here or RANK[there] < RANK[here], f"{module} imports {name}"


@pytest.mark.parametrize(("module", "path"), modules(), ids=lambda value: str(value).split("/")[-1])
def test_each_library_is_imported_at_its_own_door(module, path):
    for name in imports(path):
        doors = DOORS.get(name.split(".")[0])
        assert doors is None or module in doors, f"{module} imports {name}"


def test_templates_are_filled_in_render_alone():
    users = {module for module, path in modules() if "jinja2" in set(imports(path))}
    assert users and {room_of(module) for module in users} == {"render"}


def test_pictures_are_made_in_render_and_bring_and_only_read_in_load():
    users = {
        module
        for module, path in modules()
        if any(name.split(".")[0] == "PIL" for name in imports(path))
    }
    assert users and {room_of(module) for module in users} <= {"bring", "load", "render"}


def test_every_room_has_a_place_in_the_line():
    assert {room_of(module) for module, _ in modules()} - {"__init__"} == set(RANK)


def test_the_middle_of_the_house_touches_no_file_and_no_clock():
    """Model, reckon and chart are pure: nothing in them opens, waits or asks the time."""
    forbidden = {"os", "io", "time", "pathlib", "subprocess", "random", "tempfile", "shutil"}
    for module, path in modules():
        if room_of(module) in (
            "model", "chart_edit", "reckon", "reference", "chart", "colour", "units", "yarn_numbers", "diagnostics",
            "faults",
        ):  # fmt: skip
            used = set(imports(path)) & forbidden
            assert not used, f"{module} imports {used}"
