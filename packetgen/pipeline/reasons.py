"""Why each file of a build was made anew: which of the things it is made from had changed."""

from collections.abc import Iterator

from packetgen.pipeline.builds import Built
from packetgen.pipeline.survey import CONTENT, OWN, TEMPLATES, series_of

_MOST_NAMED = 3
ANOTHER_DAY = "another day"
OTHER_EDITIONS = "the editions that are asked for"
TAKEN_AWAY = "it was taken away or changed in the build folder"


def reasons(built: Built) -> Iterator[tuple[str, str]]:
    """(path, 'as it was' or what has changed) of every file, then of those that are gone. A packet may be set anew and
    come out to the byte as it was."""
    made = set(built.made)
    for path, output in sorted(built.outputs.items()):
        if path not in made:
            same = path not in built.before or built.before[path].recipe == output.recipe
            yield path, "as it was" if same else "set anew, and came out as it was"
        elif path not in built.before:
            yield path, "new"
        elif path in built.lost:
            yield path, f"made anew: {TAKEN_AWAY}"
        else:
            yield path, f"made anew: {because(path, output.series, built.inputs_changed)}"
    for path in built.gone:
        yield path, "gone"


def because(path: str, series_id: str, inputs_changed: tuple[str, ...]) -> str:
    """Which of the inputs that have changed the file at `path`, of that series, may be made from."""
    may_be = [of for of in inputs_changed if _may_be_in(of, path, series_id)]
    # A file of another pattern is named only where nothing nearer has changed: what designs of a series
    # share is their calendar and their magnets.
    near = [of for of in may_be if _of_same_pattern(of, path)] or may_be
    named = [of.removeprefix(CONTENT) for of in near[:_MOST_NAMED]]
    if len(near) > _MOST_NAMED:
        named.append(f"{len(near) - _MOST_NAMED} more")
    if named:
        return ", ".join(named)
    return ANOTHER_DAY if is_public(path) else OTHER_EDITIONS


def _may_be_in(changed: str, path: str, series_id: str) -> bool:
    """Whether a file that is made from `changed` may be the one at `path`."""
    for folder in (TEMPLATES, OWN):
        if changed.startswith(folder):
            of_public = changed.startswith((f"{folder}site/", f"{folder}share/"))
            return of_public is is_public(path)
    of = series_of(changed)
    return not of or not series_id or of == series_id


def _of_same_pattern(changed: str, path: str) -> bool:
    """Whether a file of the content is in no pattern's folder, or in that of the pattern at `path`."""
    parts = changed.split("/")
    if not series_of(changed) or len(parts) < 5:
        return True
    name = path.rpartition("/")[2]
    return f"/{parts[3]}/" in path or name.startswith((f"{parts[3]}-", f"{parts[3]}."))


def is_public(path: str) -> bool:
    """Whether the file stands in what may be published."""
    return path.startswith(("site/", "share/"))
