"""Puts finished files on the disk: a whole build at once, or a single file."""

from collections.abc import Mapping
from pathlib import Path

from packetgen.write.files import replaced, zipped
from packetgen.write.staging import Staging, next_build

__all__ = ["Staging", "next_build", "replaced", "swap_in", "zipped"]


def swap_in(build: Path, files: Mapping[str, bytes], keep_others: bool = False) -> None:
    """Make `build` hold `files` (paths with forward slashes, in its top folders), in one step.

    With `keep_others`, files of the last build that are not in `files` are kept. Raises OSError; the last
    build is then still in its place.
    """
    with next_build(build) as staging:
        for path, data in files.items():
            staging.write(path, data)
        if keep_others:
            staging.keep_rest()
