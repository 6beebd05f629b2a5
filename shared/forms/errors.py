"""What the user can put right, told at the field where they can."""


class InputError(ValueError):
    """One field the user can put right.

    field: dotted path of the input, as in a form, a link and the API ("system.by_weight")
    message: one sentence in the user's words
    """

    def __init__(self, field: str, message: "str | tuple") -> None:
        super().__init__(message)
        self.field, self.message = field, message
