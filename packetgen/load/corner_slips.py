"""The corner of what would be a rectangle that has lost a figure, or has two in each other's place."""

from collections.abc import Sequence

from packetgen.load.points import point_said

Corner = tuple[float, float]
Edge = tuple[Corner, Corner]

_MUCH_SMALLER = 0.5  # a rectangle so much smaller than another is hardly meant: our own choice


def rectangle_slips(corners: Sequence[Corner]) -> list[Edge]:
    """Each corner, with the right one, that has the same figures in another order, or all but one of them; of two ways to a
    rectangle the one to a much smaller one is left out."""
    if len(corners) != 4:
        return []
    found = []
    for number, corner in enumerate(corners):
        before, across, behind = (corners[(number + step) % 4] for step in (-1, 2, 1))
        meant = before[0] + behind[0] - across[0], before[1] + behind[1] - across[1]
        level = before[0] == across[0] and across[1] == behind[1]
        upright = before[1] == across[1] and across[0] == behind[0]
        one, other = (point_said(each) for each in (corner, meant))
        if (level or upright) and one != other and much_alike(one, other):
            area = abs((meant[0] - across[0]) * (meant[1] - across[1]))
            found.append((area, (corner, meant)))
    largest = max((area for area, _ in found), default=0)
    return [slip for area, slip in found if area >= _MUCH_SMALLER * largest]


def much_alike(one: str, other: str) -> bool:
    """Whether the two have the same signs, or the one has lost one of the other's."""
    shorter, longer = sorted((one, other), key=len)
    lost = any(longer[:at] + longer[at + 1 :] == shorter for at in range(len(longer)))
    return sorted(one) == sorted(other) or lost
