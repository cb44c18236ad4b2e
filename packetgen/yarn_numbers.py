"""Yarn numbers: how fine a thread is, in the five systems that labels use, kept as tex.

Direct systems weigh a length: tex is grams in 1000 m, dtex in 10 000 m, denier in 9000 m (ISO 1144;
ASTM D861 for denier). Indirect systems measure a weight: the metric count Nm is metres in one gram,
the cotton count Ne is hanks of 840 yards in one pound. Yard and pound are exact (1959 agreement), so
Ne 1 is 453.59237 g in 768.096 m.

Plies: 'Ne 50/2' and 'Nm 34/2' are two threads of that count twisted together, and half the count is
left; '140 dtex x 2' is twice 140. What twisting takes up of the length is left out. A stroke after a direct
number is refused, since labels use it for both the ply and the finished thread.
"""

import re
from dataclasses import dataclass

G_PER_POUND = 453.59237
M_PER_HANK = 840 * 0.9144

# tex = number · factor
DIRECT = {"tex": 1.0, "dtex": 0.1, "denier": 1 / 9}
# tex = dividend / number
INDIRECT = {"Nm": 1000.0, "Ne": G_PER_POUND / M_PER_HANK * 1000}

# One strand of a thread that can be parted is finer: from memory.
_COARSE_STRAND_TEX = 75

_NUMBER = r"(\d{1,5}(?:\.\d{1,4})?)"
_INDIRECT = re.compile(rf"(Nm|Ne)\s*{_NUMBER}(?:\s*/\s*(\d{{1,2}}))?", re.ASCII | re.IGNORECASE)
_BEFORE = re.compile(
    rf"(tex|dtex|denier)\s*{_NUMBER}(?:\s*[x×]\s*(\d{{1,2}}))?", re.ASCII | re.IGNORECASE
)
_AFTER = re.compile(
    rf"{_NUMBER}\s*(tex|dtex|denier)(?:\s*[x×]\s*(\d{{1,2}}))?", re.ASCII | re.IGNORECASE
)
_SPELT = {system.casefold(): system for system in (*DIRECT, *INDIRECT)}


@dataclass(frozen=True)
class YarnNumber:
    """A number as a label gives it, of `plies` threads twisted together."""

    system: str  # of DIRECT or INDIRECT
    number: float
    plies: int = 1

    @property
    def tex(self) -> float:
        """Of all plies together: grams in 1000 m."""
        return to_tex(self.system, self.number) * self.plies


def to_tex(system: str, number: float) -> float:
    """Tex of a thread whose `number` in `system` is greater than nought."""
    return DIRECT[system] * number if system in DIRECT else INDIRECT[system] / number


def from_tex(system: str, tex: float) -> float:
    """The number in `system` of a thread of that tex."""
    return tex / DIRECT[system] if system in DIRECT else INDIRECT[system] / tex


def read_yarn_number(text: str) -> YarnNumber | None:
    """'Ne 12/2', 'Nm 34', '225 denier', 'dtex 280', '140 dtex x 2'; None where it is none of these."""
    text = text.strip()
    if match := _INDIRECT.fullmatch(text) or _BEFORE.fullmatch(text):
        system, number, plies = match.groups()
    elif match := _AFTER.fullmatch(text):
        number, system, plies = match.groups()
    else:
        return None
    found = YarnNumber(_SPELT[system.casefold()], float(number), int(plies or 1))
    return found if found.number and found.plies else None


def metres_in(weight_g: float, tex: float, strands: int = 1) -> float:
    """Length of a thread of `strands` strands, each of that tex, that weighs so much."""
    return weight_g / (tex * strands) * 1000


def seems_whole(tex: float, strands: int) -> bool:
    """Whether a number that should be that of one of the strands is rather that of all of them together."""
    return strands > 1 and tex >= _COARSE_STRAND_TEX
