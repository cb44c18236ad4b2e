"""The order in which shapes are given to colours.

Each shape is as unlike the nearest of those before it as can be had, turned and
mirrored twins counting as near. Recomputed by tests/bench/symbol_likeness.py.
"""

GIVING_ORDER: tuple[str, ...] = tuple(
    """
disc square-dot saltire figure-7 ring-slash-falling chevron-up bolt two-dots-rising
brick-upright pennant asterisk pin-left letter-h wave-across letter-a cup wedge-bar-left
two-wedges-up bar-dots-upright heart-open apple sprout two-chevrons-left sun crossbars
crown zigzag-upright letter-k two-slashes-falling steps-falling wedge-open-right
leaf-falling figure-3 square-filled-left star-eye letter-r half-square-se
three-bars-upright beehive crescent-left star-three bird saltire-open dome-right pot
arrow-ne four-dots mushroom tee-down pie wedge-left figure-4 corners drop slash-falling
two-dots-upright hat disc-slash-falling figure-2 disc-slot-upright chequer-rising
plus-open ring-filled-up hourglass-upright tray-up fork-down seed letter-y arrow-right
ladder angle-ne letter-e two-bars-across square-corner-ne spark diamond-slot-upright
snail figure-5 ring-gap-down three-dots-up leaf-veined heart seven-dots leaf-across
plus-dots diamond-filled-up tulip star letter-j letter-n ring-quartered-rising daisy
envelope bar-across clover ring-plus letter-m square-plus plus-broad diamond burst
five-dots star-six post fir acorn drop-slant square-open disc-saltire star-four
saltire-broad nine-patch square diamond-open halo ring window slash-dots-falling
chevron-down diamond-filled-right arrow-up ring-filled-right zigzag-across chevron-right
square-filled-down wedge-open-up ring-filled-down ring-filled-left wedge-up wave-upright
dome-down leaf-upright ring-gap-left pin-down pie-left two-chevrons-down wedge-bar-up
bar-dots-across two-wedges-left hourglass-across dome-up disc-slot-across
diamond-slot-across two-dots-across arrow-down arrow-left diamond-filled-down
bar-upright tee-left brick-across square-filled-up diamond-filled-left three-bars-across
two-bars-upright tray-right dome-left arrow-nw arrow-sw arrow-se slash-dots-rising
chevron-left two-wedges-right two-chevrons-right ring-gap-right drop-hanging tray-left
disc-slash-rising wedge-bar-right wedge-open-down pin-up steps-rising wedge-down
two-wedges-down leaf-rising chequer-falling star-three-down pennant-left tee-up
slash-rising half-square-sw half-square-ne square-corner-nw wedge-bar-down fork-up
ring-quartered-falling three-dots-down tray-down half-square-nw ring-gap-up
two-slashes-rising ring-slash-rising crescent-right pin-right tee-right two-chevrons-up
two-dots-falling wedge-right wedge-open-left angle-sw angle-se angle-nw target
square-corner-sw square-corner-se square-filled-right disc-plus plus three-leaves
""".split()
)
