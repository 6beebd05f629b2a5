from collections.abc import Callable
from typing import Any, NoReturn

from ..words.types import Said as Said

Values = dict[str, Any]
Found = Any
Function = Callable[..., Any]
Given = Any
Module = Any
Never = NoReturn
