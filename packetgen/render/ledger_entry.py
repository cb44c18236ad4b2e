"""One figure of the ledger: its value and unit, and the formula and inputs that it follows from."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum

# A billionth of a millimetre: far finer than any ruler, and coarser than what two machines differ by.
_DIGITS = 9


@dataclass(frozen=True)
class Entry:
    """`of` says what it is a figure of: cloth, set, card, colour, mark, kind, part and the like."""

    figure: str
    of: Mapping[str, object]
    value: float | str
    unit: str
    formula: str
    inputs: Mapping[str, object] = field(default_factory=dict)

    def data(self) -> dict[str, object]:
        return {
            "figure": self.figure,
            "of": plain(self.of),
            "value": plain(self.value),
            "unit": self.unit,
            "formula": self.formula,
            "inputs": plain(self.inputs),
        }


def plain(value: object) -> object:
    """As JSON knows it: mappings, lists, text and numbers; a whole number without a point."""
    if isinstance(value, Mapping):
        return {str(plain(key)): plain(item) for key, item in value.items()}
    if isinstance(value, (tuple, list)):
        return [plain(item) for item in value]
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, float):
        rounded = round(value, _DIGITS)
        return int(rounded) if rounded.is_integer() else rounded
    return value
