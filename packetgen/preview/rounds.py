"""One round: the content as it is now → its site, or located lines that say what is wrong with it."""

import logging
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from packetgen.digest import Keep
from packetgen.faults import Level
from packetgen.pipeline import Proof, proof, public_files
from packetgen.preview.kept import Interrupted, Kept, blank_name
from packetgen.preview.watching import Stamps, stamps
from packetgen.reckon.standing import AsOf
from packetgen.render.templates import Environment, TemplateFault, environment

_SITE = "site/"


@dataclass(frozen=True)
class Made:
    """`files` of the site by path in it; None where something is wrong, as `errors` say."""

    files: Mapping[str, bytes] | None
    errors: tuple[str, ...] = ()
    advice: tuple[str, ...] = ()
    blanks: int = 0  # pictures on pages that are not drawn yet


class Rounds:
    """Reads and renders again and again; what one round has drawn serves the next. Writes nothing."""

    def __init__(
        self,
        content: Path,
        templates: Callable[[], Path | None],
        as_of: Callable[[], AsOf],
        kept: Kept,
    ) -> None:
        """`templates` and `as_of` are asked each time: a folder may come and go, and so do days."""
        self._content, self._templates, self._as_of = content, templates, as_of
        self._kept = kept
        self._checked: Proof | None = None
        self._env: Environment | None = None
        self._env_of: tuple[Path | None, Stamps] | None = None

    def look(self) -> Made:
        """The site from the files as they are now, at once: pictures not drawn yet are blank."""
        return self._told(self._read)

    def so_far(self) -> Made:
        """The site of the last `look` with what is drawn by now."""
        return self._told(self._with_blanks)

    def draw(self, enough: Callable[[], bool], tell: Callable[[int], None]) -> Made:
        """The site of the last `look` with all pictures of its pages, or those drawn until there is `enough`.

        `tell` hears after each picture how many are done.
        """
        return self._told(lambda: self._drawn(enough, tell))

    def _told(self, make: Callable[[], Made]) -> Made:
        """Whatever goes wrong becomes a line to read: the server must outlive it."""
        try:
            return make()
        except TemplateFault as error:
            return Made(None, (str(error),))
        except OSError as error:
            return Made(None, (f"{error.filename or self._content}: {error.strerror or error}",))
        except Exception as error:
            logging.getLogger("packetgen.preview").debug("a round failed", exc_info=True)
            name = type(error).__name__
            return Made(None, (f"packetgen: a fault of the tool, not of yours: {name}: {error}",))

    def _read(self) -> Made:
        checked = proof(self._content)
        if not checked.sound:
            return Made(None, *self._said(checked))
        self._checked = checked
        return self._with_blanks()

    def _drawn(self, enough: Callable[[], bool], tell: Callable[[int], None]) -> Made:
        try:
            return self._site(self._kept.or_drawn(enough, tell))
        except Interrupted:
            return self._with_blanks()

    def _with_blanks(self) -> Made:
        site = self._site(self._kept.or_blank())
        names = (blank_name(data) for path, data in (site.files or {}).items() if _is_share(path))
        self._kept.aside = frozenset(filter(None, names))
        return replace(site, blanks=len(self._kept.missing))

    def _site(self, keep: Keep) -> Made:
        checked = self._checked
        if checked is None:  # nothing was good yet
            return Made(None)
        files = public_files(checked, self._environment(), self._as_of(), keep)
        site = {path[len(_SITE) :]: data for path, data in files.items() if path.startswith(_SITE)}
        return Made(site, *self._said(checked))

    def _said(self, checked: Proof) -> tuple[tuple[str, ...], tuple[str, ...]]:
        """Errors and pieces of advice, each a line as the other commands print it."""
        lines: dict[Level, list[str]] = {level: [] for level in Level}
        for problem in checked.problems:
            lines[problem.level].append(f"{self._content.as_posix()}/{problem.printed}")
        return tuple(lines[Level.ERROR]), tuple(lines[Level.ADVICE])

    def _environment(self) -> Environment:
        """Made anew when a template was written: another may now go before the one in use."""
        own = self._templates()
        of = own, stamps((own,) if own else ())
        if self._env is None or of != self._env_of:
            self._env, self._env_of = environment(own), of
        return self._env


def _is_share(path: str) -> bool:
    """Whether it is a share picture: the dearest to draw, and seen on no page."""
    return path.rpartition("/")[2].startswith("share")
