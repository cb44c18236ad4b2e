"""The pages as a browser shows them: every one, on every width, in either scheme, by anybody."""
