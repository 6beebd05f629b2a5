"""Equations: one function, one quantity, with its units, limits and source. SI in, SI out; no text, no form, no unit.

May import: catalogue.
"""
