"""Whether a design is too small for its drawn picture to tell what it shows."""

from packetgen.model import Pattern

# A drawn picture is told anew in fewer and larger crosses. Where the shorter side has fewer stitches than
# this, too few of them are left to know the design by: chosen by eye.
TOLD_FROM = 30


def only_hinted_at(pattern: Pattern) -> bool:
    """Whether a reader cannot make out what the drawn picture of this design shows."""
    return min(pattern.grid.width, pattern.grid.height) < TOLD_FROM
