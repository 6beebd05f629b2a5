"""Which worker begins with which tests: xdist gives each an equal part of them, in the order in which they stand."""

# files that take a minute or more, or begin with one: each as so many browser tests
LONG = {"test_both_runtimes.py": 80, "test_lan.py": 60, "test_main_way.py": 80, "test_pictures_show.py": 80}


def dealt(items, workers):
    """Browsers first and whole files of them, so that what a file makes once is made once; then what takes no time, so
    that no worker waits for another at the end.

    >>> from collections import namedtuple
    >>> from pathlib import Path
    >>> Item = namedtuple("Item", "path place")
    >>> def made(name, count):
    ...     return [Item(Path(name), place) for place in range(count)]
    >>> found = dealt(made("browser/a.py", 3) + made("browser/b.py", 1) + made("c.py", 8) + made("engines/d.py", 2), 2)
    >>> [" ".join(one.path.stem for one in part) for part in (found[:7], found[7:])]
    ['a a a c c c c', 'd d b c c c c']
    """
    files, light = {}, []
    for item in items:
        heavy = {"browser", "engines"} & set(item.path.parts)
        (files.setdefault(item.path, []) if heavy else light).append(item)
    weights = {path: LONG.get(path.name, len(own)) for path, own in files.items()}
    hands, loads = [[] for _ in range(workers)], [0] * workers
    for path in sorted(files, key=lambda path: -weights[path]):
        least = loads.index(min(loads))
        hands[least] += files[path]
        loads[least] += weights[path]
    found, left = [], len(items)
    for place, hand in enumerate(hands):
        part = left // (workers - place)
        left -= part
        fill = max(0, part - len(hand))
        found += hand + light[:fill]
        del light[:fill]
    return found + light
