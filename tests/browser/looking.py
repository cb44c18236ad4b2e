"""A window on the site: opens pages one after another and notes all that a browser complains of."""

import json
from collections.abc import Iterable
from importlib.resources import files
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Page

# The demo's site on its release day and before: names of the fixtures that build it.
STANDINGS = ("built", "awaited")

_PROBES = Path(__file__).with_name("probes.js").read_text("utf-8")
_AXE = files("axe_playwright_python").joinpath("axe.min.js").read_text("utf-8")


class Window:
    """One window of the browser with its own storage. Options as of Playwright's `new_context`."""

    def __init__(
        self, browser: Browser, width_px: int = 1280, height_px: int = 900, **options
    ) -> None:
        viewport = {"width": width_px, "height": height_px}
        self._context = browser.new_context(viewport=viewport, **options)
        self.page: Page = self._context.new_page()
        self.noise: list[str] = []
        self.answers: list[Any] = []
        self._root = ""
        self.page.on("console", self._said)
        self.page.on("pageerror", lambda error: self.noise.append(f"script: {error}"))
        self.page.on("request", self._asked)
        self.page.on("requestfailed", self._unanswered)
        self.page.on("response", self._answered)

    def __enter__(self) -> "Window":
        return self

    def __exit__(self, *_raised) -> None:
        self._context.close()

    def open(self, root: str, page: str) -> None:
        """Show `page` of the site at `root`, the address of a folder with a slash at its end."""
        self._root = root
        self.noise.clear()
        self.answers.clear()
        self.page.goto(root + page, wait_until="load")

    def ask(self, probe: str, *given: Any) -> Any:
        """The answer to a question of probes.js."""
        call = f"probes.{probe}({json.dumps(given)[1:-1]})"
        return self.page.evaluate(f"(async () => {{ {_PROBES}; return await {call}; }})()")

    def axe(self, options: dict[str, Any]) -> dict[str, Any]:
        """What axe-core finds on the page; the options are those of its `run`."""
        return self.page.evaluate(
            f"(async () => {{ {_AXE}; return await axe.run(document, {json.dumps(options)}); }})()"
        )

    def _said(self, message) -> None:
        if message.type in ("error", "warning"):
            self.noise.append(f"console: {message.text} {message.location.get('url', '')}")

    def _asked(self, request) -> None:
        if not request.url.startswith((self._root, "data:", "blob:")):
            self.noise.append(f"asks elsewhere: {request.url}")

    def _unanswered(self, request) -> None:
        # What the last page still asked for when this one was opened is given up: no fault.
        if request.failure != "net::ERR_ABORTED":
            self.noise.append(f"no answer: {request.url} {request.failure}")

    def _answered(self, response) -> None:
        self.answers.append(response)
        if response.status >= 400:
            self.noise.append(f"{response.status}: {response.url}")


def none(faults: Iterable[str]) -> None:
    """Fail with all faults, one a line."""
    faults = list(faults)
    assert not faults, f"{len(faults)} faults:\n" + "\n".join(faults)
