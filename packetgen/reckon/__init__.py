"""Works figures out of the nouns: pure functions, no files, no clock."""
