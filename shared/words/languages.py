"""Languages: what each has of its own besides its sentences, and who reads.

The sentences of a language are in a file named after it: `en.ftl`.
"""
from collections import namedtuple

# name: as HTML names it (BCP 47); label: its name in itself; decimal: its mark; to: between the least and the most;
# both: before the last of a list; small: whether a label has a small letter inside a sentence
Language = namedtuple("Language", ("name", "label", "decimal", "to", "both", "small"))

LANGUAGES = {one.name: one for one in (
    Language("en", "English", ".", " to ", " and ", True),
    Language("de", "Deutsch", ",", " bis ", " und ", False),
)}

# messages: the patterns of the language by key, or None where the build has put them in place of the keys (a phone);
# language: a row of LANGUAGES; units: METRIC or US
Reader = namedtuple("Reader", ("messages", "language", "units"))
