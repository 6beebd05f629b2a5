"""The pour: a mix to what the tool must show, step by step; what saves a bad pour; filler and putty.

May import: safety, clock and the rooms below.
"""
