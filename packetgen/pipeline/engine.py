"""What every worker needs before its first packet: loaded once, and shared by all of them."""

import packetgen.pipeline.packets
import packetgen.render.packet
import packetgen.render.pictures  # noqa: F401
from packetgen.render.pdf import load_engine
from packetgen.render.templates import compile_all

load_engine()
compile_all("packet")
