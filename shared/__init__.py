"""The engine: plain Python that runs unchanged on CPython and on MicroPython in the page.

Its rooms, from the door down; each imports only rooms below it, and catalogue imports nothing (tests/test_rooms.py):
door, boat, plan, seam, pour, kit, safety, clock, mix, things, forms, drawing, words, equations, catalogue.
"""
