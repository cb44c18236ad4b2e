"""What an author begins with: answers to a few questions become files that build at once and explain themselves."""

LEAST, MOST, USUAL = 5, 300, 40  # stitches of the example design, either way
