"""Apostrophes as a printer sets them."""

import re

_APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)")


def curled(text: str) -> str:
    """'Robin's' with the apostrophe that the Markdown of the texts beside it has; what is quoted, and an address, as it is."""
    return text if "://" in text else _APOSTROPHE.sub("’", text)
