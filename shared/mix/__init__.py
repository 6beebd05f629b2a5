"""The mix: from a label to parts, how exact they must be, and the dose of filler; before anybody measures anything.

May import: things and the rooms below.
"""
