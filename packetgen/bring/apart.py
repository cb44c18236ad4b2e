"""CIELAB and CIEDE2000 for whole arrays: the formulas of `packetgen.colour`, many colours at once.

A photograph has a colour for every stitch, and each is compared with a whole card.
"""

import numpy as np

from packetgen.colour import CURVE, TO_XYZ, WHITE, channels

_EPSILON, _KAPPA = CURVE
_AT_ONCE = 50_000  # colours; some thirty arrays of that size are in hand


def rgb_of(hexes: "list[str] | tuple[str, ...]") -> np.ndarray:
    """n × 3 channels from 0 to 255."""
    return np.array([channels(one) for one in hexes], np.uint8).reshape(-1, 3)


def linear(channel: np.ndarray) -> np.ndarray:
    """Light of an sRGB channel from 0 to 255, as a share of the most (IEC 61966-2-1)."""
    value = np.asarray(channel, np.float64) / 255
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def encoded(light: np.ndarray) -> np.ndarray:
    """The sRGB channel from 0 to 255 of a light from 0 to 1: `linear` the other way."""
    light = np.clip(light, 0, 1)
    value = np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)
    return np.rint(value * 255).astype(np.uint8)


def lab_of(rgb: np.ndarray) -> np.ndarray:
    """CIELAB of sRGB colours, D65: n × 3 channels from 0 to 255 → n × 3."""
    found = np.empty(rgb.shape)
    for start in range(0, len(rgb), _AT_ONCE):
        found[start : start + _AT_ONCE] = _lab_of(rgb[start : start + _AT_ONCE])
    return found


def _lab_of(rgb: np.ndarray) -> np.ndarray:
    xyz = linear(rgb) @ np.array(TO_XYZ).T / np.array(WHITE)
    f = np.where(xyz > _EPSILON, np.cbrt(xyz), (_KAPPA * xyz + 16) / 116)
    fx, fy, fz = np.moveaxis(f, -1, 0)
    return np.stack((116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)), -1)


def apart(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """CIEDE2000 with all weights 1 of CIELAB colours, whose shapes are broadcast.

    Source: Sharma, Wu, Dalal (2005), Color Research & Application 30(1), 21-30; equation numbers beside.
    """
    (l1, a1, b1), (l2, a2, b2) = np.moveaxis(one, -1, 0), np.moveaxis(other, -1, 0)
    mean_c7 = ((np.hypot(a1, b1) + np.hypot(a2, b2)) / 2) ** 7  # (2), (3)
    g = 0.5 * (1 - np.sqrt(mean_c7 / (mean_c7 + 25**7)))  # (4)
    a1, a2 = a1 * (1 + g), a2 * (1 + g)  # (5)
    c1, c2 = np.hypot(a1, b1), np.hypot(a2, b2)  # (6)
    h1, h2 = np.degrees(np.arctan2(b1, a1)) % 360, np.degrees(np.arctan2(b2, a2)) % 360  # (7)
    grey = c1 * c2 == 0

    delta_h = h2 - h1  # (10)
    delta_h = np.where(delta_h > 180, delta_h - 360, delta_h)
    delta_h = np.where(delta_h < -180, delta_h + 360, delta_h)
    delta_h = np.where(grey, 0.0, delta_h)
    big_h = 2 * np.sqrt(c1 * c2) * np.sin(np.radians(delta_h / 2))  # (11)

    mean_l, mean_c = (l1 + l2) / 2, (c1 + c2) / 2  # (12), (13)
    both = h1 + h2  # (14)
    round_the_back = np.where(np.abs(h1 - h2) > 180, np.where(both < 360, 360, -360), 0)
    mean_h = np.where(grey, both, (both + round_the_back) / 2)
    t = (
        1
        - 0.17 * np.cos(np.radians(mean_h - 30))
        + 0.24 * np.cos(np.radians(2 * mean_h))
        + 0.32 * np.cos(np.radians(3 * mean_h + 6))
        - 0.20 * np.cos(np.radians(4 * mean_h - 63))
    )  # (15)
    turn = 30 * np.exp(-(((mean_h - 275) / 25) ** 2))  # (16)
    r_c = 2 * np.sqrt(mean_c**7 / (mean_c**7 + 25**7))  # (17)
    s_l = 1 + 0.015 * (mean_l - 50) ** 2 / np.sqrt(20 + (mean_l - 50) ** 2)  # (18)
    s_c, s_h = 1 + 0.045 * mean_c, 1 + 0.015 * mean_c * t  # (19), (20)
    r_t = -np.sin(np.radians(2 * turn)) * r_c  # (21)
    l_part, c_part, h_part = (l2 - l1) / s_l, (c2 - c1) / s_c, big_h / s_h
    squared = l_part**2 + c_part**2 + h_part**2 + r_t * c_part * h_part
    return np.sqrt(np.maximum(squared, 0))  # (22)


def each_apart(ones: np.ndarray, others: np.ndarray) -> np.ndarray:
    """CIEDE2000 of each of `ones` with the same one of `others`: n."""
    found = np.empty(len(ones))
    for start in range(0, len(ones), _AT_ONCE):
        part = slice(start, start + _AT_ONCE)
        found[part] = apart(ones[part], others[part])
    return found


def table(ones: np.ndarray, others: np.ndarray) -> np.ndarray:
    """CIEDE2000 of each of `ones` with each of `others`: n × m."""
    found = np.empty((len(ones), len(others)))
    step = max(1, _AT_ONCE // max(1, len(others)))
    for start in range(0, len(ones), step):
        found[start : start + step] = apart(ones[start : start + step, None], others[None])
    return found
