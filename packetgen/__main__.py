"""`python -m packetgen` is the same as the console command."""

from packetgen.cli import main

if __name__ == "__main__":  # workers of a build load this file too
    main()
