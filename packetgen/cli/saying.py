"""A line on the screen, which the log has too."""

import click


def say(line: str, err: bool = False, shown: str | None = None) -> None:
    """On the standard output, or what is wrong on the other one; `shown` is the line with its colours."""
    import logging

    logging.getLogger("packetgen.said").info("%s", line)
    click.echo(line if shown is None else shown, err=err)
