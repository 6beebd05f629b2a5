"""The engine: plain Python that runs unchanged on CPython and on MicroPython in the page."""
