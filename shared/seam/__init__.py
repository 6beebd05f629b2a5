"""The seam: two panels and an angle to the cove, the other face, the tape, the resin, the drawing and the spreader.

May import: pour and the rooms below.
"""
