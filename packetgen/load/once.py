"""Names of which each may stand in its list once."""

from collections.abc import Hashable

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import said


class Once:
    """Remembers on which line each name of a list stood first."""

    def __init__(self, what: str, problems: Problems, another: str = "") -> None:
        """`another` is what one of two alike could have anew, such as a name; '' where it must go."""
        self._what, self._problems = what, problems
        self._other = f", or give one of them another {another}" if another else ""
        self._lines: dict[Hashable, int] = {}

    def again(self, name: str, place: Place, meant: Hashable = None) -> bool:
        """Whether it stood there before, which is told.

        `meant` is all that makes an entry the same, where the name alone does not.
        """
        key = name if meant is None else meant
        if key not in self._lines:
            self._lines[key] = place.line
            return False
        line = self._lines[key]
        self._problems.add(
            place, "name-twice", what=self._what, other=self._other, name=said(name), line=line
        )
        return True
