"""The kit and the log: what the builder keeps, what own batches teach, and where every figure comes from.

May import: clock and the rooms below.
"""
