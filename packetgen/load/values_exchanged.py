"""Two values of a group that changed places, so that neither can be read where it stands: told in one line."""

from collections.abc import Callable, Mapping, Sequence
from itertools import combinations

from packetgen.diagnostics import Problems
from packetgen.load.schema import Field
from packetgen.load.words import said, shown
from packetgen.load.yaml_nodes import Entry, TextNode

# Reads a node as what a field holds: whether it can be, with what is wrong in the problems.
Reader = Callable[[Field, TextNode, Problems], bool]


def tell_exchanged_values(
    failed: Sequence[Entry], fields: Mapping[str, Field], reads: Reader, problems: Problems
) -> None:
    """Of the entries that could not be read, each pair of which either can be read as the other."""
    single = [(key, value) for key, value in failed if isinstance(value, TextNode)]
    for (key, value), (other_key, other) in combinations(single, 2):
        field, other_field = fields[key.value], fields[other_key.value]
        if not (reads(field, other, Problems()) and reads(other_field, value, Problems())):
            continue
        told = Problems()
        reads(field, value, told)
        reads(other_field, other, told)
        for one in told:
            problems.forget(one.code, one.place.path, one.place.line)
        right = f"{key.value}: {shown(other.value)} and {other_key.value}: {shown(value.value)}"
        names = said(key.value), said(other_key.value)
        problems.add(value.place, "values-exchanged", name=names[0], other=names[1], right=right)
