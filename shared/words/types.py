"""Types: the names that signatures use here. mypy reads types.pyi beside it; a phone has no module of types."""

Said = tuple  # what is said, as `messages` reads it: a key is a text
