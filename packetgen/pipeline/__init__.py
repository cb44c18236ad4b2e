"""The line that every build runs: load → model → reckon → chart → render → write, each stage a call."""

from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from packetgen.load.symbols_file import SYMBOLS_FILE
    from packetgen.pipeline.builds import Built, build
    from packetgen.pipeline.foretelling import Foretold, foretold
    from packetgen.pipeline.order import Order, Told
    from packetgen.pipeline.packets import packet_files
    from packetgen.pipeline.proofs import Proof, Reckoned, proof
    from packetgen.pipeline.public import public_files
    from packetgen.pipeline.reviewing import review
    from packetgen.pipeline.settling import settle

__all__ = [
    "SYMBOLS_FILE",
    "Built",
    "Foretold",
    "Order",
    "Proof",
    "Reckoned",
    "Told",
    "build",
    "foretold",
    "packet_files",
    "proof",
    "public_files",
    "review",
    "settle",
]

_STANDS_IN = {
    "SYMBOLS_FILE": "packetgen.load.symbols_file",
    "Built": "packetgen.pipeline.builds",
    "Foretold": "packetgen.pipeline.foretelling",
    "Order": "packetgen.pipeline.order",
    "Proof": "packetgen.pipeline.proofs",
    "Reckoned": "packetgen.pipeline.proofs",
    "Told": "packetgen.pipeline.order",
    "build": "packetgen.pipeline.builds",
    "foretold": "packetgen.pipeline.foretelling",
    "packet_files": "packetgen.pipeline.packets",
    "proof": "packetgen.pipeline.proofs",
    "public_files": "packetgen.pipeline.public",
    "review": "packetgen.pipeline.reviewing",
    "settle": "packetgen.pipeline.settling",
}


def __getattr__(name: str) -> object:
    """Each stage is loaded when it is first asked for: a build with nothing to do needs hardly any."""
    if name not in _STANDS_IN:
        raise AttributeError(name)
    return getattr(import_module(_STANDS_IN[name]), name)
