"""Safety: the cautions of a task and of the moment, and the air of this room.

May import: clock and the rooms below.
"""
