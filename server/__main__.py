"""`python -m covemix.server` is the command `covemix`."""
from .command import main

main()
