"""What is in the needle: how many strands of which card, for each way of stitching.

A thread set says how many strands; a key line may say its own number for cells. A braid is always one.
A thread of another card than the set's is never more than it has, and a blend never less than one
strand of each colour.
"""

from packetgen.model import Colour, KeyLine, Pattern, ThreadCard, ThreadSet


def strands_for(line: KeyLine, thread_set: ThreadSet) -> int:
    """Strands for stitches in cells."""
    return _held(line, thread_set, line.strands.get(thread_set.id, thread_set.strands))


def line_strands_for(line: KeyLine, thread_set: ThreadSet) -> int:
    """Strands for backstitch and long stitches."""
    return _held(line, thread_set, thread_set.backstitch_strands)


def knot_strands_for(line: KeyLine, thread_set: ThreadSet) -> int:
    """Strands for French knots."""
    return _held(line, thread_set, thread_set.knot_strands)


def daisy_strands_for(line: KeyLine, thread_set: ThreadSet) -> int:
    """Strands for lazy daisies."""
    return _held(line, thread_set, thread_set.daisy_strands)


def _held(line: KeyLine, thread_set: ThreadSet, wanted: int) -> int:
    cards = line.cards_in(thread_set)
    if any(card.braid for card in cards):
        return 1
    if thread_set.id in line.cards:
        wanted = min(wanted, len(cards) * min(card.strands for card in cards))
    return max(wanted, len(cards))


def threads_used(pattern: Pattern, thread_set: ThreadSet) -> tuple[tuple[ThreadCard, Colour], ...]:
    """Every thread that the pattern takes in this set, once: the set's own card first, each card's
    colours in its own order."""
    used = {
        (card.id, colour.number): (card, colour)
        for line in pattern.key
        for card, colour in zip(line.cards_in(thread_set), line.threads[thread_set.id])
    }
    cards = {thread_set.card.id: thread_set.card} | {card.id: card for card, _ in used.values()}
    return tuple(
        (card, colour)
        for card in cards.values()
        for number, colour in card.colours.items()
        if (card.id, number) in used
    )
