"""Reads an author's content folder into the nouns of `packetgen.model`."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from packetgen.load.content import load_content

__all__ = ["load_content"]


def __getattr__(name: str) -> object:
    """Loaded when it is first asked for: `load.inputs` is needed without any of it."""
    if name != "load_content":
        raise AttributeError(name)
    from packetgen.load.content import load_content

    return load_content
