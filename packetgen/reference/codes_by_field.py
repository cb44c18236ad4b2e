"""Messages that need more than the value of a field itself: another field, a card, a chart, a whole series.

file → field → codes; under '' stand those that are told of the file as a whole.
"""

from collections.abc import Mapping

_MARK = ("mark-unknown",)
_CHART = ("point-outside",)
_PLACED = (*_CHART, "points-on-bare")
_FACE = (
    "file-missing", "outside-folder", "font-kind", "font-unreadable", "font-embedding", "font-print-only",
    "font-heavy",
)  # fmt: skip
_STRANDS = ("strands-too-many",)
_ASIDE = ("name-twice", "laid-aside-idle")
_WORN = ("contrast-low",)
_COLOURS = ("paper", "shade", "ink", "heading", "accent", "quiet", "rule")

_SERIES: Mapping[str, tuple[str, ...]] = {
    "": (
        "series-missing",
        "to-come-here",
        "foot-long",
        "share-title-small",
    ),
    "address": ("templates-unaddressed",),
    "release": ("release-far", "release-behind"),
    "order": ("name-twice", "pattern-missing", "pattern-not-in-order"),
    "thread_sets[].name": (
        "name-reserved",
        "name-twice",
        "thread-set-unused",
        "coverage-everywhere",
    ),
    "thread_sets[].strands": ("strands-all", *_STRANDS),
    "thread_sets[].backstitch_strands": _STRANDS,
    "thread_sets[].knot_strands": _STRANDS,
    "thread_sets[].daisy_strands": _STRANDS,
    "designers[].id": ("name-twice", "designer-idle"),
    "designers[].about": ("named-twice",),
    "reckoning.tail": ("needleful-short",),
    "reckoning.ease": ("ease-order",),
    "pace": ("pace-order",),
    "to_come[].occasion.on": ("day-shared", "occasion-begun"),
    "laid_aside[].advice": _ASIDE,
    "laid_aside[].about": _ASIDE,
    "notices[].closes": ("closes-early",),
    **{f"look.{when}.{name}": _WORN for when in ("light", "dark") for name in _COLOURS},
    "look.text": (*_FACE, "font-no-bold"),
    "look.text_bold": _FACE,
    "look.text_italic": _FACE,
    "look.heading": (*_FACE, "font-letters"),
}

_PATTERN: Mapping[str, tuple[str, ...]] = {
    "": (
        "credit-missing", "photo-missing", "alt-missing", "trim-idle", "letters-missing", "cover-full",
        "chart-copied", "texts-copied", "foot-long", "share-title-small",
    ),
    "title": ("title-twice",),
    "trim_hex": ("trim-idle",),
    "occasion.on": ("day-shared", "occasion-begun"),
    "cloths": (
        "name-twice", "coverage-thin", "coverage-crowded", "beads-crowd", "does-not-fit",
        "magnets-no-room", "magnets-bunched", "fit-tight", "cut-wastes", "over-rare", "thread-unseen",
    ),
    "cloths[].cloth": ("cloth-colour-turned",),
    "cloths[].colour": ("colour-unknown",),
    "thread_sets": ("name-twice",),
    "matched": ("matched-model", "matched-round", "match-too-few"),
    "key": (
        "key-empty", "key-too-long", "mark-reserved", "mark-long", "set-missing", "set-unsaid", "set-renamed", "key-line-unused", "key-mark-other",
        "key-lines-alike", "key-remark-other", "braid-in-blend", "symbols-alike", "conversion-collides", "conversion-far",
        "skein-little", "skein-short", "colours-alike", "colours-alike-to-some", "colours-of-one-name",
        "symbols-alike-in-grey",
    ),
    "key.<name>.<thread set>": (
        "key-name-unknown", "set-not-offered", "colour-unknown", "colours-of-another", "key-lines-alike", "blend-of-many",
        "blend-of-one", "braid-in-blend", "conversion-far", "conversion-collides",
    ),
    "key.<name>.<thread set>[].number": ("colour-unknown",),
    "key.<name>.strands": ("reference-unknown", "braid-strands", *_STRANDS),
    "key.<name>.symbol": ("symbol-twice",),
    "backstitch[].colour": _MARK,
    "backstitch[].path": ("path-short", "point-twice", *_PLACED),
    "long_stitch[].colour": _MARK,
    "long_stitch[].path": ("path-short", "point-twice", "long-stitch-bends", *_PLACED),
    "lazy_daisies[].colour": _MARK,
    "lazy_daisies[].path": ("daisy-points", "daisy-flat", *_CHART),
    "french_knots[].colour": _MARK,
    "french_knots[].at": _PLACED,
    "beads[].number": ("colour-unknown",),
    "beads[].at": _PLACED,
    "close_ups[].at": ("close-up-outside",),
    "laid_aside[].advice": _ASIDE,
    "laid_aside[].about": _ASIDE,
    "close_ups[].rows": (
        "close-up-rows", "close-up-ragged", "close-up-full", "close-up-block", "close-up-halves",
        "close-up-line", "close-up-over-stitch", "close-up-twice", "mark-unknown",
    ),
    **{f"credits.{craft}": ("credit-by-id",) for craft in ("model_stitcher", "finisher", "dyer")},
    "credits.photographer": ("photographer-idle", "credit-by-id"),
    "sold_at": ("not-sold",),
    "sold_at[].url": ("counter-of-another",),
    "given_away": ("given-and-sold",),
    "release": ("release-early", "release-far"),
    "revisions[].date": ("revisions-order", "release-early", "revision-missing"),
    "chart": ("chart-kind", "file-missing", "outside-folder"),
}  # fmt: skip

BY_FIELD: Mapping[str, Mapping[str, tuple[str, ...]]] = {
    "threads/<card>.yaml": {
        "name": ("card-of-one-name",),
        "strands": ("braid-parted",),
        "tex": ("tex-whole",),
        "size": ("tex-whole",),
        "weight": ("weight-odd",),
        "length": ("length-long",),
        "sold_as": ("unit-more",),
        "price": ("price-dear", "currency-other"),
        "colours": ("card-copied",),
        "colours[].number": ("colour-twice", "number-for-name"),
        "colours[].hex": ("hex-twice",),
    },
    "cloths/<cloth>.yaml": {
        "name": ("card-of-one-name",),
        "count": ("count-other", "count-unfit", "count-rare"),
        "over": ("over-rare", "over-single"),
        "price": ("price-dear", "currency-other"),
        "colours[].name": ("colour-twice",),
        "colours[].hex": ("hex-twice",),
    },
    "beads/<card>.yaml": {
        "name": ("card-of-one-name",),
        "size": ("bead-large",),
        "price": ("price-dear", "currency-other"),
        "colours": ("card-copied",),
        "colours[].number": ("colour-twice", "number-for-name"),
        "colours[].hex": ("hex-twice",),
    },
    "finishes/<piece>/finish.yaml": {
        "": ("paint-unused", "share-title-small"),
        "glue": ("glue-unlisted",),
        "glue[].for": ("magnets-none",),
        "hardware[].name": ("magnets-none", "hardware-unsaid"),
        "hardware[].size": ("hardware-long",),
        "cautions": ("magnets-none",),
        "parts[].name": (
            "part-unsaid",
            "name-twice",
            "part-over-panel",
            "part-placeless",
            "part-hidden",
            "part-hides",
            "part-apart",
            "part-doubled",
            "part-joint-narrow",
            "part-over-twin",
        ),
        "fold_over": ("fold-scant",),
        "wadding_inset": ("wadding-small",),
        "parts[].at": (
            "part-over-panel",
            "part-apart",
            "part-turned",
            "part-doubled",
            "part-joint-narrow",
            "part-over-twin",
        ),
        "parts[].faces": ("names-instead",),
        "parts[].painted[].paint": ("coat-twice",),
        "paints[].name": ("name-twice",),
        "paints[].or_with.put_on_with": ("same-way-twice",),
        "panel.outline": (
            "panel-beyond-wood",
            "panel-beside-middle",
            "panel-across",
            "panel-over-gap",
            "panel-corner",
            "panel-unfit",
            "panel-in-cm",
        ),
        "parts[].thickness": ("part-thick",),
        "parts[].outline": ("panel-beyond-wood", "part-slim", "part-in-cm", "part-in-px"),
        "border": ("border-fills-panel", "border-broad"),
        "trim.kind": ("trim-width", "trim-flat"),
        "trim.ratio": ("trim-flat",),
        "trim.overlap": ("overlap-long",),
        "trim.width": ("border-fills-panel", "border-broad", "trim-turned", "trim-unfit"),
        "magnets.diameter": ("magnets-none-room",),
        "magnets.inset": ("magnet-over-edge", "inset-far", "magnets-none-room"),
    },
    "series/<series>/series.yaml": _SERIES,
    "series/<series>/<pattern>/pattern.yaml": _PATTERN,
    "series/<series>/<pattern>/symbols.yaml": {"symbols": ("symbol-left-over", "symbol-twice")},
}
