"""Puts finished files on the disk: a whole build at once, or a single file."""

from packetgen.write.files import replaced, zipped
from packetgen.write.staging import Staging, next_build

__all__ = ["Staging", "next_build", "replaced", "zipped"]
