"""What these tests need of the machine besides Python, and what to say where it is not there."""

import os
import shutil
from pathlib import Path

import pytest

# Set by the whole check: what is missing is then a failure, where else the test is skipped.
ALL_CHECKS = "PACKETGEN_ALL_CHECKS"

_BROWSERS = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "microsoft-edge",
)
_CACHE = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache") / "packetgen-checks"
_NU_JAR = _CACHE / "node_modules" / "vnu-jar" / "build" / "dist" / "vnu.jar"
# A checker that works for a few seconds gains nothing from code that is compiled twice. The checker needs
# more stack for its schema then.
_SHORT_RUN = ("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xss4m")


def browser_program() -> str:
    """The path of a Chromium, or the test ends here."""
    found = (shutil.which(name) for name in _BROWSERS)
    return next(filter(None, found), None) or _stop(
        "no browser: install Chromium (on Debian: apt-get install chromium)"
    )


def nu_checker() -> list[str]:
    """The command line of the Nu HTML checker, or the test ends here."""
    java = shutil.which("java") or _stop(
        "no Java for the Nu HTML checker: install one (on Debian: apt-get install default-jre-headless)"
    )
    if not _NU_JAR.is_file():
        _stop(f"no Nu HTML checker: npm install --ignore-scripts --prefix {_CACHE} vnu-jar")
    return [java, *_SHORT_RUN, "-jar", str(_NU_JAR)]


def _stop(reason: str) -> None:
    if os.environ.get(ALL_CHECKS):
        pytest.fail(reason, pytrace=False)
    pytest.skip(reason)
