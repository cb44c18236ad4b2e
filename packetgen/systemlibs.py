"""The system libraries behind the PDF writer: which are missing, and what to type to get them.

The PDF writer (WeasyPrint) loads Pango and its companions, which Python's own installer
cannot bring along. This module is plain standard library, so that it can be asked before
anything else is installed, and so that an installed command can explain a failed import.
"""

from __future__ import annotations

import ctypes
import ctypes.util
import os
import sys
from collections.abc import Sequence
from pathlib import Path

# Name -> file names on (Linux and others, macOS, Windows).
# Source: the names WeasyPrint 70 itself loads, in its module weasyprint.text.ffi.
_FILE_NAMES = {
    "gobject-2.0": ("libgobject-2.0.so.0", "libgobject-2.0.0.dylib", "libgobject-2.0-0.dll"),
    "pango-1.0": ("libpango-1.0.so.0", "libpango-1.0.dylib", "libpango-1.0-0.dll"),
    "harfbuzz": ("libharfbuzz.so.0", "libharfbuzz.0.dylib", "libharfbuzz-0.dll"),
    "harfbuzz-subset": (
        "libharfbuzz-subset.so.0",
        "libharfbuzz-subset.0.dylib",
        "libharfbuzz-subset-0.dll",
    ),
    "fontconfig": ("libfontconfig.so.1", "libfontconfig.1.dylib", "libfontconfig-1.dll"),
    "pangoft2-1.0": ("libpangoft2-1.0.so.0", "libpangoft2-1.0.dylib", "libpangoft2-1.0-0.dll"),
}

# Packages that bring all six; the others follow as dependencies.
PACKAGES = {
    "debian": ("libpango-1.0-0", "libpangoft2-1.0-0", "libharfbuzz-subset0"),
    "fedora": ("pango", "harfbuzz"),
    "macos": ("pango",),
    "windows": ("mingw-w64-ucrt-x86_64-pango",),
}

# Where Homebrew keeps libraries (Apple and Intel processors); macOS looks only in the second.
HOMEBREW_FOLDERS = ("/opt/homebrew/lib", "/usr/local/lib")

# WeasyPrint's own default for Windows, used unless WEASYPRINT_DLL_DIRECTORIES says otherwise.
_WINDOWS_FOLDERS = (
    r"C:\msys64\ucrt64\bin;C:\msys64\mingw64\bin;C:\Program Files\GTK3-Runtime Win64\bin"
)


def missing_libraries(folders: Sequence[str] = ()) -> tuple[str, ...]:
    """The short names of the libraries that cannot be loaded here; empty when all is well.

    ``folders`` are looked in as well as the places where the system looks by itself.
    """
    column = {"darwin": 1, "win32": 2}.get(sys.platform, 0)
    if hasattr(os, "add_dll_directory"):
        for folder in os.getenv("WEASYPRINT_DLL_DIRECTORIES", _WINDOWS_FOLDERS).split(";"):
            try:
                os.add_dll_directory(folder)
            except OSError:
                pass  # a folder that is not there holds no library either
    return tuple(
        name for name, files in _FILE_NAMES.items() if not _loads(name, files[column], folders)
    )


def _loads(name: str, file_name: str, folders: Sequence[str]) -> bool:
    for candidate in (file_name, *(os.path.join(folder, file_name) for folder in folders)):
        try:
            ctypes.CDLL(candidate)
        except OSError:
            continue
        return True
    # On a Mac, Python's search by short name knows more folders than the system's loader.
    return sys.platform == "darwin" and ctypes.util.find_library(name) is not None


def this_system(os_release: str | None = None, platform: str | None = None) -> str:
    """``debian`` (Ubuntu too), ``fedora``, ``macos``, ``windows``, or ``other``.

    ``os_release`` is the text of ``/etc/os-release`` (its format is the freedesktop.org
    standard os-release(5)) and ``platform`` is ``sys.platform``; both are read when not given.
    """
    platform = platform or sys.platform
    if platform in ("darwin", "win32"):
        return {"darwin": "macos", "win32": "windows"}[platform]
    if os_release is None:
        try:
            os_release = Path("/etc/os-release").read_text(encoding="utf-8", errors="replace")
        except OSError:
            os_release = ""
    fields = dict(line.split("=", 1) for line in os_release.splitlines() if "=" in line)
    families = " ".join(fields.get(key, "").strip("\"' ") for key in ("ID", "ID_LIKE")).split()
    for family in families:
        if family in ("debian", "ubuntu"):
            return "debian"
        if family in ("fedora", "rhel"):
            return "fedora"
    return "other"


def what_to_type(system: str, also: Sequence[str] = ()) -> str:
    """The exact words that tell an author how to install the libraries on ``system``.

    ``system`` is a word of :func:`this_system`; ``also`` names further packages of that
    system to install in the same breath. The commands stand on lines of their own.
    """
    packages = " ".join((*also, *PACKAGES.get(system, ())))
    if system == "debian":
        return (
            "Type these two lines in a terminal, or ask whoever looks after this computer to:\n"
            "\n"
            "    sudo apt-get update\n"
            f"    sudo apt-get install -y --no-install-recommends {packages}\n"
        )
    if system == "fedora":
        return (
            "Type this line in a terminal, or ask whoever looks after this computer to:\n"
            "\n"
            f"    sudo dnf install -y {packages}\n"
        )
    if system == "macos":
        return (
            "Type these two lines in Terminal (the first needs Homebrew, from https://brew.sh):\n"
            "\n"
            f"    brew install {packages}\n"
            '    export DYLD_FALLBACK_LIBRARY_PATH="$(brew --prefix)/lib"\n'
        )
    if system == "windows":
        return (
            "Type these two lines in the Command Prompt:\n"
            "\n"
            "    winget install MSYS2.MSYS2\n"
            rf'    C:\msys64\usr\bin\bash -lc "pacman -S --noconfirm {packages}"'
            "\n"
        )
    return (
        "Install Pango, HarfBuzz and Fontconfig with your system's own installer; "
        "these are usually packages with those names.\n"
    )
