"""Recalled builds: which of them told something wrong, what it was, and what to check of what was made with them.

A phone keeps a build for years and paper keeps its links. `server` serves this list fresh as recalled.json; each phone
holds itself against it, and the engine holds each link against its own copy. A release is counted up in the change that
recalls those before it, and never down; what was wrong is one sentence, and so is what to check.
"""

RELEASE = 2  # of this build

# first and last release, ids of single builds beside them, what was wrong, what to check
RECALLED = (
    (1, 1, (), "recalled-one.wrong", "recalled-one.check"),
)
