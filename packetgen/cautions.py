"""The usual cautions, by the names that a finishing piece may list. They defer to labels and local rules."""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True)
class Caution:
    title: str
    text: str


CAUTIONS: Mapping[str, Caution] = {
    "small magnets": Caution(
        "Small magnets",
        "Two swallowed magnets can close on each other inside the body and injure badly; if it may have "
        "happened, go to a hospital at once. Keep them from children and pets, keep them a hand's length "
        "or more from pacemakers and other implants as the maker of the implant says, and let none snap "
        "together near the eyes: they chip.",
    ),
    "spray paint": Caution(
        "Spray paint",
        "Spray outdoors or in moving air, with a mask made for paint mist, away from flames, heaters and "
        "sparks, and away from people and animals. Shake, distance and drying times are those on the tin. "
        "An empty tin is still under pressure: leave it whole and take it where your local rules say.",
    ),
    "brush paint": Caution(
        "Paint from a tin",
        "Open a window, cover the table and keep paint off the skin and away from food. Close the tin at once, "
        "wipe brushes on a rag before they are washed, and take what is left where your local rules say: "
        "paint does not go down the drain.",
    ),
    "solvents": Caution(
        "Solvents",
        "Open a window, wear gloves that the label names, keep away from flames. Rags soaked with oil or "
        "solvent can catch fire by themselves: dry them spread out in the open, out of reach.",
    ),
    "dye powder": Caution(
        "Dye powder",
        "Weigh and mix dye powder with a dust mask, gloves and no draught, in vessels that never again "
        "hold food.",
    ),
    "hot glue": Caution(
        "Hot glue",
        "Glue and nozzle burn the skin and the glue sticks while it burns. Keep cold water at hand, put "
        "the gun on its stand, and unplug it before you leave the room. It is no tool for a child alone.",
    ),
    "blades": Caution(
        "Blades",
        "Cut card in several light strokes along a steel rule, with the other hand out of the blade's way, "
        "and close or cover the blade whenever it is put down.",
    ),
    "needles": Caution(
        "Needles and pins",
        "Count pins and needles before and after; park them in a cushion, never in the chair. Go over "
        "the stitching with a magnet before it is mounted.",
    ),
    "dust": Caution(
        "Sanding dust",
        "Sand outdoors or with a dust mask, wipe up with a damp cloth, and do not sand old paint: it may "
        "hold lead.",
    ),
    "small parts": Caution(
        "Small parts",
        "What is as small as a bead, a magnet, a washer or a screw can be swallowed. The finished piece is an "
        "ornament, not a toy: keep it out of reach of small children.",
    ),
}
