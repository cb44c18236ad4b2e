"""Lays the chart out on pages and draws it: symbols, tiles, SVG."""
