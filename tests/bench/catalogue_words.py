"""Invented words for a catalogue of a gardener's years: titles, people, stories. All of it made here."""

from random import Random

PEOPLE = (
    ("hollin", "Maris Hollin"),
    ("brackett", "Odo Brackett"),
    ("fenwright", "Sabra Fenwright"),
    ("tolliver", "Juniper Tolliver"),
    ("ashcombe", "Linnet Ashcombe"),
    ("pellow", "Garnet Pellow"),
    ("wheatear", "Rufus Wheatear"),
    ("sallow", "Damaris Sallow"),
    ("thrift", "Ebba Thrift"),
    ("underhedge", "Quill Underhedge"),
)
OCCASIONS = (
    ("First digging", "6 January"),
    ("Seed lists", "2 February"),
    ("Early peas", "21 February"),
    ("Last hard frost", "14 March"),
    ("Potato planting", "second Saturday of April"),
    ("Beans go up", "1 May"),
    ("First cut", "third Sunday of May"),
    ("Longest day", "21 June"),
    ("Berry picking", "second Sunday of July"),
    ("Onions down", "last Monday of August"),
    ("Apples in", "29 September"),
    ("Bonfire of prunings", "5 November"),
    ("Tools oiled", "first Sunday of December"),
)
_YEARS = ("A Year at", "Mornings by", "Seasons round", "Twelve Months behind")
_PLACES = (
    "the Cold Frame",
    "the Bean Row",
    "the Water Butt",
    "the Quince Wall",
    "the Leaf Heap",
    "the Rhubarb Bed",
    "the Herb Steps",
    "the Plum Walk",
    "the Tool Rack",
    "the Pea Sticks",
    "the Mossy Sink",
    "the Hazel Arch",
    "the Dipping Pond",
    "the Fig Corner",
    "the Kale Patch",
    "the Gooseberry Cage",
    "the Nettle Bank",
    "the Seed Cupboard",
    "the Medlar Tree",
    "the Wheelbarrow Path",
    "the South Border",
    "the Asparagus Bed",
    "the Stone Trough",
    "the Old Pump",
    "the Lettuce Frame",
)
_THINGS = (
    "Wren",
    "Hedgehog",
    "Leek",
    "Marigold",
    "Watering Can",
    "Dibber",
    "Artichoke",
    "Toad",
    "Blackbird",
    "Radish",
    "Trowel",
    "Auricula",
    "Snail",
    "Damson",
    "Parsnip",
    "Rain Gauge",
    "Bumblebee",
    "Crocus",
    "Trug",
    "Chard",
    "Dunnock",
    "Pear",
    "Garden Line",
    "Borage",
    "Goldfinch",
    "Beetroot",
    "Hand Fork",
    "Hellebore",
    "Mole",
    "Broad Bean",
    "Scarecrow",
    "Columbine",
    "Newt",
    "Celeriac",
    "Bell Jar",
    "Teasel",
)
_WHERE = (
    "in the Rain",
    "at First Light",
    "by the Gate",
    "under Glass",
    "after Frost",
    "on the Wall",
    "in Long Grass",
    "at Noon",
    "beside the Path",
    "in the Shade",
    "before Thunder",
    "on a String",
    "among the Canes",
    "under Fleece",
    "in a Clay Pot",
    "at Leaf Fall",
    "behind the Shed",
    "on the Sill",
    "in New Soil",
    "at Dusk",
    "in the Wind",
    "on Old Brick",
    "round the Post",
    "in Its Bed",
    "across the Lawn",
    "by Lamplight",
    "after Weeding",
    "under Netting",
)
_OPENINGS = (
    "I found it {when}, while I was looking for {lost}.",
    "Nobody planted it, and {when} it was there.",
    "It stood {where} for years before I looked at it properly.",
    "{When} the ground was too wet for anything but drawing.",
    "The whole bed had been cleared but for this.",
)
_MIDDLES = (
    "The light came in low {where} and made every edge double.",
    "I counted the colours twice, and had {number} of them both times.",
    "My neighbour says that it will not last, as she has said of everything since {month}.",
    "There was soil on the paper before there was any pencil.",
    "The leaves are not as regular as I have drawn them; I let them be tidier than they are.",
    "I made {number} sketches {where}, and threw away all of them but two.",
    "What looks like a shadow is {lost}, which I only noticed when I had charted it.",
    "A wind got up in {month}, and half of it lay down and stayed so.",
    "The darkest thread is for the places where nothing grew.",
    "It smells of rain and rust, which no thread will tell you.",
)
_ENDINGS = (
    "The sketch hangs {where} with a peg on it.",
    "I have grown one every year since, and none has looked like it.",
    "If yours comes out rounder than mine, leave it so.",
    "Then it was {month}, and there was digging to do.",
    "I still have not found {lost}.",
)
_FILLS = {
    "when": (
        "on a Tuesday",
        "before breakfast",
        "between two showers",
        "after the first frost",
        "one still evening",
    ),
    "lost": (
        "a glove",
        "the good secateurs",
        "a label",
        "my other boot",
        "the end of the hose",
        "a ball of twine",
    ),
    "where": (
        "behind the canes",
        "beside the butt",
        "under the pear",
        "along the south wall",
        "by the compost",
    ),
    "number": ("eleven", "fourteen", "nineteen", "twenty-two", "nine"),
    "month": ("February", "April", "June", "September", "November"),
}


def series_title(number: int) -> str:
    """A title for the series of this number, from 0; no two alike."""
    round_, place = divmod(number, len(_YEARS) * len(_PLACES))
    title = f"{_YEARS[place // len(_PLACES)]} {_PLACES[place % len(_PLACES)]}"
    return f"{title}, Book {round_ + 1}" if round_ else title


def pattern_title(number: int) -> str:
    """A title for the pattern of this number, from 0; no two alike below a thousand."""
    round_, thing = divmod(number, len(_THINGS))
    return f"{_THINGS[thing]} {_WHERE[(round_ + thing) % len(_WHERE)]}"


def story(random: Random) -> str:
    """Three to six paragraphs of Markdown."""
    return "\n\n".join(_paragraph(random) for _ in range(random.randint(3, 6))) + "\n"


def _paragraph(random: Random) -> str:
    middles = random.sample(_MIDDLES, random.randint(2, 4))
    sentences = [random.choice(_OPENINGS), *middles, random.choice(_ENDINGS)]
    return " ".join(_filled(one, random) for one in sentences)


def _filled(sentence: str, random: Random) -> str:
    words = {name: random.choice(choices) for name, choices in _FILLS.items()}
    return sentence.format(**words, When=words["when"].capitalize())
