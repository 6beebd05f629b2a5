"""Files: what a reckoning gives other programs to open: tables, drawings, a sheet for a cutter, a calendar.

May import: words, equations.
"""
