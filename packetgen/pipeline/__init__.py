"""The line that every build runs: load → model → reckon → chart → render → write, each stage a call."""

from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.pipeline.builds import Built, build
from packetgen.pipeline.order import Order, Told
from packetgen.pipeline.packets import packet_files
from packetgen.pipeline.proofs import Proof, Reckoned, proof
from packetgen.pipeline.public import public_files
from packetgen.pipeline.settling import settle

__all__ = [
    "SYMBOLS_FILE",
    "Built",
    "Order",
    "Proof",
    "Reckoned",
    "Told",
    "build",
    "packet_files",
    "proof",
    "public_files",
    "settle",
]
