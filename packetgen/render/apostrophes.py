"""Apostrophes as a printer sets them."""

import re

_APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)")
# 'The hens' gate', unless it may close a quote.
_AT_END, _QUOTE = re.compile(r"(?<=s)'(?=\s+\w)"), re.compile(r"(?<!\w)'")


def curled(text: str) -> str:
    """'Robin's' with the apostrophe that the Markdown of the texts beside it has; what is quoted, and an address, as it is."""
    if "://" in text:
        return text
    set_ = text if _QUOTE.search(text) else _AT_END.sub("’", text)
    return _APOSTROPHE.sub("’", set_)
