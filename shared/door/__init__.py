"""The door: the one way in and out, text to text. A screen or a program asks here; a move is loaded when asked.

May import: every room.
"""
