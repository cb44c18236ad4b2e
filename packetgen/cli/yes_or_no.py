"""A question to be answered with yes or no."""

import click

_ANSWERS = {"y": True, "yes": True, "n": False, "no": False}


def yes_or_no(question: str, usually: bool | None = None) -> bool:
    """Asked until it is answered; Enter is what it usually is, where there is such a thing."""

    def meant(answer: str) -> bool:
        said = answer.strip().casefold()
        if not said and usually is not None:
            return usually
        if said not in _ANSWERS:
            raise click.UsageError("answer y for yes, or n for no")
        return _ANSWERS[said]

    choice = "y/n" if usually is None else "Y/n" if usually else "y/N"
    answer: bool = click.prompt(
        f"{question} [{choice}]", default="", show_default=False, value_proc=meant
    )
    return answer
