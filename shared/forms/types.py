"""Types: the names that signatures use. mypy reads types.pyi beside it; a phone has no module of types."""

Values = dict  # what a form was read to: SI values by the names of its inputs, text and choices as they are
Said = tuple  # what is said, as `messages` reads it: a key is a text
Found = tuple  # what a move's `reckon` found, as its lines read it: a namedtuple, its fields told beside it
