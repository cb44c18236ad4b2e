"""packetgen: pattern packets and preview pages for people who design and publish cross stitch."""

__version__ = "0.1.0"
