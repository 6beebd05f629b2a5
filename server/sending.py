"""How a file that is made once leaves the server."""
from starlette.requests import Request
from starlette.responses import Response

from .build import File


def sent(file: File, request: Request, kept: str) -> Response:
    """A file in the smallest form that was asked for. kept: the rule how long."""
    headers = {"Cache-Control": kept}
    if file.br or file.gzip:
        headers["Vary"] = "Accept-Encoding"
    body, encoding = file.sent(request.headers.get("accept-encoding", ""))
    if encoding:
        headers["Content-Encoding"] = encoding
    return Response(body, headers=headers | {"Content-Type": file.kind})
