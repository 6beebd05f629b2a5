"""Serves one house for the browser tests: `python serve.py PORT HOUSE [PATH]`; PATH, where given, answers 404."""
import sys
from pathlib import Path

import uvicorn
from covemix.server.app import create_app
from covemix.server.build import Build


def without(app, missing: str):
    """The app with one file gone, as after half an upload."""

    async def answer(scope, receive, send):
        if scope["type"] == "http" and scope["path"].endswith(missing):
            scope = dict(scope, path="/nothing")
        await app(scope, receive, send)

    return answer


if __name__ == "__main__":
    port, house, *missing = sys.argv[1:]
    app = create_app(Build(Path(house)))
    uvicorn.run(without(app, missing[0]) if missing else app, port=int(port), log_level="error")
