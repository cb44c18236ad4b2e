"""The number that was meant where a number is due, and a word or a number with a unit stands there."""

import re

_ONES = (
    "nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
    "seventeen eighteen nineteen"
).split()
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
_NUMBERS = {word: number for number, word in enumerate(_ONES)} | {
    word: 10 * number for number, word in enumerate(_TENS, 2)
}
NUMBER_WORDS = tuple(_NUMBERS)
# A number that counts something in a text, in figures or as a word; the second has it as a group.
COUNT = rf"(?<![\w.,/×-])(?:\d{{1,3}}|{'|'.join(NUMBER_WORDS)})"
COUNTED = rf"(?P<number>{COUNT})"
# '14ct', '8 m', '28-count', '12,5': a number, and at most words without another one behind it.
_WITH_UNIT = re.compile(
    r"(-?\d{1,12}(?:[.,]\d{1,12})?)[\s-]*[^\W\d_][^\d]{0,30}|(\d{1,12},\d{1,12})"
)

# '2-4 hours', '8 mm to 10 mm': two numbers, the second perhaps with a unit. '2-1/2 in' is one number.
_N = r"\d{1,12}(?:\.\d{1,12})?"
_RANGE = re.compile(
    rf"{_N} ?[^\W\d]{{0,20}} ?(?:[-–—]|\.\.+|\b(?:to|or)\b) ?(?P<last>{_N})(?![\d/]) ?(?P<unit>\D.{{0,30}})?"
)


def last_of_range(text: str) -> tuple[str, str] | None:
    """'2-4 hours' → ('4', 'hours'); None where it is no range."""
    found = _RANGE.fullmatch(" ".join(text.split()))
    return (found["last"], found["unit"] or "") if found else None


def counted_number(text: str) -> int | None:
    """'4' and 'four' in a text; None where it is neither."""
    number = int(text) if text.isascii() and text.isdigit() else meant_number(text)
    return None if number is None else int(number)


def meant_number(text: str) -> float | None:
    """'14ct' → 14, '12,5' → 12.5, 'twenty-eight' → 28; None where it is not plain which number is meant."""
    found = _WITH_UNIT.fullmatch(text.strip())
    if found and text.isascii():
        number = found[1] or found[2]
        thousands = (
            len(number.partition(",")[2]) == 3
        )  # '1,000' is a thousand to some, and one to others
        return None if thousands else float(number.replace(",", "."))
    numbers = [_NUMBERS.get(word) for word in re.split(r"[\s-]+", text.strip().casefold())]
    match numbers:
        case [int(alone)]:
            return alone
        case [int(tens), int(ones)] if tens >= 20 and 0 < ones < 10:
            return tens + ones
    return None
