"""Things of the kit: what a system, a cup, a pump, a filler, a crew says, and what own timings and rates say of it.

May import: forms and the rooms below.
"""
