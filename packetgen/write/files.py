"""Single files: one replaced whole, several in a zip."""

import io
import os
import zipfile
from collections.abc import Mapping
from pathlib import Path

# Zip files carry a date for every entry; this is the earliest that the format knows.
_NO_DATE = (1980, 1, 1, 0, 0, 0)


def replaced(path: Path, data: bytes) -> bool:
    """Whether the file had to be written, since it did not hold `data` yet; never half written.

    Raises OSError.
    """
    if path.is_file() and path.read_bytes() == data:
        return False
    beside = path.with_name(f"_{path.name}.next")  # a name that nothing reads
    try:
        beside.write_bytes(data)
        os.replace(beside, path)
    finally:
        beside.unlink(missing_ok=True)
    return True


def zipped(files: Mapping[str, bytes]) -> bytes:
    """A zip with these files, the same bytes every time."""
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in files.items():
            entry = zipfile.ZipInfo(name, _NO_DATE)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, data)
    return target.getvalue()
