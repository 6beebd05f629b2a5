from collections.abc import Callable, Sequence
from typing import Any

Function = Callable[..., Any]
Pace = Any
Figures = Sequence[Any]
