"""Words: numbers, units, lengths and lines as people read and hear them.

May import: equations (how to round), catalogue.
"""
