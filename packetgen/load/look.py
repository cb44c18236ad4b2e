"""The look that a series gives itself; what it leaves out is the project's own."""

from collections.abc import Iterable
from dataclasses import replace

from packetgen.diagnostics import Place, Problems
from packetgen.load.files import ContentFolder
from packetgen.load.font_files import FONT_ENDINGS, read_font
from packetgen.load.values import Filled
from packetgen.load.words import listed, said
from packetgen.model import BY_DAY, BY_NIGHT, FACE_ROLES, Faces, FontFile, Look, Palette

_MOST_SHOWN = 6


def read_look(folder: ContentFolder, path: str, series: Filled, problems: Problems) -> Look:
    """The block `look` of the series file in the folder `path`. What is wrong goes to `problems`."""
    given = series["look"]
    if given is None:
        return Look()
    places: list[tuple[str, Place]] = []
    return Look(
        light=_palette(given, "light", BY_DAY, places),
        dark=_palette(given, "dark", BY_NIGHT, places),
        faces=_faces(folder, path, given, problems),
        ornament=given["ornament"],
        places=tuple(places),
    )


def font_names(series: Filled | None, files: tuple[str, ...]) -> tuple[str, ...]:
    """Which of the `files` the look names as fonts; all that may be, where the series cannot be read."""
    if series is None:
        return tuple(name for name in files if name.endswith(FONT_ENDINGS))
    given = series["look"]
    return () if given is None else tuple(given[role] for role in FACE_ROLES if given[role])


def advise_on_letters(look: Look, titles: Iterable[str], place: Place, problems: Problems) -> None:
    """Says so when the author's face for headings lacks letters of the series' own titles."""
    face = look.faces.heading
    if face is None:
        return
    lacking = sorted(
        {letter for title in titles for letter in title if not letter.isspace()}
        - {chr(code) for code in face.letters}
    )
    if lacking:
        shown = listed(lacking[:_MOST_SHOWN], "and")
        more = f" (and {len(lacking) - _MOST_SHOWN} more)" if len(lacking) > _MOST_SHOWN else ""
        problems.add(place, "font-letters", name=said(face.name), letters=shown + more)


def _palette(look: Filled, name: str, usual: Palette, places: list[tuple[str, Place]]) -> Palette:
    given = look[name]
    if given is None:
        return usual
    own = {colour: one.value for colour, one in given.given.items() if one.value is not None}
    places += [(f"{name}.{colour}", given.place_of(colour)) for colour in own]
    return replace(usual, **own)


def _faces(folder: ContentFolder, path: str, look: Filled, problems: Problems) -> Faces:
    found: dict[str, FontFile | None] = {}
    for role in FACE_ROLES:
        if look[role] is not None:
            found[role] = _face(folder, path, look[role], look.place_of(role), problems)
    if "text" in found and "text_bold" not in found:
        problems.add(look.place_of("text"), "font-no-bold", name=said(look["text"]))
    return Faces(**found)


def _face(
    folder: ContentFolder, path: str, named: str, place: Place, problems: Problems
) -> FontFile | None:
    files = folder.files(path)
    if "/" in named or "\\" in named or ".." in named:
        problems.add(place, "outside-folder", name=said(named))
    elif not named.endswith(FONT_ENDINGS):
        problems.add(place, "font-kind", name=said(named))
    elif named not in files:
        fonts = [name for name in files if name.endswith(FONT_ENDINGS)]
        hint = f"the folder holds {listed(fonts[:5], 'and')}" if fonts else "put the file there"
        problems.add(place, "file-missing", name=said(named), hint=hint)
    else:
        data = folder.font(f"{path}/{named}")
        return None if data is None else read_font(data, named, place, problems)
    return None
