"""Reads an author's content folder into the nouns of `packetgen.model`."""

from packetgen.load.content import load_content

__all__ = ["load_content"]
