"""What is wrong with how the parts of a finishing piece stand together, and before its panel."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems
from packetgen.load.narrow_joints import met_in_a_point
from packetgen.load.parts_aligned import below_foot, even_with_twin
from packetgen.load.piece_words import gap_said, mm_said, slim
from packetgen.load.placed_parts import (
    Hidden,
    Misplaced,
    Point,
    clear_at,
    doubled,
    hidden,
    over_panel,
    over_twins,
    standing_apart,
)
from packetgen.load.points import point_said
from packetgen.load.prose_words import SENTENCE, any_of
from packetgen.load.slipped_places import figures_exchanged, place_meant, turned_about
from packetgen.load.values import Filled
from packetgen.load.words import counted, said
from packetgen.model import Outline, Part

# What a part hangs by, in the hardware or the steps.
_HUNG = re.compile(
    r"\b(?:cord|string|twine|rope|wire|chain|ribbon|hook|ring|loop|hinge|eyelet|screw eye|thong|leather)",
    re.IGNORECASE,
)
# What joins wood to wood, where it touches.
_JOINED = re.compile(r"\b(?:glue|screw|nail|peg|dowel|pin|tack)(?:s|d|ed)?\b", re.IGNORECASE)


def has_place(part: Filled) -> bool:
    return part.given["at"].name_place is not None  # else it is the default


def complain_of_parts(
    filled: Filled, panel: Outline, parts: tuple[Part, ...], texts: str, problems: Problems
) -> None:
    """Whether each stands where the others leave it room, told at its 'at'; `panel` is its outline, and `texts` tell how
    they are joined, and whether anything is hung up."""
    hung = bool(_HUNG.search(texts))
    told_mm = {float(number) for number in re.findall(r"(?<![\w.])\d{1,4}(?!\d|\.\d)", texts)}
    kept_free = [area.value["outline"] for area in filled["panel"].each("keep_out") if area.whole]
    stand = [one.value for one in filled.each("parts")]
    all_over = over_panel(panel, kept_free, parts)
    for over in all_over:
        facts = _place_of_part(stand[over.number])
        misplaced = Misplaced(panel, kept_free, parts, over.number)
        even = even_with_twin(panel, parts, over.number) if len(all_over) == 1 else None
        if better := place_meant(misplaced, told_mm) or even:
            facts["mend"] = f"write at: {point_said(better)}"
        elif has_place(stand[over.number]) and (clear := clear_at(misplaced)):
            facts["mend"] = f"mend that, as at {point_said(clear)}"
        problems.add(
            stand[over.number].place_of("at"),
            "part-over-panel",
            **facts,
            share=max(1, round(100 * over.share)),
            first=point_said(over.bounds[:2]),
            last=point_said(over.bounds[2:]),
        )
    # What stands in a wrong place may hide others, or be hidden, only there.
    wrong = {over.number for over in all_over}
    low = below_foot(parts)  # that is told then, and not that the foot is hidden
    unseen = [
        one
        for one in hidden(parts)
        if not wrong & {one.number, one.behind}
        and not (low and (one.behind, one.number) == (low.number, low.foot))
    ]
    _look_at_hidden(stand, unseen, problems)
    for copy, first in doubled(parts):
        if parts[copy].name == parts[first].name:
            continue  # told of the name
        thick_mm = parts[copy].thickness_mm + parts[first].thickness_mm
        problems.add(
            stand[copy].place_of("at" if has_place(stand[copy]) else "name"),
            "part-doubled",
            part=said(stand[copy]["name"]),
            other=said(stand[first]["name"]),
            thick=mm_said(thick_mm),
        )
    for twin in over_twins(parts):
        if twin.number not in wrong:
            problems.add(
                stand[twin.number].place_of("at" if has_place(stand[twin.number]) else "name"),
                "part-over-twin",
                part=said(stand[twin.number]["name"]),
                other=said(stand[twin.earlier]["name"]),
                share=round(100 * twin.share),
            )
    _look_at_placeless(stand, wrong | {one.number for one in unseen}, problems)
    apart = tuple(standing_apart(panel, parts, hung=True))
    number = turned_about(parts) if not apart else None
    if not apart and number is None:
        apart = tuple(standing_apart(panel, parts, hung, _joined(texts, parts)))
    slip = None if any(far.meant_mm for far in apart) else figures_exchanged(parts)
    if slip and (apart or number is not None):
        of, better = slip
        facts = {"part": said(stand[of]["name"]), "better": point_said(better)}
        at = point_said(stand[of]["at"])
        problems.add(stand[of].place_of("at"), "part-turned", **facts, at=at)
        return
    instead = ""
    if number is not None:
        at = stand[number]["at"]
        facts = {"part": said(stand[number]["name"]), "better": point_said(at[::-1])}
        # A part that stands alone, and needs to be moved only up, down or aside, is told before one that touches others.
        lone = [
            far
            for far in standing_apart(panel, parts, hung=False)
            if far.nearer_mm and far.number != number
        ]
        if len(lone) == 1:
            apart, instead = tuple(lone), "; or {part} at {better}".format(**facts)
        else:
            problems.add(stand[number].place_of("at"), "part-turned", **facts, at=point_said(at))
    # What hangs together may only lack the one part that stands apart by itself, as pots do their shelf.
    for far in [one for one in apart if not one.together_with] or apart:
        part = stand[far.number]
        if slim(part["outline"]):
            continue  # of its size that is told
        facts = _place_of_part(part) | {"gap": gap_said(far.gap_mm), "near": ""}
        if far.placed_twice:
            facts["mend"] = "its outline begins there already: take 'at' away"
        elif far.meant_mm and not instead:
            facts["mend"] = f"write at: {' or '.join(map(point_said, far.meant_mm))}"
        elif far.nearer_mm:
            facts["near"] = f", as at {_moved_by(part['at'], far.nearer_mm)}{instead}"
        if len(far.together_with) == 1:
            other = stand[far.together_with[0]]["name"]
            facts["part"] = f"{facts['part']} with {said(other)}, which it touches,"
        elif far.together_with:
            parts_more = counted(len(far.together_with), "part")
            facts["part"] = f"{facts['part']} with {parts_more} that it hangs together with,"
        problems.add(part.place_of("at"), "part-apart", **facts)
    if not (wrong or apart or hung or number is not None):
        for joint in met_in_a_point(parts):
            problems.add(
                stand[joint.number].place_of("at" if has_place(stand[joint.number]) else "name"),
                "part-joint-narrow",
                part=said(stand[joint.number]["name"]),
                other=said(stand[joint.other]["name"]),
                at=point_said(joint.at_mm),
            )


def _joined(texts: str, parts: Sequence[Part]) -> tuple[frozenset[int], ...]:
    """The numbers of parts of which a sentence tells that they are glued or screwed to one another."""
    names = [part.name.casefold() for part in parts]
    speaks_of = re.compile(rf"\b({any_of(names)})s?\b")
    joints = []
    for sentence in SENTENCE.findall(texts):
        if _JOINED.search(sentence) and not _HUNG.search(sentence):
            found = speaks_of.findall(sentence.casefold())
            joints.append(frozenset(names.index(name) for name in found))
    return tuple(joints)


def _moved_by(at: Point, by: Point) -> str:
    return point_said([one + more for one, more in zip(at, by, strict=True)])


def _look_at_placeless(stand: Sequence[Filled], told: set[int], problems: Problems) -> None:
    """Advice on the one part that has no place while others have, unless it is the first, from which they may be
    measured, or something is told of it."""
    placeless = [number for number, part in enumerate(stand) if not has_place(part)]
    later = [number for number in placeless if number]
    if len(later) == 1 and len(placeless) < len(stand) and later[0] not in told:
        part = stand[later[0]]
        problems.add(part.place_of("name"), "part-placeless", part=said(part["name"]))


def _look_at_hidden(
    stand: Sequence[Filled], all_hidden: Sequence[Hidden], problems: Problems
) -> None:
    """A part that hides several is told of itself: it is the one that is listed in a wrong place."""
    for front in dict.fromkeys(one.behind for one in all_hidden):
        behind = [stand[one.number] for one in all_hidden if one.behind == front]
        if len(behind) > 1:
            problems.add(
                stand[front].place_of("name"),
                "part-hides",
                part=said(stand[front]["name"]),
                number=len(behind),
                first=said(behind[0]["name"]),
            )
            continue
        lost = _place_of_part(behind[0]) if not has_place(behind[0]) else None
        problems.add(
            behind[0].place_of("name"),
            "part-hidden",
            part=lost["part"] if lost else said(behind[0]["name"]),
            front=said(stand[front]["name"]),
            mend=f"{lost['mend'] if lost else 'mend the place or size of one'}, or ",
        )


def _place_of_part(part: Filled) -> dict[str, object]:
    """What is said of the place of a part, and how it gets another."""
    if not has_place(part):
        return {
            "part": f"{said(part['name'])}, at 0,0 since it has no 'at',",
            "mend": "give it one",
        }
    return {"part": f"{said(part['name'])}, at {point_said(part['at'])},", "mend": "mend that"}
