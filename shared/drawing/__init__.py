"""Drawing: shapes in plain coordinates, which template and page turn into SVG.

May import: words.
"""
