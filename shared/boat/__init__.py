"""The boat: all its seams to what is bought, what is cut from which roll, and what it weighs.

May import: plan, seam, pour and the rooms below.
"""
