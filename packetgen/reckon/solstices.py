"""When spring, summer, autumn and winter begin in the sky: equinoxes and solstices.

Source: Jean Meeus, Astronomical Algorithms, chapter 27, tables 27.B and 27.C (from memory, and checked in
the tests): good to a minute or so. Where the moment is nearer than that to midnight, the day may be one out.
"""

from datetime import UTC, datetime, timedelta
from functools import cache
from math import cos, radians

# Month → the mean moment, as coefficients of powers of thousands of years from 2000, in Julian days.
_MEAN = {
    3: (2451623.80984, 365242.37404, 0.05169, -0.00411, -0.00057),
    6: (2451716.56767, 365241.62603, 0.00325, 0.00888, -0.00030),
    9: (2451810.21715, 365242.01767, -0.11575, 0.00337, 0.00078),
    12: (2451900.05952, 365242.74049, -0.06223, -0.00823, 0.00032),
}
# What the other planets and the moon add: size, and an angle with its growth in a century, in degrees.
_PERIODIC = (
    (485, 324.96, 1934.136),
    (203, 337.23, 32964.467),
    (199, 342.08, 20.186),
    (182, 27.85, 445267.112),
    (156, 73.14, 45036.886),
    (136, 171.52, 22518.443),
    (77, 222.54, 65928.934),
    (74, 296.72, 3034.906),
    (70, 243.58, 9037.513),
    (58, 119.81, 33718.147),
    (52, 297.17, 150.678),
    (50, 21.02, 2281.226),
    (45, 247.54, 29929.562),
    (44, 325.15, 31555.956),
    (29, 60.93, 4443.417),
    (18, 155.12, 67555.328),
    (17, 288.79, 4562.452),
    (16, 198.04, 62894.029),
    (14, 199.76, 31436.921),
    (12, 95.39, 14577.848),
    (12, 287.11, 31931.756),
    (12, 320.81, 34777.259),
    (9, 227.73, 1222.114),
    (8, 15.45, 16859.074),
)
_J2000 = 2451545.0  # the Julian day of noon on 1 January 2000
_NOON_2000 = datetime(2000, 1, 1, 12, tzinfo=UTC)
# The turning earth lags behind the even time of the theory: by 64 s in 2000 and 69 s in 2020 (from memory).
# How it will turn in fifty years nobody knows; this goes on as it was.
_LAG_S, _LAG_S_PER_YEAR = 64, 0.2


@cache
def sun_turns(year: int, month: int) -> datetime:
    """The equinox of March or September, or the solstice of June or December, in UTC; `month` is 3, 6, 9 or 12."""
    thousands = (year - 2000) / 1000
    mean = sum(factor * thousands**power for power, factor in enumerate(_MEAN[month]))
    centuries = (mean - _J2000) / 36525
    # The earth is quicker in January than in July.
    along = radians(35999.373 * centuries - 2.47)
    speed = 1 + 0.0334 * cos(along) + 0.0007 * cos(2 * along)
    periodic = sum(size * cos(radians(at + growth * centuries)) for size, at, growth in _PERIODIC)
    even_time = mean + 0.00001 * periodic / speed
    lag = timedelta(seconds=_LAG_S + _LAG_S_PER_YEAR * (year - 2000))
    return _NOON_2000 + timedelta(days=even_time - _J2000) - lag
