"""How a series looks, on its site and on paper: colours by day and by night, and the faces of its type."""

from dataclasses import dataclass, field

from packetgen.diagnostics import Place

# What stands below a title: a cross stitch, a flowerpot, or nothing. The first is the usual.
ORNAMENTS = ("stitch", "pot", "none")
# The roles of a face; each is a field of `Faces`.
FACE_ROLES = ("text", "text_bold", "text_italic", "heading")


@dataclass(frozen=True)
class Palette:
    """The colours of a page, each '#' and six digits. Words stand in four of them on two."""

    paper: str  # of the page
    shade: str  # of what is set off from the page
    ink: str  # words
    heading: str  # headings and links
    accent: str  # dates, names of columns, the line below a link
    quiet: str  # notes and captions
    rule: str  # lines between things; no words stand in it


# A leaf of an old almanac: cream, leaf green, flowerpot red.
BY_DAY = Palette(
    paper="#fbf8f1",
    shade="#f4eee0",
    ink="#2b2b24",
    heading="#1f3a2d",
    accent="#7d3a1f",
    quiet="#4e4839",
    rule="#c9bc9f",
)
# The same leaf in the potting shed after dark, by a lamp.
BY_NIGHT = Palette(
    paper="#1d231c",
    shade="#282f25",
    ink="#e8dfcb",
    heading="#c3d6ae",
    accent="#e6a079",
    quiet="#bfb59d",
    rule="#525641",
)


@dataclass(frozen=True)
class FontFile:
    """A face that an author gives: TrueType or OpenType, not compressed, as `data`."""

    name: str  # of her file
    data: bytes = field(repr=False)
    letters: frozenset[int] = field(compare=False, repr=False)  # code points that it has

    @property
    def suffix(self) -> str:
        """Outlines of the two kinds have endings of their own (OpenType 1.9, Organization of a font)."""
        return ".otf" if self.data.startswith(b"OTTO") else ".ttf"


@dataclass(frozen=True)
class Faces:
    """The author's own faces; None where the project's own do the work."""

    text: FontFile | None = None
    text_bold: FontFile | None = None
    text_italic: FontFile | None = None
    heading: FontFile | None = None


@dataclass(frozen=True)
class Look:
    """Print is always `light`. `places` says where the author wrote a colour: ('light.ink', its place)."""

    light: Palette = BY_DAY
    dark: Palette = BY_NIGHT
    faces: Faces = Faces()
    ornament: str = ORNAMENTS[0]
    places: tuple[tuple[str, Place], ...] = field(default=(), compare=False)
