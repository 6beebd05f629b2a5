"""Types: the names that signatures use. mypy reads types.pyi beside it; a phone has no module of types."""

Values = dict  # what a form was read to: SI values by the names of its inputs, text and choices as they are
Said = tuple  # what is said, as `messages` reads it: a key is a text
Given = object  # as it came: text of a form, whatever a program sent, a thing that is handed on unread
Never = None  # of a function that always refuses
Module = object  # of a move or of the catalogue: its names told in DEVELOPERS.md
Function = object
Found = tuple  # what a move's `reckon` found, as its lines read it: a namedtuple, its fields told beside it
