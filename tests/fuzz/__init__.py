"""Inputs that nobody thought of: harnesses that make them, and the ones that once found something."""
