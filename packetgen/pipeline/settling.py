"""Keeps the chart symbols as they are."""

from pathlib import Path

from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.pipeline.proofs import Proof


def settle(
    checked: Proof, content_folder: Path, wanted: frozenset[str] | None = None
) -> tuple[Path, ...]:
    """Write down beside each pattern the chart symbols that it has now; return the files that changed.

    `wanted` holds ids of patterns (all when None). Raises OSError.
    """
    from packetgen.chart.assignment import shapes_for
    from packetgen.render.symbols_file import symbols_file
    from packetgen.write import replaced

    changed: list[Path] = []
    for figure in (figure for each in checked.reckoned for figure in each.figures):
        pattern = figure.pattern
        if wanted is None or pattern.id in wanted:
            counts = {work.line.mark: work.total_stitches for work in figure.works}
            path = (content_folder / pattern.place.path).parent / SYMBOLS_FILE
            text = symbols_file(shapes_for(pattern, counts))
            if replaced(path, text.encode()):
                changed.append(path)
    return tuple(changed)
