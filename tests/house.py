"""The house as it is served, gathered and compressed once for all tests of a run: that takes seconds."""
import functools
from pathlib import Path

from covemix.server.app import create_app
from covemix.server.build import HOUSE, Build


@functools.cache
def build(house: Path = HOUSE):
    """All files of a house."""
    return Build(house)


@functools.cache
def app(house: Path = HOUSE):
    """The app of a house."""
    return create_app(build(house))
