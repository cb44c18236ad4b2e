"""`python -m packetgen` is the same as the console command."""

from packetgen.cli import main

main()
