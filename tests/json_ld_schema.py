"""The shape that every page's JSON-LD must have, as a JSON Schema (draft 2020-12)."""

TEXT = {"type": "string", "minLength": 1}
URL = {"type": "string", "pattern": r"^https?://[^\s<>\"]+$"}
MOMENT = {"type": "string", "pattern": r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$"}


def thing(kind: object, required: tuple[str, ...], **properties: object) -> dict:
    """An object of that @type with these properties and no others."""
    return {
        "type": "object",
        "properties": {"@type": {"const": kind}, **properties},
        "required": ["@type", *required],
        "additionalProperties": False,
    }


def many(of: dict) -> dict:
    return {"type": "array", "items": of, "minItems": 1}


PERSON = thing("Person", ("name",), name=TEXT, url=URL)
DESIGNER = thing(
    "Person",
    ("name", "description"),
    name=TEXT,
    url=URL,
    description=TEXT,
    sameAs=many(URL),
    affiliation=thing("Organization", ("name",), name=TEXT),
)
ROLE = thing("Role", ("roleName", "contributor"), roleName=TEXT, contributor=PERSON)
SERIES_NAMED = thing("CreativeWorkSeries", ("name",), name=TEXT, url=URL)
PIXELS = thing(
    "QuantitativeValue", ("value", "unitText"), value={"type": "integer"}, unitText={"const": "px"}
)
IMAGE = thing(
    "ImageObject",
    ("contentUrl", "width", "height", "caption"),
    contentUrl=URL,
    width=PIXELS,
    height=PIXELS,
    caption=TEXT,
)
STITCHES = thing(
    "QuantitativeValue",
    ("name", "value", "unitText"),
    name=TEXT,
    value={"type": "integer", "minimum": 1},
    unitText={"const": "stitches"},
)
CENTIMETRES = thing(
    "QuantitativeValue",
    ("name", "value", "unitCode"),
    name=TEXT,
    value={"type": "number", "exclusiveMinimum": 0},
    unitCode={"const": "CMT"},
)
OFFER = thing(
    "Offer", ("name", "url"), name=TEXT, url=URL
)  # a price is unknown, and so never given
PAGE = {"name": TEXT, "description": TEXT, "url": URL, "image": many(IMAGE)}
WEB_PAGE = thing("WebPage", ("name", "description"), **PAGE)
SERIES = thing(
    "CreativeWorkSeries",
    ("name", "description", "genre", "datePublished", "copyrightNotice"),
    **PAGE,
    genre=TEXT,
    creator=many(PERSON),
    datePublished=MOMENT,
    copyrightNotice=TEXT,
    hasPart=many(
        thing("CreativeWork", ("name", "creator"), name=TEXT, creator=PERSON, url=URL),
    ),
)
_PATTERN = {
    **PAGE,
    "genre": TEXT,
    "creator": PERSON,
    "contributor": many(ROLE),
    "datePublished": MOMENT,
    "dateModified": MOMENT,
    "version": {"type": "integer", "minimum": 1},
    "isPartOf": SERIES_NAMED,
    "material": many(TEXT),
    "size": many({"anyOf": [STITCHES, CENTIMETRES]}),
    "keywords": {**many(TEXT), "maxItems": 13},
    "copyrightNotice": TEXT,
    "isAccessibleForFree": {"type": "boolean"},
}
_OF_PATTERN = ("name", "description", "creator", "datePublished", "version", "isPartOf", "size")
PATTERN = thing("CreativeWork", _OF_PATTERN, **_PATTERN)
SOLD = thing(["CreativeWork", "Product"], (*_OF_PATTERN, "offers"), **_PATTERN, offers=many(OFFER))
TEASER = thing(
    "CreativeWork",
    ("name", "creator", "datePublished"),
    name=TEXT,
    creator=PERSON,
    datePublished=MOMENT,
    url=URL,
    image=many(IMAGE),
)
PIECE = thing("CreativeWork", ("name", "description", "isPartOf"), **PAGE, isPartOf=SERIES_NAMED)
DESIGNERS = thing(
    "CollectionPage",
    ("name", "description", "mainEntity"),
    **PAGE,
    mainEntity=thing(
        "ItemList",
        ("itemListElement",),
        itemListElement=many(
            thing(
                "ListItem",
                ("position", "item"),
                position={"type": "integer", "minimum": 1},
                item=DESIGNER,
            )
        ),
    ),
)
NOTICES = thing(
    "Blog",
    ("name", "description"),
    **PAGE,
    blogPost=many(
        thing(
            "BlogPosting",
            ("headline", "datePublished"),
            headline=TEXT,
            datePublished=MOMENT,
            url=URL,
        )
    ),
)
SERIES_LIST = thing(
    "CollectionPage",
    ("name", "description", "hasPart"),
    **PAGE,
    hasPart=many(thing("CreativeWorkSeries", ("name",), name=TEXT)),
)
BREADCRUMBS = thing(
    "BreadcrumbList",
    ("itemListElement",),
    itemListElement={
        "type": "array",
        "minItems": 2,
        "maxItems": 2,
        "items": thing(
            "ListItem",
            ("position", "name"),
            position={"enum": [1, 2]},
            name=TEXT,
            item=URL,
        ),
    },
)


def page_of(main: dict) -> dict:
    """What a page says: its main thing, and the way to it where it is not the first page."""
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "type": "object",
        "properties": {
            "@context": {"const": "https://schema.org"},
            "@graph": {
                "type": "array",
                "prefixItems": [main, BREADCRUMBS],
                "minItems": 1,
                "maxItems": 2,
            },
        },
        "required": ["@context", "@graph"],
        "additionalProperties": False,
    }
