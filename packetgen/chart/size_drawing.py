"""The finished sizes of a design on several cloths, as outlines at one scale beside a measure."""

from dataclasses import dataclass, replace
from string import ascii_uppercase

import svgwrite

from packetgen.reckon.sizes import Size
from packetgen.units import MM_PER_INCH, centimetres, inches, up_to_step

# Sizes are reckoned from whole threads; less than this between two of them is dust.
_SAME_MM = 0.05
# In units of the drawing, of which a narrow phone shows one a pixel.
_ACROSS, _LARGEST_UNITS_A_MM = 272.0, 4.0
_TEXT, _LINE, _ADVANCE = 12.0, 16.0, 0.56  # size, distance of lines, mean width of a letter in ems
_RISE, _DROP = 11.0, 4.0  # of a line of text above and below its base, with a little air
_EDGE, _INSET, _TICK = 2.0, 6.0, 6.0
_LEAST_BETWEEN_NUMBERS = 26.0
_STEPS = (1, 2, 5, 10, 20, 50)


@dataclass(frozen=True)
class OneSize:
    """A finished size, and the cloths on which the design has it."""

    cloths: tuple[str, ...]
    finished: Size
    per_inch: str  # stitches to the inch
    letter: str = ""  # by which the drawing and a table beside it name the outline


def same_together(sizes: tuple[OneSize, ...]) -> tuple[OneSize, ...]:
    """Each different size once, with all its cloths: the largest first, lettered from A."""
    merged: list[OneSize] = []
    for one in sorted(sizes, key=lambda one: -one.finished.width_mm):
        last = merged[-1] if merged else None
        if last and last.finished.width_mm - one.finished.width_mm < _SAME_MM:
            cloths = tuple(dict.fromkeys(last.cloths + one.cloths))
            merged[-1] = replace(last, cloths=cloths)
        else:
            merged.append(one)
    return tuple(replace(one, letter=_letter(place)) for place, one in enumerate(merged))


def _letter(place: int) -> str:
    """A to Z, then AA, AB."""
    before, last = divmod(place, len(ascii_uppercase))
    return (_letter(before - 1) if before else "") + ascii_uppercase[last]


def size_drawing(sizes: tuple[OneSize, ...]) -> str:
    """SVG of `same_together` sizes, laid corner on corner, with inches and centimetres below.

    Lines and words take the colour of the text around them (`currentColor`), by day and by night.
    """
    measured_mm = _measure_mm(sizes)
    largest = sizes[0].finished
    scale = min(_ACROSS / max(measured_mm.values()), _ACROSS / largest.height_mm)
    scale = min(scale, _LARGEST_UNITS_A_MM)
    bottom = _EDGE + largest.height_mm * scale
    drawing = svgwrite.Drawing(debug=False)
    below = _add_outlines(drawing, sizes, scale, bottom)
    for unit, mm in (("in", MM_PER_INCH), ("cm", 10.0)):
        below = _add_measure(drawing, unit, mm, measured_mm[unit], scale, below + _INSET)
    drawing.viewbox(0, 0, round(_ACROSS + 3 * _LINE), round(below + _EDGE))
    return drawing.tostring()


def sizes_said(sizes: tuple[OneSize, ...]) -> str:
    """What the drawing shows, in words."""
    said = (
        f"{one.letter}, on {' and '.join(one.cloths)}: {inches(one.finished.width_mm)} × {inches(one.finished.height_mm)} "
        f"({centimetres(one.finished.width_mm)} × {centimetres(one.finished.height_mm)})"
        for one in sizes
    )
    return f"The finished sizes as outlines at one scale, the largest first: {'; '.join(said)}."


def _measure_mm(sizes: tuple[OneSize, ...]) -> dict[str, float]:
    """How long each measure is: whole inches and whole centimetres, to the end of the widest outline."""
    width = sizes[0].finished.width_mm
    return {
        "in": up_to_step(width, MM_PER_INCH),
        "cm": up_to_step(width, 10),
    }


def _add_outlines(
    drawing: svgwrite.Drawing, sizes: tuple[OneSize, ...], scale: float, bottom: float
) -> float:
    """Every outline with its label inside its upper edge; returns where the lowest of all that ends."""
    tops = [bottom - one.finished.height_mm * scale for one in sizes]
    label_y = 0.0
    # A style sheet gives the lower of the two a wide edge, so that no tint dulls a word.
    halos, labels = (
        drawing.g(fill="currentColor", font_size=_TEXT, class_=name)
        for name in ("size-halo", "size-label")
    )
    for place, one in enumerate(sizes):
        width, height = one.finished.width_mm * scale, one.finished.height_mm * scale
        box = drawing.rect((_EDGE, round(tops[place], 2)), (round(width, 2), round(height, 2)))
        box = box.fill("currentColor", opacity=0.05).stroke("currentColor", width=1.4)
        drawing.add(box)
        # Where outlines nearly meet, labels keep their order and their distance.
        label_y = max(tops[place] + _LINE - 2, label_y + _LINE)
        inside = [one]
        for smaller, top in zip(sizes[place + 1 :], tops[place + 1 :]):
            if label_y - _RISE < top < label_y + _DROP:  # it would be struck through
                label_y = top + _LINE - 2
            if top < label_y:
                inside.append(smaller)
        room = min(each.finished.width_mm for each in inside) * scale - 2 * _INSET
        insert = (_EDGE + _INSET, round(label_y, 2))
        for group in (halos, labels):
            group.add(drawing.text(_label(one, room), insert=insert))
    drawing.add(halos)
    drawing.add(labels)
    return max(bottom, label_y + _INSET)


def _label(one: OneSize, room: float) -> str:
    """The letter, and the stitches to the inch where the outline is wide enough to say them."""
    said = f"{one.letter}: {one.per_inch} to the inch"
    return said if len(said) * _TEXT * _ADVANCE <= room else one.letter


def _add_measure(
    drawing: svgwrite.Drawing, unit: str, unit_mm: float, long_mm: float, scale: float, y: float
) -> float:
    """One measure, its ticks hanging from its line; returns where its numbers end."""
    ticks = [_EDGE + mark * unit_mm * scale for mark in range(round(long_mm / unit_mm) + 1)]
    step = next((s for s in _STEPS if s * unit_mm * scale >= _LEAST_BETWEEN_NUMBERS), _STEPS[-1])
    ends = f"M{ticks[0]:.2f} {y:.2f}H{ticks[-1]:.2f}"
    path = ends + "".join(
        f"M{x:.2f} {y:.2f}v{_TICK if mark % step == 0 else _TICK / 2:g}"
        for mark, x in enumerate(ticks)
    )
    drawing.add(drawing.path(d=path).fill("none").stroke("currentColor", width=1))
    numbers = drawing.g(fill="currentColor", font_size=_TEXT, class_="size-measure")
    base = round(y + _TICK + _TEXT, 2)
    for mark, x in list(enumerate(ticks))[::step]:
        anchor = "middle" if mark else "start"
        numbers.add(drawing.text(str(mark), insert=(round(x, 2), base), text_anchor=anchor))
    numbers.add(drawing.text(unit, insert=(round(ticks[-1] + _LINE, 2), round(y + _INSET, 2))))
    drawing.add(numbers)
    return base + 2
