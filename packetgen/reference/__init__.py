"""What an author may write and what she may be told, as reference pages, JSON Schemas and a catalogue:
all of it made from the schema of `load` and the tables of `faults`.
"""
