"""Causes and cures of what only drawing and reckoning find."""

from packetgen.faults.why import Why

WHY_FIGURES: dict[str, Why] = {
    "key-too-long": Why(
        "Each key line has a chart shape of its own, and there are only so many that can be told apart.",
        "Use fewer colours: match the nearest ones and join them.",
    ),
    "contrast-low": Why(
        "Words in this colour are hard to read on that ground (WCAG 2.2, 1.4.3).",
        "Take the colour that is offered, or a darker or lighter one of your own.",
    ),
    "alone-counted": Why(
        "Many stitches have no neighbour of their colour. Each is begun and ended by itself.",
        "Join them to a patch, or give them a neighbour's colour, if the picture bears it.",
    ),
    "coverage-thin": Why(
        "With so few strands the cloth shows between the crosses.",
        "Take more strands, or offer a finer cloth.",
    ),
    "coverage-crowded": Why(
        "With so many strands the crosses have no room, and the cloth goes stiff.",
        "Take fewer strands, or offer a coarser cloth.",
    ),
    "coverage-everywhere": Why(
        "With these strands in the needle the cloth shows between the crosses, or they have no room, on every cloth of "
        "every pattern that is worked so: mostly the strands are another number than was meant.",
        "Mend strands in series.yaml, or where that is right, those of the thread card. Where it is meant to be so, lay the "
        "advice aside in series.yaml; whoever lays coverage-thin or coverage-crowded aside in a pattern is told of each "
        "cloth.",
    ),
    "beads-crowd": Why(
        "Beads side by side are wider than the stitches they sit on, so they push each other off.",
        "Take smaller beads, a coarser cloth, or leave a stitch between them.",
    ),
    "symbols-alike": Why(
        "To some eyes two colours are the same, and their symbols are not far apart either.",
        "Pin the symbol that is offered, or change a colour.",
    ),
    "match-too-few": Why(
        "A card has fewer free colours than are to be matched, and no colour is given twice.",
        "Write some numbers yourself, or do not offer that set.",
    ),
    "conversion-collides": Why(
        "Two colours of the model become one in the other thread, so a shade is lost.",
        "Give one of the marks another number in that set.",
    ),
    "conversion-far": Why(
        "The number that you gave is far from the model's colour, and the card has a nearer one.",
        "Take the nearer one, or leave yours if it is meant so.",
    ),
    "trim-width": Why(
        "A straight trim with a width takes more at the corners, and no width is given.",
        "Add width to the trim; 0 mm for a cord.",
    ),
    "trim-flat": Why(
        "A gathered trim takes ratio times the length of the edge: the more, the closer its gathers. At less than 1.2, or "
        "without a ratio, which counts as 1, there is next to nothing to gather, and too little would be bought.",
        "Give the ratio that you used. A trim that is laid flat is straight, and a cord is round.",
    ),
    "magnet-over-edge": Why(
        "The middle of a magnet is nearer to the edge than half of the magnet is wide.",
        "Let inset be larger, or take a smaller magnet.",
    ),
    "magnet-thick": Why(
        "Magnets and washers are glued between card and panel, and the picture stands off by as much as they are thick. One "
        "as thick as it is wide, or thicker, is mostly a nought too many or two measures that have changed places.",
        "Write thickness in millimetres; or lay the advice aside in series.yaml, where the magnets are sunk into the wood.",
    ),
    "magnet-strong": Why(
        "How many magnets hold a design is reckoned from what one of them holds. A magnet pulls with B² · area ÷ (2 · µ0) at most "
        "(Maxwell's stress), with B not above 1.5 tesla for those that are sold (from memory); more stands on no label. With too "
        "much of it a picture may fall.",
        "Correct 'holds', or the diameter; or lay the advice aside in series.yaml.",
    ),
    "dries-slow": Why(
        "A coat is said to dry for more than two days, and the packet adds that up for every coat: mostly minutes are meant.",
        "Write the time from the tin with its unit; or lay the advice aside where it is right.",
    ),
    "dries-fast": Why(
        "The packet tells how long the painting takes from how long each coat dries, and hardly a paint takes another coat within five "
        "minutes: mostly hours are meant.",
        "Correct the time or its unit; or lay the advice aside in series.yaml, if the tin says so.",
    ),
    "covers-odd": Why(
        "How many tins a buyer needs is reckoned from what a litre covers: from a tin mostly 5 to 15 m² in one coat, from a can less "
        "than half of that, since much of it is the gas that drives it out (from memory). A figure far from these has a nought too "
        "many or too few, or is what a whole tin covers.",
        "Correct the figure; or lay the advice aside in series.yaml, if the label says so.",
    ),
    "glue-for-other": Why(
        "A glue that is called one for wood is to hold magnets and washers, and hardly holds them: mostly two lines were exchanged.",
        "Exchange the names, or name a glue that holds metal; or lay the advice aside where its label says that it does.",
    ),
    "cures-fast": Why(
        "A glue is said to hold fully after minutes, and its name is not that of one that does. The packet tells a stitcher to "
        "wait so long.",
        "Write the time from the label with its unit; or lay the advice aside where it is right.",
    ),
    "tin-large": Why(
        "The packet tells how many tins to buy, and what of them is used. For a piece of a hand's breadth or two nobody buys a tin for a "
        "whole house: mostly it has noughts too many.",
        "Correct the tin; or lay the advice aside in series.yaml.",
    ),
    "tin-small": Why(
        "The packet tells how many tins to buy. Two of the smallest, where other paints of the piece come in much larger ones, are mostly "
        "one whose size has a nought too few.",
        "Correct the tin; or lay the advice aside in series.yaml where the paint is sold so.",
    ),
    "inset-far": Why(
        "The inset is measured from the edge of a mounting card, and no card is larger than the panel: the magnets of "
        "two sides would change places.",
        "Write the inset in millimetres, somewhat more than half of a magnet's diameter.",
    ),
    "backing-idle": Why(
        "Packet, kit and supplies tell buyers how much backing fabric to buy and cut, and the steps of the piece, which speak of "
        "wadding, never say what it is for.",
        "Add the step in which the back is covered. Where the back stays open, say in steps.md that the backing fabric may be "
        "left out.",
    ),
    "glue-unlisted": Why(
        "What is to buy for a finishing piece, and how long it must rest, is made of its list of glues, and that is empty, "
        "while the steps tell to glue something.",
        "List each glue in finish.yaml, with the time until it holds; or lay the advice aside in series.yaml.",
    ),
    "glue-for-none": Why(
        "A step glues wood, or magnets and washers, and by their 'for' the glues of the list are all for something else: mostly a "
        "line was taken out. What the packet lists to buy would not hold it.",
        "Add the glue that you used, or say in the 'for' of one that it is for this too.",
    ),
    "glue-told-other": Why(
        "The steps tell of a kind of glue that is not among what is to buy, and that has cautions and times of its own.",
        "Name the one that finish.yaml has, or add the other there.",
    ),
    "part-slim": Why(
        "A piece of wood less than 3 mm wide is hardly sawn (our own choice). Mostly its corners were written in "
        "centimetres.",
        "Write the corners in millimetres, as those of all parts.",
    ),
    "part-in-cm": Why(
        "The panel has no wood below it, though there are parts round it, and one small part would lie below all of it "
        "and join the others if it were ten times as large: its corners may be in centimetres.",
        "Write the corners in millimetres, as those of all parts; where it is as small as that, mend the places of "
        "the parts, or lay the advice aside in series.yaml.",
    ),
    "part-in-px": Why(
        "Drawing programs often count in pixels, of which 96 make an inch (CSS Values and Units, level 3), and write these "
        "into what they save. One part is so much larger than the panel and the other parts that it may be such.",
        "Set the drawing to millimetres, one unit a millimetre, and copy the shape anew; where the part is so large, lay "
        "the advice aside in series.yaml.",
    ),
    "hardware-short": Why(
        "A step counts more pieces than the hardware of finish.yaml has, which every packet lists to be bought.",
        "Mend the one of the two that is wrong.",
    ),
    "hardware-others": Why(
        "A step counts other pieces than those of a step before it, and together they are more than a stitcher is told to buy.",
        "Correct the number that is wrong.",
    ),
    "hardware-left": Why(
        "The steps count fewer pieces than the packet tells to buy, and speak of no others: a stitcher would have some left over, "
        "and wonder where they go.",
        "Let steps and hardware agree. Where the others are spare, say so in the steps, or lay the advice aside in series.yaml.",
    ),
    "pieces-told-one": Why(
        "By its 'pieces' a part is cut, or a thing bought, more than once, and the steps speak of it as of one: the number was "
        "mistyped, or the steps were not changed with it.",
        "Write how many there are, or speak of several in the steps.",
    ),
    "hardware-scant": Why(
        "A step drives a screw, a nail or the like through a part, and by the lengths in finish.yaml it comes out "
        "of it by less than 3 mm, whichever way the part lies; so it holds nothing behind it.",
        "Correct the length, or the thickness of the part; where the step means something else, lay the advice aside in "
        "series.yaml.",
    ),
    "hardware-through": Why(
        "A screw, nail or screw eye that a step puts into the back of a part is longer than that part is thick, so that its point comes "
        "out on the painted side.",
        "Choose a shorter one; or lay the advice aside where its eye or head is counted in the size.",
    ),
    "hardware-unlisted": Why(
        "A step counts screws, nails, hinges, dowels, brackets, bolts or tacks, or puts in a hook, a ring, a knob or a hanger, and "
        "none of that kind stands under 'hardware', from which the packet tells what to buy.",
        "Add the entry, or correct the step; or lay the advice aside in series.yaml.",
    ),
    "hardware-unsaid": Why(
        "What stands under 'hardware' is told to buy in every packet, and no word of the steps begins like one of its name, beside "
        "what it is made of and what others are called too: mostly a step is gone, or it calls the thing otherwise.",
        "Add a step, use the same word in both places, or take the entry out; or lay the advice aside in series.yaml.",
    ),
    "hardware-turned": Why(
        "Of a screw, a nail or a dowel the thickness is written first and the length last, and this one's first figure is the "
        "larger.",
        "Exchange the two; or lay the advice aside in series.yaml.",
    ),
    "hardware-long": Why(
        "Screws, nails, dowels and the like go into the wood, and the last length of this one's size is more than all parts "
        "together are wide or high.",
        "Correct the size; or lay the advice aside in series.yaml.",
    ),
    "step-paint-other": Why(
        "The step names a part and, right behind it, a paint of the piece that this part does not have in finish.yaml. The painting page "
        "of every packet goes by finish.yaml.",
        "Let both say the same; or lay the advice aside in series.yaml, where the step means something else.",
    ),
    "step-parts-more": Why(
        "A step counts parts of one kind, as 'three legs', and fewer are called so in finish.yaml, from which the packet draws and lists "
        "what is to saw.",
        "Let both say the same, or call the parts alike; where the step means other things, lay the advice aside in series.yaml.",
    ),
    "step-measure-other": Why(
        "The steps tell a length of the fold, the border, the wadding, the trim, the magnets, the hardware, the wood or a part, and "
        "finish.yaml has another, from which the packet reckons.",
        "Correct the one that is wrong, or leave the length out of the step: the packet's tables have it. Where the step "
        "means another length, lay the advice aside in series.yaml.",
    ),
    "step-time-short": Why(
        "The steps give a coat of paint less time until the next one, or glue less time to cure, than its label says by "
        "finish.yaml. What is held, clamped or pressed for a while is not meant.",
        "Correct the one that is wrong, or leave the time out of the step: the painting page tells it.",
    ),
    "step-cleans-other": Why(
        "The steps clean brushes in water where all paints of the piece want solvent, or in a solvent where all want water. "
        "The painting page says what 'cleaned_with' has.",
        "Correct the step, or cleaned_with of the paint, from the tin.",
    ),
    "step-order-other": Why(
        "Parts are listed from the back to the front, and drawn so. A step puts one behind, or in front of, a part that it "
        "laps, the other way about.",
        "Correct the word in the step, or the order of the list.",
    ),
    "step-part-itself": Why(
        "A step glues, screws or fixes a part to a place on that same part: mostly one of two names is a slip.",
        "Name the other part.",
    ),
    "step-parts-apart": Why(
        "A step joins two parts that, by their outlines and places in finish.yaml, do not touch: mostly one of two names is a slip. "
        "Of what hangs on cord, wire or a hinge nothing is said.",
        "Name the part that is meant, or correct the at of one of the two.",
    ),
    "step-parts-overlap": Why(
        "A step joins a part to the edge of another, and by their outlines and places in finish.yaml the one lies over the other "
        "there: one of the two was made larger, or moved, and the other was not.",
        "Correct the outline or the at of one of the two; or tell in the step that the one lies on the other.",
    ),
    "step-overhang-other": Why(
        "A step tells how far a part stands out beyond another, or how wide the gap between two is, and the edges of no two parts that it names lie so far from one "
        "another by their outlines and places: one of them was changed, or the step.",
        "Let both say the same; or lay the advice aside where the step measures something else.",
    ),
    "step-part-unknown": Why(
        "A step works on a part by a name that none of the piece's parts has: it was given another name since, or the step is "
        "another piece's. A stitcher looks for it on the template page.",
        "Name the part as finish.yaml does; or lay the advice aside where something else is meant.",
    ),
    "step-part-twice": Why(
        "A step names a part twice side by side, or saws or cuts out parts one by one, and one of them stands there twice while "
        "another is missing.",
        "Name each part once.",
    ),
    "step-part-left": Why(
        "The steps saw, paint or join parts by their names, and leave one out: mostly another name stands where it is meant, or its "
        "step was lost.",
        "Name every part, or say that all parts are sawn or painted; or lay the advice aside where the part needs no such step.",
    ),
    "step-template-none": Why(
        "Templates are printed of parts that are no rectangles; a rectangle is drawn with a ruler, by the measures that the "
        "packet has. The step sends a reader to a template that is not there.",
        "Say that the part is sawn to its measures.",
    ),
    "magnets-off-panel": Why(
        "Magnets sit behind the stitching, so on the part that carries the panel; the step puts them on a part that hardly "
        "reaches below it.",
        "Name the part that carries the panel, or correct the panel's outline.",
    ),
    "step-side-other": Why(
        "A step puts a part above or below another, or to its left or right, and by their outlines and places in finish.yaml all of "
        "it stands on the other side of that one's middle; or it puts it in the middle of another, or at an edge, and it stands "
        "beside that.",
        "Correct the word in the step, or the at of the part: its second number grows downwards.",
    ),
    "trim-told-other": Why(
        "The steps call the trim straight or flat, round or twisted, gathered, ruffled or pleated, and its kind in finish.yaml, by "
        "which its length is reckoned, is another.",
        "Correct the one that is wrong.",
    ),
    "step-magnets-other": Why(
        "The steps count magnets or washers, and the piece has another number of pairs. Every packet lists the pairs, and more of "
        "them where a heavy picture needs more.",
        "Let both agree, or say 'the magnets' without a number; where the step means something else, lay the advice aside in "
        "series.yaml.",
    ),
    "step-paints-exchanged": Why(
        "The steps paint each of two parts with what finish.yaml has for the other, by which the painting page of every packet goes.",
        "Let both say the same; or lay the advice aside in series.yaml.",
    ),
    "step-part-coats": Why(
        "The step gives a part other coats than finish.yaml, by which the painting page of every packet goes.",
        "Let both say the same; or lay the advice aside in series.yaml, where the step means something else.",
    ),
    "step-face-other": Why(
        "The step paints another face of a part than finish.yaml, by which the painting page of every packet goes.",
        "Let both say the same; or lay the advice aside in series.yaml, where the step means something else.",
    ),
    "coats-unlisted": Why(
        "A step puts on coats of varnish, wax, primer, sealer, lacquer, stain or oil, and nothing that is called so stands in "
        "finish.yaml: the packet does not tell to buy it, nor how long it dries.",
        "Add it as a paint, with the parts that it is put on, or to the hardware; or lay the advice aside in series.yaml.",
    ),
    "step-paint-unknown": Why(
        "A step names a paint that does not stand among the paints of the piece: mostly it is spelt otherwise there, or was given "
        "another name since. The packet then has one name in the steps and another on the painting page.",
        "Write the name that the paint has; or add the paint, with the parts that it is put on.",
    ),
    "magnets-unplaced": Why(
        "The steps speak of magnets or of washers, and in none are the magnets put on the wood, so a stitcher has them left over: "
        "mostly that step was lost.",
        "Add the step. Where another of its words says so, lay the advice aside in series.yaml.",
    ),
    "washers-unsaid": Why(
        "Magnets hold a picture by steel washers at its back. The steps speak of the magnets alone, so a stitcher has the washers left "
        "over, and nothing holds.",
        "Add a step that glues the washers to the back. Where magnets hold one another instead, lay the advice aside in series.yaml.",
    ),
    "trim-unsaid": Why(
        "The piece has a trim, so that it is bought, cut and reckoned with, and no step of the mounting speaks of it: that step is "
        "gone, or was written over.",
        "Add the step; or take the trim out of finish.yaml.",
    ),
    "step-order-mixed": Why(
        "The steps of a list are counted from 1 in print, whatever number stands before each. Here a number does not follow the one "
        "before it: two lines changed places, or one was lost.",
        "Put the lines in their order, or back what is lost; where all is as you meant it, number them anew.",
    ),
    "step-twice": Why(
        "Two steps are the same: one was copied, or written over by replacing text in the whole file.",
        "Write what the second was; where it is done twice, say so in other words, or lay the advice aside.",
    ),
    "trim-none": Why(
        "The steps sew a trim round the edge, and finish.yaml has no trim: no packet tells to buy one, and the size of the mounted "
        "design goes without it.",
        "Let both agree; or lay the advice aside in series.yaml.",
    ),
    "step-sprays": Why(
        "The steps spray a paint, and by finish.yaml all paints are brushed. Cautions for spray paint, and how much of it to "
        "buy, come into the packet only where finish.yaml says that a paint is sprayed.",
        "Let both say the same: put_on_with: spray is for a paint that is sprayed, or_with for one with which a stitcher may do "
        "either. Where the steps spray no paint, lay the advice aside in series.yaml.",
    ),
    "step-coats-other": Why(
        "The step counts coats of a paint, and no part has so many of it in finish.yaml. The painting page of every packet, and how "
        "much paint it says to buy, go by finish.yaml.",
        "Let both say the same; or lay the advice aside in series.yaml, where the step means something else.",
    ),
    "step-missing": Why(
        "The text sends a reader to a step by its number, and no list of the file has so many.",
        "Correct the number. Where a step of another page is meant, say of which; or lay the advice aside in series.yaml.",
    ),
    "part-unsaid": Why(
        "The steps speak of all parts but one: mostly it was given another name in finish.yaml and still has the old one in "
        "the steps, or its step is missing.",
        "Tell what becomes of the part, by the name that finish.yaml has.",
    ),
    "part-name-slip": Why(
        "Parts that belong together, a left and a right one, are called alike but for their side, and one of them is not quite: "
        "the packet's list and its templates would have the slip.",
        "Mend the name; or lay the advice aside where they are meant to be called so.",
    ),
    "part-placeless": Why(
        "A part without an at stands at 0,0, which is right for the one that the others are measured from. Here it is "
        "another one, and its line may have been forgotten.",
        "Write where its own 0,0 stands in the drawing of the whole.",
    ),
    "overlap-long": Why(
        "Two ends of a trim overlap by a finger's width or two (common practice, no source), and each design buys it.",
        "Correct the length; or lay the advice aside in series.yaml.",
    ),
    "trim-turned": Why(
        "The two ends of a trim overlap by a finger's width or so (common practice, no source), and few trims are wider than "
        "that. The two measures may have changed places: the width goes round every card and takes of the panel, the overlap "
        "only of the length to buy.",
        "Write each at its own name; or lay the advice aside in series.yaml.",
    ),
    "trim-unfit": Why(
        "The trim goes round every card, and so wide as it is written here designs are larger than the panel. Its overlap is "
        "small beside it: the two measures may have changed places.",
        "Look once more at width and overlap of the trim; where both are right, lay 'trim-turned' aside in series.yaml, "
        "and the designs are told.",
    ),
    "panel-corner": Why(
        "Three of the panel's four corners are those of an upright rectangle that lies on the wood, and the fourth is "
        "another: mostly a digit too few, or too many. Designs are laid where the panel has room for them.",
        "Correct the corner; or lay the advice aside in series.yaml.",
    ),
    "panel-three": Why(
        "The panel's three corners are those of an upright rectangle that lies on the wood, of which the fourth was not "
        "written; so designs are laid within a triangle.",
        "Add the corner; or lay the advice aside in series.yaml, where the panel is a triangle.",
    ),
    "panel-unfit": Why(
        "Three of the panel's corners are those of an upright rectangle that lies on the wood, and because the fourth is "
        "another, or missing, some designs have no room.",
        "Correct the corner; where it is right, lay 'panel-corner' or 'panel-three' aside in series.yaml, and the designs are told.",
    ),
    "fold-scant": Why(
        "The cloth is cut by fold_over larger than the card on every side, and what is folded over is laced or glued to "
        "its back: less than 8 mm hardly can be (our own choice; 20 to 40 mm are usual, from memory).",
        "Write the length in millimetres; or lay the advice aside in series.yaml.",
    ),
    "wadding-small": Why(
        "The wadding is cut by wadding_inset smaller than the card on every side. More than the border, or than 10 mm, leave "
        "the stitching hollow at its edges (up to 3 mm are never told; both our own choice).",
        "Write the length in millimetres; or lay the advice aside in series.yaml.",
    ),
    "part-doubled": Why(
        "Two painted parts of one shape stand at the same place, so one of them is not seen, and board and paint are "
        "counted for both. Mostly the place of a copied part was not changed.",
        "Give one of them its own 'at'. Where the two are glued to make a thicker board, write one part of that "
        "thickness, or lay the advice aside in series.yaml.",
    ),
    "edge-leaning": Why(
        "A long edge of a board goes up or down by a little, and the outline has no edge that leans the other way, as a low roof "
        "has: mostly one corner has a slip. The template, the wood to buy and the picture have the edge as it is written.",
        "Write the same second number in both corners; or lay the advice aside where the edge is meant to lean.",
    ),
    "corner-beside": Why(
        "Three corners of a board make a rectangle, and the fourth has the figures of the one that is missing, in another order. The "
        "template, the wood to buy and the picture have the board as it is written.",
        "Write the corner as the others have it; or lay the advice aside where the board is meant to slant.",
    ),
    "part-thicker": Why(
        "A part is thicker than it is wide and high: mostly its thickness is in another unit.",
        "Correct the thickness, or the outline; or lay the advice aside where it is a peg or a block.",
    ),
    "part-thick": Why(
        "Boards for craft work are sold to 30 mm or so (from memory); mostly a measure was written in centimetres "
        "that was meant in millimetres.",
        "Correct the thickness. Of a board that lies flat, let the outline show its edge. Where it is a block, lay the advice aside in series.yaml.",
    ),
    "border-broad": Why(
        "Round each design come the border of its card and the trim, on both sides. They take more of the panel than "
        "they leave, and so all designs are too large for it.",
        "Look for a measure in another unit or a nought too many; else make the panel larger.",
    ),
    "magnets-none-room": Why(
        "The magnets of all designs stand at the same places, so far from the edge of the smallest card as inset says, and "
        "on no card are there such places.",
        "Make inset smaller or the border wider, or take fewer magnets or smaller ones.",
    ),
    "panel-in-cm": Why(
        "The panel is so small that border and trim leave nothing of it to a design, and ten times as large it would be "
        "as panels usually are: its corners may be in centimetres.",
        "Write the corners in millimetres, as those of the parts.",
    ),
    "border-fills-panel": Why(
        "Round each design come the border of its card and the trim, on both sides, and both must lie on the panel.",
        "Look for a nought too many, or a measure in another unit; else make the panel larger.",
    ),
    "panel-beyond-wood": Why(
        "The panel and the parts are drawn in the same millimetres (a part stands where its at says), and where the "
        "panel lies there is no part, so the stitched piece would hang over the edge.",
        "Make the panel smaller, or the parts larger. Gaps between parts, and what they enclose, may lie below it.",
    ),
    "panel-beside-middle": Why(
        "The panel is not in the middle of the board below it, and would be if its corners were counted from the corner of "
        "that board, which itself stands elsewhere by its at. All designs, magnets and pictures would hang beside the middle.",
        "Count the corners in the drawing of the whole; or lay the advice aside where the panel is meant to be there.",
    ),
    "panel-across": Why(
        "The panel lies across two parts, which may differ in thickness and paint, and all of it would lie on one of them if "
        "its corners were counted from the corner of that part, which itself stands elsewhere by its at.",
        "Count the corners in the drawing of the whole; or lay the advice aside where the panel is meant to lie across.",
    ),
    "panel-over-gap": Why(
        "Part of the panel lies between parts, where nothing is, and all of it would lie on one board if its corners were "
        "counted from the corner of that board, which itself stands elsewhere by its at.",
        "Count the corners in the drawing of the whole; or lay the advice aside where the gap is meant to be there.",
    ),
    "panel-beside-board": Why(
        "Most of the panel lies on one part, and the rest on none: that part was made smaller or moved, or the panel was. The "
        "stitched piece would stand out into the air, and magnets there find no wood.",
        "Mend the part or the panel; or lay the advice aside where the panel is meant to stand out.",
    ),
    "panel-off-middle": Why(
        "The broad parts, those of one kind taken together, share one middle, from left to right, and the panel does not: its "
        "corners, or the parts, were changed without the others.",
        "Mend its corners; or lay the advice aside where the panel is meant to be there.",
    ),
    "part-off-middle": Why(
        "The panel and the other broad parts, those of one kind taken together, share one middle, from left to right, and this part "
        "does not: it was made wider or moved, and the others were not.",
        "Mend its at or its outline; or lay the advice aside where it is meant to stand at one side.",
    ),
    "part-pair-unlike": Why(
        "A left and a right part of one name differ in width or in height alone, in their thickness or their coats, or stand at "
        "different heights: one of the two was changed, and the other was not.",
        "Give both the same outline, thickness, coats and height; or lay the advice aside where they are meant to differ.",
    ),
    "part-pair-uneven": Why(
        "The panel and the broad parts share one middle, and a left and a right part stand unevenly about it: one of them was moved, "
        "or what is between them was made wider.",
        "Correct the at of one; or lay the advice aside where they are meant so.",
    ),
    "part-pair-sides": Why(
        "A part that is called left stands to the right of the one that is called right, or an upper one below the lower. The steps, the painting page and the "
        "templates name them so.",
        "Exchange the names or the places; or lay the advice aside where they are seen from behind.",
    ),
    "part-below-foot": Why(
        "The piece stands on its foot, base or plinth, and this part alone reaches further down: it was made longer or "
        "moved, so that the piece would stand on it.",
        "Mend its outline or its at; or lay the advice aside where it is meant to hang over the edge of a shelf.",
    ),
    "part-over-panel": Why(
        "Parts are listed from the back to the front, and this one stands, where its at says, before the wood that "
        "carries the panel: what is mounted there would be hidden. A part without an at stands at 0,0. What lies over "
        "the panel's edge by 5 mm or less is not told.",
        "Correct its at. If the part belongs there, name its area under keep_out, and designs stay clear of it; a part "
        "on which designs are mounted is carrying if it reaches below nearly all of the panel.",
    ),
    "part-hidden": Why(
        "Parts are drawn in the order in which they are listed, from the back to the front, and a later one covers "
        "all of this one, although its front is painted. What stands out by 0.5 mm or less counts as covered.",
        "Move the whole entry of the part below that of the other. Of wood that belongs behind the other nobody needs "
        "to paint the front: with faces: back or faces: edges no paint is reckoned for it.",
    ),
    "part-hides": Why(
        "Parts are drawn in the order in which they are listed, from the back to the front, and this one covers all of "
        "several others, although their fronts are painted: mostly a backboard that is listed too late.",
        "Move the whole entry of the part above those that lie on it, or correct its size. Of wood that belongs behind it nobody "
        "needs to paint the front: with faces: back or faces: edges no paint is reckoned for it. Of a box that is seen into from "
        "above, lay the advice aside.",
    ),
    "part-over-twin": Why(
        "Two parts of one outline are mostly a pair, as two posts or two ends, and here the later one lies over more than "
        "60 % of the earlier: mostly a number of its at is wrong, or in cm.",
        "Correct its at; or lay the advice aside in series.yaml, where the two are layers on purpose.",
    ),
    "part-turned": Why(
        "Some parts touch no other, and all would hang together if the two numbers of this at changed places: the first "
        "is how far to the right its own 0,0 stands, the second how far down.",
        "Exchange the two numbers; or lay the advice aside in series.yaml, where what stands alone hangs on cord or wire.",
    ),
    "part-apart": Why(
        "Where its at says, the part stands more than 1 mm away from all others, so it would be joined to nothing: mostly two "
        "numbers that have changed places, a digit too many or a comma in another place. A part without an at stands at 0,0. "
        "Where cord, wire or a hinge is named in the piece's texts or its hardware, gaps of up to 5 mm are let be, and one below or "
        "above of up to its own length or 30 mm, unless a step glues or screws the two to one another.",
        "Correct its at: it is where the 0,0 of the part's own outline stands in the drawing of the whole.",
    ),
    "part-joint-narrow": Why(
        "A corner, or the outermost point of a curve, is all of this part that comes near any other: the joint is shorter than "
        "7 % of either. The place is that in the drawing of the whole. Where cord, wire or a hinge is named in the "
        "piece's texts or its hardware, nothing is said.",
        "Correct its at or its outline, so that it lies over the other part or meets it along an edge; or lay the advice "
        "aside in series.yaml, where a dowel or a screw holds it.",
    ),
    "magnets-no-room": Why(
        "All designs of a series have their magnets at the same places, and on this card they do not fit.",
        "Make inset smaller, the border wider, or take fewer magnets. Bare rows round the design make its card larger too.",
    ),
    "magnets-none": Why(
        "The piece has no magnets (no such line, or pairs: 0), and its cautions, its glue, its hardware or its steps speak "
        "of them. Packet and page would print that.",
        "Take out what speaks of them, or write which magnets the piece has.",
    ),
    "magnets-bunched": Why(
        "One painted piece takes all designs of a series, so its magnets stand where they lie in the smallest card "
        "too. On a much larger card they then stand close together, less than half as far apart as on "
        "that card alone, in its middle, and its corners may lift. Its packet says what holds them besides. Once the small "
        "design has bare rows round it that keep the magnets apart, nobody is told to crop them.",
        "Make the small design larger, on a coarser cloth or with bare rows round it (they count in the size that is "
        "told of it), or give it a series and a "
        "piece of its own; or lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "title-twice": Why(
        "Two patterns have the same title, so readers and shops would take one for the other.",
        "Give one of them another.",
    ),
    "stitches-moved": Why(
        "A chart was drawn anew or widened in the editor, and its backstitch, knots, daisies or beads stayed where they were: they "
        "lie beside what they belong to. Only packetgen proof tells it, beside the folder 'build', or with --against another one.",
        "Move the points as the line says, or put the stitches back and let packetgen chart shift, crop or border move all together.",
    ),
    "revision-missing": Why(
        "What is stitched is no longer what it was when this revision was first built into that folder, and the number is "
        "still the same: two buyers would hold packets of one revision that differ. Said by proof --against and by "
        "build, and under proof --strict --against it counts as a fault.",
        "Where the packet is sold already, add a line below the others under revisions, with its day and what has changed; "
        "where nobody has it yet, nothing is to do.",
    ),
    "release-behind": Why(
        "No design hangs within four months of the release (our own choice), and days of designs are just over by then: "
        "pages and swap calendar show them for the next year. Mostly the release was moved and the occasions were not, or "
        "the other way round.",
        "Move one of the two; or lay the advice aside in series.yaml where the series is meant for the next year.",
    ),
    "day-missed": Why(
        "A pattern has a release of its own that lies less than a month (our own choice) behind the day of its occasion: whoever "
        "buys it then has just missed the day, and the swap calendar waits for the next year.",
        "Mend the release or the day; or lay the advice aside in pattern.yaml where it is meant for the next year.",
    ),
    "day-shared": Why(
        "Two designs of a series have the same day in their occasions. In the swap calendar they go up and come "
        "down together, and a finishing piece shows one design at a time.",
        "Give one of them another day. Where two are meant for the same day, lay the advice aside with laid_aside.",
    ),
    "occasion-begun": Why(
        "A design for a whole month or season goes up when that begins, and not before its series is out; so one that has "
        "begun by then waits for the next year.",
        "Write a day in it, such as last Sunday of March, or let the release be earlier; or lay the advice aside if it may "
        "wait.",
    ),
    "release-early": Why(
        "The first issue of a pattern is dated after the day on which it comes out. What is revised later corrects a "
        "pattern that is out, and nothing is said of it.",
        "Set the release later, or date the first issue on its day or before.",
    ),
    "revision-far": Why(
        "A revision lies more than five years after the one before it: mostly two digits of its year have changed places. Until "
        "that day the corrections show nothing of it, and the packet has it at the foot of every page.",
        "Correct the year. If it is meant so, lay the advice aside.",
    ),
    "issue-day-near": Why(
        "A pattern's first issue has about the day of its release in another year, or with day and month exchanged: mostly the two are "
        "meant to be near each other, or one day. The release decides when the pages show the pattern, the issue stands on the packet.",
        "Mend the day that is wrong; or lay the advice aside where both are right.",
    ),
    "alt-colour-none": Why(
        "The words for people who do not see the picture name a colour that is nowhere in it: mostly one was exchanged in the key, "
        "and its words were left.",
        "Say what is there now; or lay the advice aside where the word means something else.",
    ),
    "release-far": Why(
        "The day of release lies more than two years after the last revision, by which the packet is ready: mostly two "
        "digits of the year have changed places. Until that day no page shows the pattern.",
        "Correct the year. If it is meant so, lay the advice aside.",
    ),
    "credit-near": Why(
        "Two names are spelt alike but for a letter or two: mostly one person's, mistyped once.",
        "Correct one of the two; or lay the advice aside in pattern.yaml, where they are two people.",
    ),
    "credit-by-id": Why(
        "In 'designer' stands the id that series.yaml gives her; in credits stand names, since most of those who are thanked "
        "have no id.",
        "Write the name as readers shall see it. Where somebody is called so, lay the advice aside.",
    ),
    "credit-missing": Why(
        "The pattern does not say who stitched the model and who finished it. Packet and page thank both by name.",
        "Add the line to credits. While no model is stitched, lay the advice aside: nobody is to be thanked yet.",
    ),
    "photo-missing": Why(
        "There is no photograph of the stitched model, so a drawn picture stands in. In it a design of fewer than 30 "
        "stitches across or down shows little of what it is.",
        "Put a photo.jpg in the folder of the pattern when there is one.",
    ),
    "alt-missing": Why(
        "Who does not see the picture hears a text, and none is given.",
        "Write photo_alt: what the picture shows, in a sentence.",
    ),
    "trim-idle": Why(
        "In pictures that are drawn a design has a trim round it where its finishing piece has one, and trim_hex colours it.",
        "Take trim_hex out, or say in finish.yaml what runs round the mounted stitching.",
    ),
    "designer-idle": Why(
        "A designer is listed and has no pattern in the series, here or to come.",
        "Take the entry out, or name her in a pattern.",
    ),
    "designer-other": Why(
        "A pattern is by one designer of the series, and the shops that it names are another's alone. Mostly the one or the other was forgotten when a design changed hands.",
        "Give the pattern its right designer; or name where the new one sells it, and take the shop of the other out.",
    ),
    "thread-set-unused": Why(
        "The series lists a thread set that no pattern is charted for.",
        "Add it to a pattern, or take it out.",
    ),
    "to-come-here": Why(
        "A pattern is announced, and its folder is already there.",
        "Take it out of to_come.",
    ),
    "paint-unused": Why(
        "The piece lists a paint that no part is painted with, and it would be bought for nothing.",
        "Paint a part with it, or take it out.",
    ),
    "none-fits": Why(
        "Several designs of the series are offered on several cloths, and mounted on its card each is larger than the panel, or "
        "lies on a part to be kept free: so a measure of the piece is more likely wrong than all of the designs.",
        "Look once more at the corners of the panel and of what it keeps free, and at the border. Else offer finer cloths, or "
        "make panel and parts larger.",
    ),
    "does-not-fit": Why(
        "Mounted on its card, the design is larger than the panel, or lies on a part to be kept free. Where it fits on "
        "none of its cloths, only the finest is told.",
        "Offer a finer cloth, make the design smaller, or the panel larger, and with it the parts that it lies on.",
    ),
}
