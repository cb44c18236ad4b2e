"""What only drawing and reckoning find; most of it is advice."""

from packetgen.faults.fault import Fault, Level

FIGURES: dict[str, Fault] = {
    # the chart's symbols (found by chart)
    "key-too-long": Fault(
        "the key has {number} lines", "{limit} is the most: there is one chart shape for each"
    ),
    # colours of the site and the packet (found by reckon)
    "contrast-low": Fault(
        "{words}, {colour}, stands at {ratio}:1 on {ground}, {ground_colour}",
        "at least {least}:1 is needed to be read; {better} would do",
    ),
    # stitches that are hard to work (found by reckon)
    "alone-counted": Fault(
        "{share} of the stitches ({alone} of {stitches}) have no neighbour of their colour",
        "each takes a start and an end of its own; begin with the {here} in columns {columns}, rows {rows}; "
        "packetgen proof --alone lists more places",
        Level.ADVICE,
    ),
    # thread and beads on a cloth (found by reckon)
    "coverage-thin": Fault(
        "with {needle} for {marks}, {cloth} is covered to {share} %, which looks thin",
        "{better}",
        Level.ADVICE,
    ),
    "coverage-crowded": Fault(
        "with {needle} for {marks}, {cloth} is covered to {share} %, which is crowded",
        "{better}",
        Level.ADVICE,
    ),
    "coverage-everywhere": Fault(
        "with {needle} all {number} choices of cloth are covered to {share}, {how}",
        "{better}",
        Level.ADVICE,
    ),
    "beads-crowd": Fault(
        "{number} beads of {size} mm stand side by side, and on {cloth} they crowd",
        "take beads of {most} mm or less, a coarser cloth, or move them apart",
        Level.ADVICE,
    ),
    "symbols-alike": Fault(
        "seen with {eyes}, {mark} ({colour}) and {other} ({other_colour}) look alike, and so do their "
        "symbols {symbol} and {other_symbol}",
        "pin another, for example symbol: {better}",
        Level.ADVICE,
    ),
    # conversions to other threads (found by reckon)
    "match-too-few": Fault(
        "{wanted} colours of {source} are to be matched, and {card} has only {free} free",
        "give some of them a number in the key yourself, or take '{set}' out of thread_sets",
    ),
    "conversion-collides": Fault(
        "in '{set}' both {one} of the mark '{mark}' and {other} of '{other_mark}' become {number}",
        "{hint}",
        Level.ADVICE,
    ),
    "conversion-far": Fault(
        "with '{number}' in '{set}' the mark '{mark}' is far from the model's colour ({apart})",
        "{hint}",
        Level.ADVICE,
    ),
    # trim and magnets of a finishing piece
    "trim-width": Fault(
        "a straight trim whose width is not said, so its corners are not counted",
        "add it, for example width: 10 mm",
        Level.ADVICE,
    ),
    "trim-flat": Fault(
        "a gathered trim is longer than the edge, and this one {ratio}",
        "1.5 to 2 is a usual 'ratio' (common practice, no source); a flat one is straight, a cord round",
        Level.ADVICE,
    ),
    "magnet-over-edge": Fault(
        "a magnet {across} across with its middle {inset} in from the edge would stand over it",
        "let 'inset' be {least} or more, or take a smaller magnet",
    ),
    "magnet-thick": Fault(
        "a magnet {thick} thick and {across} across would keep the picture {thick} away from the panel",
        "look once more: {slip}",
        Level.ADVICE,
    ),
    "magnet-strong": Fault(
        "no magnet {across} across holds {holds}: the strongest that are sold could hold {most}",
        "write what its label says of one; should it be {better}?",
        Level.ADVICE,
    ),
    "dries-slow": Fault(
        "{hours} h is long for a paint until its next coat",
        "look once more at the tin: should it be {hours} min?",
        Level.ADVICE,
    ),
    "dries-fast": Fault(
        "{minutes} min is short for a paint until its next coat",
        "look once more at the tin: should it be {minutes} h?",
        Level.ADVICE,
    ),
    "covers-odd": Fault(
        "{covers} is {much} for a litre of paint put on with {way}",
        "look once more at the label: should it be {better}?",
        Level.ADVICE,
    ),
    "glue-for-other": Fault(
        "{name} is for {use}, and these are no wood",
        "mend the name, or what it is for",
        Level.ADVICE,
    ),
    "cures-fast": Fault(
        "{minutes} min is short for a glue until it holds",
        "look once more at its label: should it be {minutes} h?",
        Level.ADVICE,
    ),
    "tin-large": Fault(
        "a tin of {tin} is large for one small piece",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "tin-small": Fault(
        "{takes} ml of '{paint}' are needed, and so {tins}, where another paint comes in tins of {larger} ml",
        "look once more: should it be {better} ml?",
        Level.ADVICE,
    ),
    "inset-far": Fault(
        "an inset of {inset} reaches beyond the middle of a panel of {panel}",
        "write how far a magnet's middle is from the edge of the smallest card, for example {better}",
    ),
    "backing-idle": Fault(
        "every packet lists a backing fabric, and no step uses it",
        "add a step, for example: Cover the back with the backing fabric, and slip-stitch it down; or say that it may be left out",
        Level.ADVICE,
    ),
    "glue-unlisted": Fault(
        "the steps say {word}, and finish.yaml lists no glue, so nobody is told to buy it",
        "add a line there, for example glue: [{{name: wood glue, cures_in: 24 h, for: the wooden parts}}]",
        Level.ADVICE,
    ),
    "glue-for-none": Fault(
        "the step glues {what}, and no glue in finish.yaml is for that: there {names} is for something else",
        "add one to 'glue' there, or name this in its 'for'",
        Level.ADVICE,
    ),
    "glue-told-other": Fault(
        "here stands {said}, and no glue in finish.yaml is called so",
        "write {names}, or add it to 'glue' there",
        Level.ADVICE,
    ),
    "part-slim": Fault(
        "{part} of {size} can hardly be sawn, and corners are in mm",
        "if these are cm, write {better}",
        Level.ADVICE,
    ),
    "part-in-cm": Fault(
        "{part} of {size} carries no panel and holds no parts together, and corners are in mm",
        "if these are cm, write {better}",
    ),
    "part-in-px": Fault(
        "{part} of {size} is more than three times as wide and as high as the panel of {panel}",
        "if these are pixels of a drawing, 96 to the inch, it is {better}: let the drawing count in mm",
        Level.ADVICE,
    ),
    "hardware-short": Fault(
        "the step says {said}, and of {of} there {are} to buy",
        "mend the number here, or 'pieces' under 'hardware' in finish.yaml",
        Level.ADVICE,
    ),
    "hardware-others": Fault(
        "the step speaks of {said} more, which makes {all}, and of {of} there {are} to buy",
        "mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml",
        Level.ADVICE,
    ),
    "hardware-left": Fault(
        "the steps tell of {said} alone, and of {of} there {are} to buy",
        "mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
        Level.ADVICE,
    ),
    "pieces-told-one": Fault(
        "there are {number} of {name}, and the steps speak of one: {said}",
        "mend 'pieces' here, or the steps",
        Level.ADVICE,
    ),
    "hardware-scant": Fault(
        "{name} of {size} goes {said} in a step, which is {thick} thick, and so holds in nothing behind it",
        "write one of {enough} or more, or mend the step, or that 'thickness'",
        Level.ADVICE,
    ),
    "hardware-through": Fault(
        "{name} of {size} goes {said}, which is {thick} thick, and so comes out in front",
        "write a shorter one; or lay this aside where the size counts more than goes into the wood",
        Level.ADVICE,
    ),
    "hardware-unlisted": Fault(
        "the step says {said}, and nobody is told to buy any",
        "{mend}",
        Level.ADVICE,
    ),
    "hardware-unsaid": Fault(
        "every packet lists {name} to buy, and no step has a word of it",
        "let a step name it, or take this entry out",
        Level.ADVICE,
    ),
    "hardware-turned": Fault(
        "{name} of {size} is thicker than it is long",
        "look once more: should it be {right}?",
        Level.ADVICE,
    ),
    "hardware-long": Fault(
        "{name} of {size} is longer than {half}the whole piece, which is {piece} at its longest",
        "look once more: a nought too many, or another unit?",
        Level.ADVICE,
    ),
    "step-paint-other": Fault(
        "here stands {said}, and in finish.yaml {part} is painted with {own}",
        "name that here, or mend 'paint' there",
        Level.ADVICE,
    ),
    "step-parts-more": Fault(
        "the step says {said}, and of {of} there {are} in finish.yaml",
        "mend the number here, or the parts there",
        Level.ADVICE,
    ),
    "step-measure-other": Fault(
        "the step says {said}, and by finish.yaml {own}",
        "mend one of the two",
        Level.ADVICE,
    ),
    "step-time-short": Fault(
        "the step says {said}, and {what} takes {own} by its {name} in finish.yaml",
        "mend one of the two; what the label says counts",
        Level.ADVICE,
    ),
    "step-cleans-other": Fault(
        "the step says {said}, and by 'cleaned_with' in finish.yaml every paint wants {own}",
        "mend one of the two; what the tin says counts",
        Level.ADVICE,
    ),
    "step-order-other": Fault(
        "the step puts {part} {said} {other}, and finish.yaml lists it {listed} that, from the back to the front",
        "mend the word, or let the two change places in the list of parts",
        Level.ADVICE,
    ),
    "step-part-itself": Fault(
        "the step joins {part} to itself",
        "name the part that is meant in one of the two places",
        Level.ADVICE,
    ),
    "step-parts-apart": Fault(
        "the step joins {part} to {other}, and in finish.yaml the two, at {at} and {other_at}, stand {gap} apart",
        "name the part that is meant, or mend the 'at' of one of the two there",
        Level.ADVICE,
    ),
    "step-parts-overlap": Fault(
        "the step joins {part} to the edge of {other}, and in finish.yaml it lies {over} over it",
        "mend an 'outline' or 'at' there, or the step",
        Level.ADVICE,
    ),
    "step-overhang-other": Fault(
        "the step says {said}, and by finish.yaml {how}",
        "mend the step, or an 'outline' or 'at' there",
        Level.ADVICE,
    ),
    "step-part-unknown": Fault(
        "the step speaks of {said}{also}, and no part in finish.yaml is called so",
        "{mend}",
        Level.ADVICE,
    ),
    "step-part-twice": Fault(
        "the step names {part} twice{other}",
        "name each part once",
        Level.ADVICE,
    ),
    "step-part-left": Fault(
        "the step says {said}, and no step {does} {lacking}",
        "{mend}",
        Level.ADVICE,
    ),
    "step-template-none": Fault(
        "the step saws {parts} by a template, and there is none: by finish.yaml {are}",
        "say that the measures are meant, or mend the outline there",
        Level.ADVICE,
    ),
    "magnets-off-panel": Fault(
        "the step puts the magnets on {part}, and the panel, with all their places, lies on {other}",
        "name that part here, or mend the outline of the panel",
        Level.ADVICE,
    ),
    "step-side-other": Fault(
        "the step puts {part} {said} {other}, and by 'at' in finish.yaml it stands {stands} that",
        "mend the word, or the 'at' of one of the two there",
        Level.ADVICE,
    ),
    "trim-told-other": Fault(
        "the step says {said}, and the 'kind' of the trim in finish.yaml is {own}",
        "mend one of the two",
        Level.ADVICE,
    ),
    "step-magnets-other": Fault(
        "the step says {said}, and 'pairs' under 'magnets' in finish.yaml is {pairs}",
        "mend one of the two, or name no number here: every packet tells how many there are",
        Level.ADVICE,
    ),
    "step-paints-exchanged": Fault(
        "the steps give {part} and {other} each the other's paint",
        "let the two paints change places here, or in finish.yaml",
        Level.ADVICE,
    ),
    "step-part-coats": Fault(
        "here stands {said}, and in finish.yaml {part} has {own}",
        "mend the number here, or 'coats' there",
        Level.ADVICE,
    ),
    "step-face-other": Fault(
        "the step says {said}, and in finish.yaml that paint of {part} is for its {faces}",
        "name that here, or mend 'faces' there",
        Level.ADVICE,
    ),
    "coats-unlisted": Fault(
        "the step says {said}, and nobody is told to buy {what}",
        "add it to 'paints' in finish.yaml, and to what it is put on; or to 'hardware'",
        Level.ADVICE,
    ),
    "step-paint-unknown": Fault(
        "the step says {said}, and no paint of finish.yaml is called {name}",
        "{hint} it under 'paints' there, and to what it is put on",
        Level.ADVICE,
    ),
    "magnets-unplaced": Fault(
        "no step puts the magnets on the wood, and here they or their washers are spoken of",
        "tell it in a step, for example: Glue the magnets to the wood at the places of the template.",
        Level.ADVICE,
    ),
    "washers-unsaid": Fault(
        "every packet lists a steel washer for each magnet, and no step speaks of washers",
        "tell it in a step, for example: Glue the steel washers to the back where the template was pricked through.",
        Level.ADVICE,
    ),
    "trim-unsaid": Fault(
        "the steps tell of mounting, and none sews on the trim that finish.yaml has and everybody is told to buy",
        "tell it there, or take 'trim' out of finish.yaml",
        Level.ADVICE,
    ),
    "step-order-mixed": Fault(
        "step {own} stands behind step {before}, and is printed as {printed}",
        "{mend}, or number them anew",
        Level.ADVICE,
    ),
    "step-twice": Fault(
        "this step stands on line {line} already, word for word",
        "write what was meant here, or take it out",
        Level.ADVICE,
    ),
    "trim-none": Fault(
        "here stands {said}, and this piece has no trim",
        "take that out, or add a line to finish.yaml, for example trim: {entry}",
        Level.ADVICE,
    ),
    "step-sprays": Fault(
        "the step says {said}, and no paint of the piece is put on with spray",
        "say here how it is put on, or write put_on_with: spray, or or_with, at the paint in finish.yaml",
        Level.ADVICE,
    ),
    "step-coats-other": Fault(
        "here stands {said}, and in finish.yaml parts have {own} coats{paint}",
        "mend the number here, or 'coats' there",
        Level.ADVICE,
    ),
    "step-missing": Fault(
        "here stands {said}, and the longest list of these steps ends with {last}",
        "mend the number, or say what is meant",
        Level.ADVICE,
    ),
    "part-unsaid": Fault(
        "no step in steps.md speaks of the part {part}, and of each other part one does",
        "tell there what becomes of it, or call it there by this name",
        Level.ADVICE,
    ),
    "part-name-slip": Fault(
        "{part} is nearly {meant}, and no step has its words",
        "should it be {meant}, the twin of {twin}?",
        Level.ADVICE,
    ),
    "part-placeless": Fault(
        "{part} has no 'at', so it stands at 0,0, while other parts say where they stand",
        "give it one; write at: 0,0 if that is right",
        Level.ADVICE,
    ),
    "overlap-long": Fault(
        "an overlap of {long} is much for the two ends of a trim",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "part-doubled": Fault(
        "{part} is as large as {other} and at the same place, so one of the two is not seen",
        "give it its own 'at'; if both make one board, write one part, thickness: {thick}",
        Level.ADVICE,
    ),
    "trim-turned": Fault(
        "the trim is {width} wide, and its ends overlap by no more than {overlap}",
        "look once more: did 'width' and 'overlap' change places?",
        Level.ADVICE,
    ),
    "trim-unfit": Fault(
        "{trim}, and with that width {designs} not fit the finishing piece",
        "{hint}",
    ),
    "panel-corner": Fault(
        "the panel would be a rectangle but for its corner {corner}",
        "write {right} for it",
        Level.ADVICE,
    ),
    "panel-three": Fault(
        "the panel has only three of a rectangle's corners",
        "add the fourth, {right}",
        Level.ADVICE,
    ),
    "panel-unfit": Fault(
        "{panel}, and on that {designs} not fit",
        "{hint}",
    ),
    "fold-scant": Fault(
        "{fold} of cloth behind the card can hardly be laced or glued",
        "{mend}",
        Level.ADVICE,
    ),
    "wadding-small": Fault(
        "wadding {inset} smaller than its card on every side leaves a step below the stitching",
        "look once more: 1 or 2 mm are usual; should it be {better}?",
        Level.ADVICE,
    ),
    "edge-leaning": Fault(
        "the edge of {part} from {edge} is nearly level, {off} off over {long}",
        "if it is to be level, write {right} for one of the two corners",
        Level.ADVICE,
    ),
    "corner-beside": Fault(
        "the corner {corner} of {part} misses the rectangle of its other three corners",
        "if a figure was lost there, or two changed places, write {right}",
        Level.ADVICE,
    ),
    "part-thicker": Fault(
        "the part is {thick} thick, and only {size}",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "part-thick": Fault(
        "a board of {thick} is hardly sold so thick",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "border-broad": Fault(
        "border and trim take {around} of the panel's {across}, and {number} what is left",
        "write less, where a few millimetres are usual, or let the panel be larger",
    ),
    "magnets-none-room": Fault(
        "no card of the series has room for {pairs} magnets; the smallest is {inches} ({centimetres})",
        "{mend}, or write pairs: 0",
        Level.ADVICE,
    ),
    "panel-in-cm": Fault(
        "a panel of {panel} has no room for a design, and corners are in mm",
        "if these are cm, write {better}",
    ),
    "border-fills-panel": Fault(
        "there is no room for a design on a panel of {panel}: round it comes {around}, on every side",
        "write less, where a few millimetres are usual, or let the panel be larger",
    ),
    "panel-beyond-wood": Fault(
        "the panel reaches beyond the wood, {much}",
        "{within}, or {other}",
    ),
    "panel-beside-middle": Fault(
        "the panel lies {much} {side} the middle of {part}",
        "{mend} if it was measured from that part's corner: corners are those in the drawing of the whole",
        Level.ADVICE,
    ),
    "panel-across": Fault(
        "the panel lies on {part} with a part of it only, and on {onto}",
        "{mend} if it was measured from the corner of {part}: corners are those in the drawing of the whole",
        Level.ADVICE,
    ),
    "panel-over-gap": Fault(
        "below {share} % of the panel there is no wood",
        "{mend} if it was measured from the corner of {part}: corners are those in the drawing of the whole{other}",
        Level.ADVICE,
    ),
    "panel-beside-board": Fault(
        "{share} % of the panel lies beside {part}, and no wood is below it",
        "{mend}",
        Level.ADVICE,
    ),
    "panel-off-middle": Fault(
        "the panel lies {much} to the {side} of the middle that its parts share",
        "mend its corners",
        Level.ADVICE,
    ),
    "part-off-middle": Fault(
        "{part} stands {much} to the {side} of the middle that the panel and other parts share",
        "{mend}",
        Level.ADVICE,
    ),
    "part-pair-unlike": Fault(
        "{told}",
        "mend the one that is wrong, here or that of {twin} on line {line}, so that the two are alike",
        Level.ADVICE,
    ),
    "part-pair-uneven": Fault(
        "{left} reaches {from_left} to the left of the middle of panel and parts, and {right} {from_right} to the right",
        "{mend}",
        Level.ADVICE,
    ),
    "part-pair-sides": Fault(
        "{one} stands {stands} {other}",
        "mend 'at' of the one that was moved, or exchange their names",
        Level.ADVICE,
    ),
    "part-below-foot": Fault(
        "{part} reaches {much} further down than {other}",
        "mend its outline or its 'at'; or write at: {right} for {other}",
        Level.ADVICE,
    ),
    "part-over-panel": Fault(
        "{part} lies over the panel from {first} to {last} and hides {share} % of it",
        "{mend}, or name the area under 'keep_out'",
        Level.ADVICE,
    ),
    "part-hidden": Fault(
        "{part} lies wholly behind {front} and is not seen",
        "{mend}put it after that one (parts go from back to front); if it belongs there, write faces: back",
        Level.ADVICE,
    ),
    "part-hides": Fault(
        "{number} parts lie wholly behind {part} and are not seen",
        "put it before {first}, as parts go from the back to the front, or mend its size; if they belong there, write faces: back",
        Level.ADVICE,
    ),
    "part-over-twin": Fault(
        "{part} lies over {share} % of {other}, which has the same outline",
        "mend its 'at'; or lay this aside where the two are meant to lie so",
        Level.ADVICE,
    ),
    "part-turned": Fault(
        "with {part} at {at} the parts do not all touch one another",
        "should it be {better}? Then they do",
        Level.ADVICE,
    ),
    "part-apart": Fault(
        "{part} stands {gap} away from the nearest other part",
        "{mend}, so that the two touch{near}",
        Level.ADVICE,
    ),
    "part-joint-narrow": Fault(
        "{part} meets {other} in one point only, at {at}, where no glue would hold it",
        "let it lie over {other}, or meet it along an edge",
        Level.ADVICE,
    ),
    "magnets-no-room": Fault(
        "{title} on {cloth}, a card of {inches} ({centimetres}), leaves no room for {pairs} magnets "
        "where all designs have them",
        "{mend}, or write pairs: 0",
        Level.ADVICE,
    ),
    "magnets-none": Fault(
        "here stands {word}, and this piece has no magnets",
        "take that out{more}; or add a line, for example magnets: {{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}}",
        Level.ADVICE,
    ),
    "magnets-bunched": Fault(
        "{by} {are} so {how} that {title} may lift at its corners: all share magnets {inches} ({centimetres}) apart",
        "{mend}",
        Level.ADVICE,
    ),
    # a series as a whole (found by reckon)
    "title-twice": Fault(
        "'{title}' is also the title of another pattern ({other})", "give one of the two another"
    ),
    "stitches-moved": Fault(
        "the stitches under this{also} moved {moved} since the last build",
        "{mend} of each point there, or put the stitches back; where it is meant, the next build ends this",
        Level.ADVICE,
    ),
    "revision-missing": Fault(
        "{title} has another chart, key or lines than revision {revision} when it was first built into '{build}'",
        "if it is sold already, add under 'revisions', for example, - {{date: {today}, note: What has changed.}}",
        Level.ADVICE,
    ),
    "release-behind": Fault(
        "the release is {release}, just behind {over} {last}, so that no design of the series has its day until {first}",
        "put an earlier day here, or mend such an occasion's 'on'; or lay this aside in series.yaml",
        Level.ADVICE,
    ),
    "day-missed": Fault(
        "this pattern is released on {release}, {behind} after the day that it is for, {day}, so it first hangs for {next}",
        "look once more at the release, or at 'on' in its occasion",
        Level.ADVICE,
    ),
    "day-shared": Fault(
        "{title} is for the same day as {other} ({said}), so the swap calendar hangs both at once",
        "give one of the two another day, unless they are to hang together",
        Level.ADVICE,
    ),
    "occasion-begun": Fault(
        "{title} is for all of {whole}, which has begun already when the series is out on {release}, so it first hangs in {next}",
        "if it should hang in this year, write a day of it that is later than the release",
        Level.ADVICE,
    ),
    "release-early": Fault(
        "{what} is released on {release}{by}, and {issued}",
        "{mend}",
        Level.ADVICE,
    ),
    "revision-far": Fault(
        "this revision lies {years} years after the one before it, of {before}",
        "{hint}",
        Level.ADVICE,
    ),
    "issue-day-near": Fault(
        "the release is of {release}, and the {what} of {first}",
        "{mend}",
        Level.ADVICE,
    ),
    "alt-colour-none": Fault(
        "the picture's words say '{word}', and no colour of the key, the cloth or the piece is so",
        "mend the word, or the colour in the key",
        Level.ADVICE,
    ),
    "release-far": Fault(
        "{what} is released on {release}, {years} years after {revision}, when it is ready",
        "{hint}",
        Level.ADVICE,
    ),
    "credit-near": Fault(
        "the credits name {said} here, and {near} {where}",
        "look once more which of the two is right",
        Level.ADVICE,
    ),
    "credit-by-id": Fault(
        "{said} is the id of a designer, and credits are printed as they stand",
        "write {craft}: {name}",
        Level.ADVICE,
    ),
    "credit-missing": Fault(
        "the credits do not say {who}",
        "{mend}, or lay this aside while no model is stitched",
        Level.ADVICE,
    ),
    "photo-missing": Fault(
        "there is no photograph of {title}, so one is drawn{small}, from which nobody can copy a chart that is sold",
        "put a photo.jpg beside pattern.yaml, or lay this aside until it is taken",
        Level.ADVICE,
    ),
    "alt-missing": Fault(
        "photo_alt is not given",
        "the picture will be described as: '{alt}'",
        Level.ADVICE,
    ),
    "trim-idle": Fault(
        "trim_hex is the colour of a trim, and {piece} has none",
        "take the line out, or give the piece a trim in its finish.yaml",
        Level.ADVICE,
    ),
    "designer-idle": Fault(
        "{name} is listed, and no pattern here or to come is by that designer",
        "name {id} in a pattern, here or in 'to_come'; or take the entry out",
        Level.ADVICE,
    ),
    "designer-other": Fault(
        "{title} has {name} as its designer, and only {owner} sells it",
        "write '{id}' if it is {owner}'s; else name in 'sold_at' where {name} sells it{out}",
        Level.ADVICE,
    ),
    "thread-set-unused": Fault(
        "no pattern is charted for the thread set {set}",
        "add it to a pattern's thread_sets, or take it out",
        Level.ADVICE,
    ),
    "to-come-here": Fault(
        "{title} is listed as still to come, and its pattern is here",
        "take it out of to_come",
        Level.ADVICE,
    ),
    "paint-unused": Fault(
        "no part of {piece} is painted with {paint}",
        "paint a part with it, or take it out",
        Level.ADVICE,
    ),
    # the fit of a design (found by reckon)
    "none-fits": Fault(
        "none of the {number} designs fits a panel of {panel}, on any of its cloths",
        "look once more at 'outline'{free} here{nearest}",
    ),
    "does-not-fit": Fault(
        "on {cloth} the mounted design, {size}, is {excess}: {piece} has room for {most}",
        "{way}",
    ),
}
