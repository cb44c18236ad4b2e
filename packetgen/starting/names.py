"""Names of files and folders, made from titles and from people's names."""

import unicodedata

from packetgen.diagnostics import Place, Problems
from packetgen.load.files import LONGEST_ID, as_id, valid_id

# Latin letters that Unicode does not take apart into a plain one and a mark.
_LETTERS = str.maketrans(
    {"æ": "ae", "œ": "oe", "ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ħ": "h", "ı": "i"}
)


def folder_name(title: str) -> str:
    """`title` in small letters, digits and hyphens, as a name that every machine takes.

    '' for a title of which no Latin letter or no digit is left, where it has letters at all.
    """
    apart = unicodedata.normalize("NFKD", title.casefold())
    plain = "".join(sign for sign in apart if not unicodedata.combining(sign)).translate(_LETTERS)
    name = as_id(plain.replace("'", "").replace("’", ""))
    if any(sign.isalpha() for sign in plain) and not any("a" <= sign <= "z" for sign in name):
        return ""
    if len(name) > LONGEST_ID:
        name = name[: LONGEST_ID + 1].rpartition("-")[0] or name[:LONGEST_ID]
    if not name or not why_not(name):
        return name
    return f"{name}-1"  # a name that some machines keep for themselves


def why_not(name: str) -> str:
    """Why a folder cannot have this name, in the loader's words; '' where it can."""
    problems = Problems()
    valid_id(name, Place(""), problems)
    return said_of(problems)


def said_of(problems: Problems) -> str:
    """The problems without their places; '' where there is none."""
    return "; ".join(f"{problem.wrong}; {problem.right}" for problem in problems)
