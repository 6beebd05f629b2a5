from typing import Any

Values = dict[str, Any]
Found = Any
Said = Any
