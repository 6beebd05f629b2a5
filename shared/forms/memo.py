"""Once: what follows from values and is asked for by lines, drawings and leads alike."""


def once(values, name, make):
    """What `make()` gives, made the first time it is asked for under that name and kept beside the values.

    >>> values, calls = {}, []
    >>> once(values, "seam", lambda: calls.append(1) or "made"), once(values, "seam", None), len(calls)
    ('made', 'made', 1)
    """
    made = values.setdefault("_made", {})
    if name not in made:
        made[name] = make()
    return made[name]
