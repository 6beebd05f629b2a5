from typing import Any

Said = Any
