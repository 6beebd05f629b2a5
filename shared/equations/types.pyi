from collections.abc import Callable, Sequence
from typing import Any

Function = Callable[..., Any]
Like = Any
Pace = Any
Figures = Sequence[Any]
