"""Types: the names that signatures use here. mypy reads types.pyi beside it; a phone has no module of types."""

Function = object  # of figures to a figure
Like = object  # another of the same kind, whose sums are kept
Pace = object  # how fast a mix ages over the clock: a Profile, or a Held where one pace is enough of a bound
Figures = tuple  # figures, or rows of them, in their order: a list or a tuple
