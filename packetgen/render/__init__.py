"""Turns figures and drawings into pages and pictures."""
