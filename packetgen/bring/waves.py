"""How many points a Fourier transform is taken over, so that it is quick and needs little room."""

from itertools import count

_PRIMES = (
    2,
    3,
    5,
)  # a length made of other primes takes ten times as long, and five times the room


def points_for(least: int) -> int:
    """The least length from `least` on that is made of twos, threes and fives alone."""
    return next(length for length in count(max(least, 1)) if _is_smooth(length))


def _is_smooth(length: int) -> bool:
    for prime in _PRIMES:
        while length % prime == 0:
            length //= prime
    return length == 1
