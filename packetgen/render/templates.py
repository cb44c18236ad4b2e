"""Finds and fills templates: an author's own file of the same name goes before the project's."""

import traceback
from pathlib import Path

from jinja2 import (
    BytecodeCache,
    ChoiceLoader,
    Environment,
    FileSystemLoader,
    StrictUndefined,
    TemplateError,
    TemplateNotFound,
    TemplateSyntaxError,
)
from jinja2.bccache import Bucket
from markupsafe import Markup

from packetgen import nouns, units
from packetgen.program import project_templates
from packetgen.render.apostrophes import curled
from packetgen.render.prose import prose


def environment(own_templates: Path | None = None) -> Environment:
    """Templates with the formatters of `packetgen.units` as filters; an unknown name is an error."""
    folders = [folder for folder in (own_templates, project_templates()) if folder]
    env = Environment(
        loader=ChoiceLoader([FileSystemLoader(folder) for folder in folders]),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        finalize=_as_set,
        bytecode_cache=_COMPILED,
    )
    env.filters.update(
        inches=units.inches,
        cm=units.centimetres,
        mm=units.millimetres,
        metric=units.metric,
        cut_inches=units.cut_inches,
        cut_cm=units.cut_centimetres,
        size_in=lambda size: units.size_inches(size.width_mm, size.height_mm),
        size_cm=lambda size: units.size_centimetres(size.width_mm, size.height_mm),
        cut_size_in=lambda size: units.cut_size_inches(size.width_mm, size.height_mm),
        cut_size_cm=lambda size: units.cut_size_centimetres(size.width_mm, size.height_mm),
        metres=units.metres,
        hours=units.hours,
        hours_minutes=units.hours_minutes,
        percent=units.percent,
        about_percent=units.about_percent,
        about_length=lambda mm: _and_metric(*units.about_length(mm)[:-1].split(" (")),
        and_metric=_and_metric,
        whole_end=_whole_end,
        plain=units.plain,
        plural=nouns.plural,
        listed=nouns.listed,
        grams=units.grams,
        put_up=units.put_up,
        prose=prose,
        day=lambda day: f"{day.day} {day:%B %Y}",
        thousands=lambda number: f"{number:,}",
    )
    return env


def _as_set(value: object) -> object:
    """What a template prints: plain words with a printer's apostrophes, and HTML as it is."""
    if isinstance(value, str) and not isinstance(value, Markup):
        return curled(value)
    return value


def _and_metric(said: str, metric: str) -> Markup:
    """'3.57 in (9.1 cm)' for running lines, which break between the two systems and not within one."""
    whole = '<span class="unbroken">{}</span>'
    return Markup(f"{whole} {whole}").format(said, f"({metric})")


def _whole_end(name: str) -> str:
    """'Brindle Linen 32' for narrow columns, of which the last line is never the number alone."""
    return "\u00a0".join(name.rsplit(" ", 1)) if name[-1:].isdigit() else name


class _InMemory(BytecodeCache):
    """Templates that were compiled once in this process, or in the one that it was forked from."""

    def __init__(self) -> None:
        self._compiled: dict[str, bytes] = {}

    def load_bytecode(self, bucket: Bucket) -> None:
        if bucket.key in self._compiled:
            bucket.bytecode_from_string(self._compiled[bucket.key])

    def dump_bytecode(self, bucket: Bucket) -> None:
        self._compiled[bucket.key] = bucket.bytecode_to_string()


_COMPILED = _InMemory()


def compile_all(folder: str) -> None:
    """The project's own templates in one of their folders, beforehand."""
    env = environment()
    for name in env.list_templates(filter_func=lambda name: name.startswith(f"{folder}/")):
        env.get_template(name)


class TemplateFault(Exception):
    """A template cannot be filled; says which file and line, in words for whoever wrote it."""


def fill(env: Environment, name: str, **facts: object) -> str:
    """The template `name` filled with `facts`. Raises TemplateFault."""
    try:
        return env.get_template(name).render(**facts)
    except TemplateNotFound as error:
        raise TemplateFault(f"templates/{name}:1:1: there is no template {error.name!r}") from error
    except TemplateSyntaxError as error:
        raise TemplateFault(
            f"templates/{error.name or name}:{error.lineno}:1: {error.message}"
        ) from error
    except (TemplateError, TypeError, AttributeError) as error:
        # The innermost frame that belongs to a template is where its author must look.
        frames = [
            frame
            for frame in traceback.extract_tb(error.__traceback__)
            if "templates" in Path(frame.filename).parts
        ]
        place = f"{name}:1"
        if frames:
            parts = Path(frames[-1].filename).parts
            below = parts[len(parts) - parts[::-1].index("templates") :]
            place = f"{'/'.join(below)}:{frames[-1].lineno}"
        raise TemplateFault(f"templates/{place}:1: {error}") from error
