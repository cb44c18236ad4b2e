"""Lengths: read with their unit, kept metric, printed in both systems by one formatter each.

The inch is 25.4 mm and the yard 0.9144 m, both exact (international yard and pound agreement, 1959).
"""

import re
from math import ceil, floor

MM_PER_INCH = 25.4
MM_PER_UNIT = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": MM_PER_INCH, "yd": 914.4}

# A sixteenth of the pound of 453.59237 g exactly (the same agreement).
GRAMS_PER_OUNCE = 453.59237 / 16

_MEASURE = re.compile(r"^\s*(\d+(?:\.\d+)?|\d+/\d+|\d+ \d+/\d+)\s*([A-Za-z0-9/]*)\s*$")
# A figure that is whole but for the dust of floating point must not be rounded up to the next step.
_DUST = 1e-9


def parse_number(text: str) -> float:
    """'2', '2.5', '1/2' and '2 1/2' as a number. Raises ValueError (also for a nought below the line)."""
    total = 0.0
    for word in text.split():
        above, _, below = word.partition("/")
        if below and float(below) == 0:
            raise ValueError(text)
        total += float(above) / float(below or 1)
    return total


def split_measure(text: str) -> tuple[float, str] | None:
    """('2 1/2 in') → (2.5, 'in'); unit '' where none is written; None where it is no measure at all."""
    match = _MEASURE.match(text)
    if not match:
        return None
    try:
        return parse_number(match[1]), match[2]
    except ValueError:
        return None


def split_area(text: str) -> tuple[float, float] | None:
    """('50 x 70 cm') → (500.0, 700.0) mm; None where it is no width and height, or one of them is nought."""
    width, times, rest = text.replace("×", "x").partition("x")
    height = split_measure(rest)
    wide = split_measure(f"{width} {height[1]}") if times and height else None
    if not wide or not height or wide[1] not in MM_PER_UNIT or not wide[0] * height[0]:
        return None
    return wide[0] * MM_PER_UNIT[wide[1]], height[0] * MM_PER_UNIT[wide[1]]


def up_to_step(value: float, step: float) -> float:
    """The smallest multiple of `step` that is not below `value`."""
    return ceil(value / step - _DUST) * step


def _rounded(value: float, places: int) -> str:
    """To so many decimals, a half up, as it is done by hand; Python's own way is to the even one, or to where the
    figure lies in twos."""
    step = 10**places
    return f"{floor(value * step + 0.5 + _DUST) / step:.{places}f}"


def inches(mm: float) -> str:
    """Two decimals: how a finished size is printed. 152.4 → '6.00 in'."""
    return f"{_rounded(mm / MM_PER_INCH, 2)} in"


def centimetres(mm: float) -> str:
    """One decimal: 63.5 → '6.4 cm'."""
    return f"{_rounded(mm / 10, 1)} cm"


def metric(mm: float) -> str:
    """As a ruler is read: 63.5 → '6.4 cm', and what is less than a centimetre 2.25 → '2.3 mm'."""
    return millimetres(mm) if mm < 10 else centimetres(mm)


def millimetres(mm: float) -> str:
    """Of wood, to a tenth: 4.5 → '4.5 mm', 208.0 → '208 mm'."""
    return f"{plain(float(_rounded(mm, 1)))} mm"


def cut_inches(mm: float) -> str:
    """Rounded up to the eighth of an inch, as on a cutting ruler: 311 → '12 1/4 in'."""
    eighths = round(up_to_step(mm / MM_PER_INCH, 1 / 8) * 8)
    whole, part = divmod(eighths, 8)
    if not part:
        return f"{whole} in"
    above, below = part, 8
    while above % 2 == 0:
        above, below = above // 2, below // 2
    fraction = f"{above}/{below}"
    return f"{whole} {fraction} in" if whole else f"{fraction} in"


def cut_centimetres(mm: float) -> str:
    """Rounded up to the half centimetre: 311 → '31.5 cm'."""
    halves = round(up_to_step(mm / 10, 0.5) * 2)
    return f"{halves // 2} cm" if halves % 2 == 0 else f"{halves / 2:.1f} cm"


def size_inches(width_mm: float, height_mm: float) -> str:
    """(152.4, 101.6) → '6.00 × 4.00 in'."""
    return f"{inches(width_mm).removesuffix(' in')} × {inches(height_mm)}"


def size_centimetres(width_mm: float, height_mm: float) -> str:
    """(152.4, 101.6) → '15.2 × 10.2 cm'."""
    return f"{centimetres(width_mm).removesuffix(' cm')} × {centimetres(height_mm)}"


def cut_size_inches(width_mm: float, height_mm: float) -> str:
    """(311, 100) → '12 1/4 × 4 in', each rounded up to the eighth."""
    return f"{cut_inches(width_mm).removesuffix(' in')} × {cut_inches(height_mm)}"


def cut_size_centimetres(width_mm: float, height_mm: float) -> str:
    """(311, 100) → '31.5 × 10 cm', each rounded up to the half."""
    return f"{cut_centimetres(width_mm).removesuffix(' cm')} × {cut_centimetres(height_mm)}"


def metres(length_m: float) -> str:
    """One decimal, and never '0.0 m' for thread that is really needed."""
    return f"{_rounded(max(length_m, 0.1), 1)} m" if length_m > 0 else "0 m"


def hours(time_h: float) -> str:
    """Whole hours: 23.4 → '23 hours'."""
    if time_h < 1:
        return "less than an hour"
    whole = round(time_h)
    return f"{whole:,} hour{'' if whole == 1 else 's'}"


def hours_minutes(time_h: float) -> str:
    """To the minute: 2.25 → '2 h 15 min', 0.5 → '30 min', 24 → '24 h'."""
    whole, minutes = divmod(round(time_h * 60), 60)
    if not minutes:
        return f"{whole} h"
    return f"{whole} h {minutes} min" if whole else f"{minutes} min"


def percent(share: float) -> str:
    """One decimal: 0.0118 → '1.2 %'."""
    return f"{share * 100:.1f} %"


def about_percent(share: float) -> str:
    """As short as it can be said: 0.13 → '13 %', 0.125 → '12.5 %'."""
    return f"{plain(round(share * 100, 2))} %"


def about_length(mm: float) -> str:
    """A length in the hand, not to be cut by the rule: 450 → '17 3/4 in (45 cm)'."""
    return f"{cut_inches(mm)} ({plain(round(mm / 10, 2))} cm)"


def grams(mass_g: float) -> str:
    """Whole grams, and ounces of 28.349523125 g to one decimal: 63.1 → '63 g (2.2 oz)'."""
    return f"{mass_g:.0f} g ({mass_g / GRAMS_PER_OUNCE:.1f} oz)"


def put_up(length_m: float) -> str:
    """The length of one unit as sold, in both systems: 45.72 → '45.7 m (50 yd)'."""
    yards = length_m * 1000 / MM_PER_UNIT["yd"]
    return f"{plain(round(length_m, 1))} m ({plain(round(yards, 1))} yd)"


def from_to(low: str, high: str) -> str:
    """('53', '57') → '53 to 57'; what begins and ends alike is said once."""
    return low if low == high else f"{low} to {high}"


def plain(value: float) -> str:
    """A number without an idle '.0': 6.0 → '6', 2.5 → '2.5'."""
    return f"{floor(value)}" if value == floor(value) else f"{value:g}"
