"""Why each file of a build was made anew: which of the things it is made from had changed."""

from collections.abc import Iterator

from packetgen.pipeline.builds import CONTENT, OWN, TEMPLATES, Built, series_of
from packetgen.record import Output

_MOST_NAMED = 3


def reasons(built: Built) -> Iterator[tuple[str, str]]:
    """(path, 'as it was' or what has changed) of every file, then of those that are gone."""
    made = set(built.made)
    for path, output in sorted(built.outputs.items()):
        if path not in made:
            yield path, "as it was"
        elif path not in built.before:
            yield path, "new"
        else:
            yield path, f"made anew: {_because(path, output, built)}"
    for path in built.gone:
        yield path, "gone"


def _because(path: str, output: Output, built: Built) -> str:
    may_be = [of for of in built.inputs_changed if _may_be_in(of, path, output)]
    # A file of another pattern is named only where nothing nearer has changed: what designs of a series
    # share is their calendar and their magnets.
    near = [of for of in may_be if _of_same_pattern(of, path)] or may_be
    named = [of.removeprefix(CONTENT) for of in near[:_MOST_NAMED]]
    if len(near) > _MOST_NAMED:
        named.append(f"{len(near) - _MOST_NAMED} more")
    if named:
        return ", ".join(named)
    return "another day" if _is_public(path) else "other options"


def _may_be_in(changed: str, path: str, output: Output) -> bool:
    """Whether a file that is made from `changed` may be the one at `path`."""
    for folder in (TEMPLATES, OWN):
        if changed.startswith(folder):
            of_public = changed.startswith((f"{folder}site/", f"{folder}share/"))
            return of_public is _is_public(path)
    of = series_of(changed)
    return not of or not output.series or of == output.series


def _of_same_pattern(changed: str, path: str) -> bool:
    """Whether a file of the content is in no pattern's folder, or in that of the pattern at `path`."""
    parts = changed.split("/")
    if not series_of(changed) or len(parts) < 5:
        return True
    name = path.rpartition("/")[2]
    return f"/{parts[3]}/" in path or name.startswith((f"{parts[3]}-", f"{parts[3]}."))


def _is_public(path: str) -> bool:
    return path.startswith(("site/", "share/"))
