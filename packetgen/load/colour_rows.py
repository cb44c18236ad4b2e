"""In which rows and columns of a chart a colour of the key lies."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from packetgen.model import KeyLine
from packetgen.nouns import listed

Named = tuple[str, str]  # number and name of a colour
_FEW = 6  # rows, which people count: our own choice
_SHOWN = 4  # runs of rows that one advice names


@dataclass(frozen=True)
class Lying:
    """Of each row, or column, in which of its stitches the colour lies; and the numbers of those in which it does."""

    of_it: tuple[tuple[bool, ...], ...]

    @property
    def numbers(self) -> tuple[int, ...]:
        return tuple(number for number, one in enumerate(self.of_it, 1) if any(one))

    @property
    def on_end(self) -> bool:
        """Whether it lies in rows on end alone."""
        numbers = self.numbers
        return bool(numbers) and numbers[-1] - numbers[0] + 1 == len(numbers)

    @property
    def is_band(self) -> bool:
        """Whether it lies in rows on end alone, in each in the same places."""
        return self.on_end and len({self.of_it[number - 1] for number in self.numbers}) == 1

    @property
    def is_heap(self) -> bool:
        """Whether it lies in few rows on end alone, in each in one run."""
        runs = [re.findall("1+", "".join(map(str, map(int, one)))) for one in self.of_it]
        return self.on_end and len(self.numbers) <= _FEW and max(map(len, runs)) == 1

    @property
    def said(self) -> str:
        """'18 to 20, 42 to 46'; of many runs the first and the last row, with what lies between."""
        runs: list[list[int]] = []
        for number in self.numbers:
            if runs and number == runs[-1][-1] + 1:
                runs[-1].append(number)
            else:
                runs.append([number])
        if len(runs) > _SHOWN:
            return f"{runs[0][0]} to {runs[-1][-1]}, with gaps"
        return listed(
            tuple(f"{run[0]} to {run[-1]}" if len(run) > 1 else f"{run[0]}" for run in runs)
        )


def marks_of(key: Sequence[KeyLine]) -> dict[Named, set[str]]:
    """The marks of each colour."""
    marks: dict[Named, set[str]] = {}
    for line in key:
        for one in (one for colours in line.threads.values() for one in colours):
            marks.setdefault((one.number, one.name), set()).add(line.mark)
    return marks


def lines_of(rows: Sequence[str]) -> Mapping[str, Sequence[str]]:
    """Every 'row' of the chart, and every 'column'."""
    return {"row": list(rows), "column": ["".join(column) for column in zip(*rows)]}


def lying(marks: set[str], lines: Sequence[str]) -> Lying:
    return Lying(tuple(tuple(mark in marks for mark in one) for one in lines))
