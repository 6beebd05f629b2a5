"""Forms: the kinds of input, how typed text and links are read, and what the user can mend.

May import: drawing, words, equations, catalogue.
"""
