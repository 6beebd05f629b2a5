"""The catalogue: materials, tools, standards and statements as data. Every value carries where it comes from.

One table per file, one row per line, SI. A published fact names its source by a key of `sources.SOURCES`; a fact of the
trade or a remembered one names none, and the screen says which it is. It imports nothing.
"""
