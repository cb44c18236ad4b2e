"""A chart mirrored, turned, cropped, shifted or bordered: as a design, and as the author's own text."""
