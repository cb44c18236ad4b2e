"""One pattern as a piece of work that any process can do, straight onto the disk."""

import copyreg
import hashlib
import logging
import time
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING, Any

from packetgen.digest import Keep
from packetgen.model import Series
from packetgen.pipeline.packets import cover_path, packet_files
from packetgen.reckon.figures import Figures
from packetgen.record import Output
from packetgen.write import Staging

if TYPE_CHECKING:
    from packetgen.render.templates import Environment

_LOG = logging.getLogger("packetgen.jobs")


def _read_only(mapping: dict[Any, Any]) -> MappingProxyType[Any, Any]:
    return MappingProxyType(mapping)


# A mapping that nobody may change travels to another process as a copy, and is one again there.
copyreg.pickle(MappingProxyType, lambda mapping: (_read_only, (dict(mapping),)))


@dataclass(frozen=True)
class PatternJob:
    """All that is to be made of one pattern, and from what."""

    series: Series  # as its packet may know it
    figures: Figures
    packet: bool
    pictures: str  # 'out', 'part' (only a close-up) or '' (none)
    editions: tuple[str, ...] | None
    recipe: str  # a name for all that the packet is made from
    own_templates: Path | None


def do(job: PatternJob, keep: Keep, staging: Staging) -> dict[str, Output]:
    """Set the packet and write it, and draw the pictures for whoever asks `keep` for them later; what was
    written. Raises EngineComplaint, TemplateFault, OSError."""
    from packetgen.render.pictures import cover_jpeg, pattern_pictures

    since_s, name = time.perf_counter(), job.figures.pattern.id
    if job.pictures:
        pattern_pictures(job.series, job.figures, job.pictures == "out", keep)
        _LOG.debug("%s: pictures drawn (%.2f s)", name, time.perf_counter() - since_s)
    if not job.packet:
        return {}
    since_s = time.perf_counter()
    cover = cover_jpeg(job.figures, keep)
    files = packet_files(
        job.series,
        job.figures,
        cover,
        None if job.editions is None else frozenset(job.editions),
        environment_of(job.own_templates),
    )
    files[cover_path(job.series, job.figures.pattern)] = cover
    of = job.series.id
    outputs = {path: put(staging, path, data, of, job.recipe) for path, data in files.items()}
    _LOG.debug("%s: packet set (%.2f s)", name, time.perf_counter() - since_s)
    return outputs


def put(staging: Staging, path: str, data: bytes, series_id: str, recipe: str = "") -> Output:
    """Write one file of the next build."""
    staging.write(path, data)
    return Output(hashlib.sha256(data).hexdigest(), len(data), series_id, recipe)


@cache
def environment_of(own_templates: Path | None) -> "Environment":
    """The templates' environment, once in each process."""
    from packetgen.render.templates import environment

    return environment(own_templates)
