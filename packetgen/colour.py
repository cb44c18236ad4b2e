"""Colours as seen: CIELAB, the difference of two colours, and the contrast of ink on a tint."""

from functools import cache
from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

Lab = tuple[float, float, float]

# White point D65, 2° observer, x 0.3127 y 0.3290 (IEC 61966-2-1).
WHITE = (0.3127 / 0.3290, 1.0, (1 - 0.3127 - 0.3290) / 0.3290)
# sRGB to XYZ (IEC 61966-2-1), the four digits that the standard prints.
TO_XYZ = (
    (0.4124, 0.3576, 0.1805),
    (0.2126, 0.7152, 0.0722),
    (0.0193, 0.1192, 0.9505),
)
CURVE = _EPSILON, _KAPPA = 216 / 24389, 24389 / 27  # CIE 15:2004


def channels(hex_colour: str) -> tuple[int, int, int]:
    """'#6b503a' → (107, 80, 58)."""
    digits = hex_colour.lstrip("#")
    return int(digits[0:2], 16), int(digits[2:4], 16), int(digits[4:6], 16)


def _linear(channel: int) -> float:
    value = channel / 255
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


@cache  # whole cards are compared with one another
def lab(hex_colour: str) -> Lab:
    """CIELAB of an sRGB colour, D65."""
    rgb = [_linear(channel) for channel in channels(hex_colour)]
    xyz = (sum(weight * value for weight, value in zip(row, rgb)) for row in TO_XYZ)
    fx, fy, fz = (
        ratio ** (1 / 3) if ratio > _EPSILON else (_KAPPA * ratio + 16) / 116
        for ratio in (value / white for value, white in zip(xyz, WHITE))
    )
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def difference(one: Lab, other: Lab) -> float:
    """CIEDE2000 with all weights 1.

    Source: Sharma, Wu, Dalal (2005), Color Research & Application 30(1), 21-30; equation numbers beside.
    """
    (l1, a1, b1), (l2, a2, b2) = one, other
    mean_c7 = ((hypot(a1, b1) + hypot(a2, b2)) / 2) ** 7  # (2), (3)
    g = 0.5 * (1 - sqrt(mean_c7 / (mean_c7 + 25**7)))  # (4)
    a1, a2 = a1 * (1 + g), a2 * (1 + g)  # (5)
    c1, c2 = hypot(a1, b1), hypot(a2, b2)  # (6)
    h1, h2 = _hue(a1, b1), _hue(a2, b2)  # (7)

    delta_h = 0.0  # (10)
    if c1 * c2:
        delta_h = h2 - h1
        if delta_h > 180:
            delta_h -= 360
        elif delta_h < -180:
            delta_h += 360
    big_h = 2 * sqrt(c1 * c2) * sin(radians(delta_h / 2))  # (11)

    mean_l, mean_c = (l1 + l2) / 2, (c1 + c2) / 2  # (12), (13)
    mean_h = h1 + h2  # (14)
    if c1 * c2:
        if abs(h1 - h2) > 180:
            mean_h += 360 if h1 + h2 < 360 else -360
        mean_h /= 2
    t = (
        1
        - 0.17 * cos(radians(mean_h - 30))
        + 0.24 * cos(radians(2 * mean_h))
        + 0.32 * cos(radians(3 * mean_h + 6))
        - 0.20 * cos(radians(4 * mean_h - 63))
    )  # (15)
    turn = 30 * exp(-(((mean_h - 275) / 25) ** 2))  # (16)
    r_c = 2 * sqrt(mean_c**7 / (mean_c**7 + 25**7))  # (17)
    s_l = 1 + 0.015 * (mean_l - 50) ** 2 / sqrt(20 + (mean_l - 50) ** 2)  # (18)
    s_c, s_h = 1 + 0.045 * mean_c, 1 + 0.015 * mean_c * t  # (19), (20)
    r_t = -sin(radians(2 * turn)) * r_c  # (21)
    l_part, c_part, h_part = (l2 - l1) / s_l, (c2 - c1) / s_c, big_h / s_h
    return sqrt(l_part**2 + c_part**2 + h_part**2 + r_t * c_part * h_part)  # (22)


def _hue(a: float, b: float) -> float:
    return degrees(atan2(b, a)) % 360 if a or b else 0.0


SAME, CLOSE, FAR = (
    1.0,
    3.0,
    6.0,
)  # a difference up to the first is the same to the eye, up to the second close, above the third far


def closeness(hex_one: str, hex_other: str) -> str:
    """How near two colours are, in words."""
    return in_words(difference(lab(hex_one), lab(hex_other)))


def in_words(apart: float) -> str:
    """A difference by CIEDE2000 in words. The steps are from memory: about 1 is just visible side by side."""
    for limit, words in ((SAME, "same to the eye"), (CLOSE, "close"), (FAR, "visible")):
        if apart <= limit:
            return words
    return "far"


def luminance(hex_colour: str) -> float:
    """Relative luminance, WCAG 2.2."""
    red, green, blue = (_linear(channel) for channel in channels(hex_colour))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(hex_one: str, hex_other: str) -> float:
    """Contrast ratio, WCAG 2.2: (L1 + 0.05) / (L2 + 0.05) with the lighter above."""
    lighter, darker = sorted((luminance(hex_one), luminance(hex_other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def mix(hex_colour: str, other: str, share: float) -> str:
    """`share` of `other` mixed into `hex_colour`, channel by channel; for tints and blended threads."""
    pairs = zip(channels(hex_colour), channels(other))
    return "#" + "".join(f"{round(a + (b - a) * share):02x}" for a, b in pairs)


def blended(hexes: tuple[str, ...]) -> str:
    """One thread as it is, or two that lie side by side in one needle, as the eye mixes them."""
    return hexes[0] if len(hexes) == 1 else mix(hexes[0], hexes[1], 0.5)
