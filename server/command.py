"""The command line: `covemix serve`, `covemix export`, `covemix --version`."""
import argparse
from pathlib import Path

from .version import VERSION


def main(arguments: list[str] | None = None) -> None:
    parser = argparse.ArgumentParser(prog="covemix", description="The mixing maths of an epoxy seam.")
    parser.add_argument("--version", action="version", version=f"covemix {VERSION}")
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="serve the app and the API")
    serve.add_argument("--host", default="127.0.0.1", help="address to listen on; 0.0.0.0 for the shop's network")
    serve.add_argument("--port", type=int, default=8000)
    export = commands.add_parser("export", help="write the app as static files for an https host")
    export.add_argument("folder", type=Path)
    given = parser.parse_args(arguments)
    if given.command == "serve":
        _serve(given.host, given.port)
    else:
        _export(given.folder)


def _serve(host: str, port: int) -> None:
    import uvicorn

    from .app import create_app

    app = create_app()
    print(f"Covemix is at http://{'localhost' if host in ('127.0.0.1', '0.0.0.0') else host}:{port}/", flush=True)
    uvicorn.run(app, host=host, port=port, log_level="warning", server_header=False, date_header=False)


def _export(folder: Path) -> None:
    from .export import export

    print(f"{export(folder)} files in {folder}: put them on an https host, in any folder.")
