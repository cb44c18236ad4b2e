"""The painted wooden piece on which the designs of a series are shown."""

from dataclasses import dataclass, field

from packetgen.diagnostics import Place

Outline = tuple[tuple[float, float], ...]  # corners in mm, x to the right, y down, closed by itself


@dataclass(frozen=True)
class PaintWay:
    """One way of putting a paint on, with what the label of that tin says."""

    put_on_with: str  # brush or spray
    covers_m2_per_litre: float
    dries_in_h: float
    tin_ml: float


@dataclass(frozen=True)
class Paint:
    name: str
    hex: str
    put_on_with: str  # brush or spray
    covers_m2_per_litre: float  # from the tin's label
    dries_in_h: float
    tin_ml: float
    or_with: PaintWay | None = None  # the other way of putting it on
    cleaned_with: str = "water"  # or solvent
    place: Place | None = field(default=None, compare=False)  # of its name

    @property
    def ways(self) -> tuple[PaintWay, ...]:
        """Its own way first."""
        own = PaintWay(self.put_on_with, self.covers_m2_per_litre, self.dries_in_h, self.tin_ml)
        return (own, self.or_with) if self.or_with else (own,)


# What of a part is painted; 'both' is both faces and the edges all round.
PAINTED_FACES = ("front", "back", "edges", "both")


@dataclass(frozen=True)
class Coating:
    """One paint on some faces of a part."""

    paint: Paint
    coats: int
    faces: str  # of PAINTED_FACES


@dataclass(frozen=True)
class Part:
    """A sawn piece of wood."""

    name: str
    outline: Outline
    at_mm: tuple[float, float]  # where its own 0,0 stands in the drawing of the whole
    thickness_mm: float
    pieces: int
    painted: tuple[Coating, ...]  # in the order in which they are put on

    @property
    def seen(self) -> Coating | None:
        """What the front shows: the last paint that covers it; None is bare wood."""
        covering = [one for one in self.painted if one.faces in ("front", "both")]
        return covering[-1] if covering else None


@dataclass(frozen=True)
class KeepOut:
    name: str
    outline: Outline


@dataclass(frozen=True)
class Trim:
    kind: str  # straight, round or gathered; '' where none runs round the edge
    ratio: float  # length of trim for a length of edge; 1 unless gathered
    overlap_mm: float
    width_mm: float = 0.0  # how far it stands out from the edge; 0 where the author does not say


NO_TRIM = Trim("", 0.0, 0.0)


@dataclass(frozen=True)
class Magnets:
    pairs: int  # at least; a magnet on the wood, a steel washer in each mounted stitching
    diameter_mm: float
    thickness_mm: float
    inset_mm: float  # centre to edge of the smallest mounting card
    holds_g: float | None = None  # what one carries on thick bare steel, from its label


NO_MAGNETS = Magnets(0, 0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Hardware:
    name: str
    pieces: int
    size: str


@dataclass(frozen=True)
class Glue:
    name: str
    cures_in_h: float
    used_for: str


@dataclass(frozen=True)
class FinishingPiece:
    """The painted wooden piece on which every design of a series is shown."""

    id: str
    name: str
    about: str
    panel: Outline
    keep_outs: tuple[KeepOut, ...]
    border_mm: float
    fold_over_mm: float
    wadding_inset_mm: float
    parts: tuple[Part, ...]
    paints: tuple[Paint, ...]
    trim: Trim
    magnets: Magnets
    hardware: tuple[Hardware, ...]
    cautions: tuple[str, ...]
    steps_markdown: str
    place: Place = field(compare=False)
    glues: tuple[Glue, ...] = ()
    edge_place: Place | None = field(
        default=None, compare=False
    )  # of the border, or a broader trim
    panel_place: Place | None = field(default=None, compare=False)  # of its outline
    magnets_place: Place | None = field(default=None, compare=False)  # of their size
    inset_place: Place | None = field(default=None, compare=False)
