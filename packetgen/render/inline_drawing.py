"""A drawing as part of a page: as wide as its column, with words for whoever does not see it."""

import re

from markupsafe import Markup

_OPENING_TAG = re.compile(r'^.*?<svg[^>]*viewBox="([^"]*)"[^>]*>', re.DOTALL)


def inline(svg: str, alt: str) -> Markup:
    """The file `svg` without its own width, height and name spaces, which HTML does without."""
    opening = Markup('<svg viewBox="\\1" role="img" aria-label="{}">').format(alt)
    return Markup(_OPENING_TAG.sub(lambda found: opening.replace("\\1", found[1]), svg, count=1))
