"""What a JSON Schema cannot see, and the loader does: each reason with the codes of the faults."""

BEYOND: tuple[tuple[str, tuple[str, ...]], ...] = (
    (
        "how the file is written: characters, spaces, quotes, a name twice. An editor reads the values "
        "that come of it and not the characters; so it takes `6e0` and `0x6` for the number six.",
        (
            "unseen-character", "letter-lost", "curly-quotes", "quote-stray", "name-repeated", "name-not-a-word",
            "not-whole-number",
        ),
    ),
    (
        "names of files and folders, and whether the file that a name points to is there and sound.",
        (
            "file-name", "file-name-kept", "file-name-long", "names-alike", "file-missing",
            "outside-folder", "chart-kind", "pattern-missing", "font-kind", "font-unreadable",
            "font-embedding",
        ),
    ),
    (
        "what other files have: cards, cloths, colours, designers, thread sets.",
        (
            "reference-unknown", "colour-unknown", "cloth-colour-turned", "set-not-offered", "key-name-unknown",
        ),
    ),
    (
        "names or numbers given twice among the entries of a list.",
        ("name-twice", "colour-twice", "coat-twice", "symbol-twice", "same-way-twice", "name-reserved"),
    ),
    (
        "the bounds of a value that has a unit, since to an editor it is a text.",
        ("out-of-range",),
    ),
    (
        "sums and orders: one value set against another.",
        (
            "weight-odd", "braid-parted", "strands-too-many", "needleful-short", "ease-order",
            "pace-order", "closes-early", "revisions-order", "magnet-over-edge", "inset-far",
            "panel-beyond-wood", "panel-in-cm", "part-in-cm", "border-fills-panel", "given-and-sold",
            "number-for-name",
        ),
    ),
    (
        "the calendar: months without a 31st, clocks that leap, zones, feasts.",
        ("no-such-day", "no-such-time", "zone-unknown", "rule-not-every-year", "rule-too-far"),
    ),
    (
        "the hosts and ports of web addresses, and the links and the size of texts in Markdown.",
        ("address-host", "address-port", "address-scheme", "not-an-address", "prose-brackets"),
    ),
    (
        "the shape that an outline has, and what an SVG path draws.",
        (
            "outline-short", "outline-crosses", "outline-flat", "outline-touches", "path-numbers",
            "path-second", "path-sign",
        ),
    ),
    (
        "the key as a whole: marks, blends, braids, matched sets.",
        (
            "sets-one-card",
            "key-empty", "key-line-unused", "key-mark-other", "key-lines-alike", "mark-long", "mark-reserved",
            "mark-unknown", "set-missing", "set-unsaid", "set-renamed", "colours-of-another", "matched-model", "matched-round", "blend-of-many",
            "blend-of-one", "braid-in-blend", "braid-strands",
        ),
    ),
    (
        "the chart: where lines, knots, beads and close-ups lie on it.",
        (
            "path-short", "point-twice", "point-outside", "long-stitch-bends", "daisy-points",
            "daisy-flat", "close-up-rows", "close-up-ragged", "close-up-outside", "close-up-full",
            "close-up-block", "close-up-halves", "close-up-line", "close-up-over-stitch",
            "close-up-twice",
        ),
    ),
)  # fmt: skip

UNSEEN = frozenset(code for _, codes in BEYOND for code in codes)
