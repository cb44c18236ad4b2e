"""The names of the editions of a chart, as authors write them."""

# The packet itself is in colour; each other one is a document of its own.
EDITION_NAMES = ("colour", "black-and-white", "large-print", "tablet", "written")
