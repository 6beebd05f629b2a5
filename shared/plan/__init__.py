"""The plan: the seams of a day to batches that these hands can lay in time, and the day as it goes on.

May import: seam, pour and the rooms below.
"""
