"""Designers who are listed for nothing, and designs that only another designer's shop sells.

Many sell at a friend's. Where the designer has a shop of her own, or the friend no design in the series, it is rather the
`designer` of a pattern that is wrong, or its `sold_at` that was forgotten when the designer was exchanged.
"""

from collections.abc import Collection

from packetgen.diagnostics import Problems
from packetgen.model import Counter, Designer, Pattern, Series


def complain_of_designers(series: Series, problems: Problems) -> None:
    """Advice on each pattern that is another's by its shops, and on each designer of no pattern."""
    busy = {pattern.designer for pattern in series.patterns}
    busy |= {coming.designer for coming in series.to_come}
    owners = set()
    for pattern in series.patterns:
        owner = _who_sells(pattern, series.designers)
        if owner is None or (owner in busy and not pattern.designer.shop):
            continue
        owners.add(owner)
        facts = {"title": pattern.title, "name": pattern.designer.name, "owner": owner.name}
        out = "" if owner in busy else f", and take {owner.id} out of the series"
        place = pattern.designer_place or pattern.place
        problems.add(place, "designer-other", **facts, id=owner.id, out=out)
    for designer in series.designers:
        if designer not in busy and designer not in owners:
            problems.add(designer.place, "designer-idle", name=designer.name, id=designer.id)


def _who_sells(pattern: Pattern, designers: Collection[Designer]) -> Designer | None:
    """The one designer of the series in whose shop a pattern is, if that is another than its own."""
    sellers = [one for one in designers if any(_is_of(one, counter) for counter in pattern.sold_at)]
    return sellers[0] if len(sellers) == 1 and sellers[0] != pattern.designer else None


def _is_of(designer: Designer, counter: Counter) -> bool:
    shop = (designer.shop or "").rstrip("/")
    return designer.name in counter.name or bool(shop and counter.url.startswith(shop))
