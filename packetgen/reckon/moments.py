"""The moment as of which a site is made."""

from datetime import date, datetime, time, tzinfo

# A day of the calendar, a time on the clock of the series, or a moment with its own zone; None: all there is.
AsOf = date | datetime | None


def moment_of(as_of: date | datetime, zone: tzinfo | None) -> datetime:
    """A bare day at its very end, and a time without a zone by the clock of `zone`."""
    if not isinstance(as_of, datetime):
        return datetime.combine(as_of, time.max, zone)
    return as_of if as_of.tzinfo else as_of.replace(tzinfo=zone)
