"""The command line: `covemix serve`, `covemix export`, `covemix check`, `covemix --version`.

What a command needs is loaded when it is asked for: only here, so that the version is said at once and a wrong option
is refused before half of the house is there.
"""
import argparse
import re
from collections.abc import Callable
from pathlib import Path

from .version import VERSION


def main(arguments: list[str] | None = None) -> None:
    parser = argparse.ArgumentParser(prog="covemix", description="The mixing maths of an epoxy seam.")
    parser.add_argument("--version", action="version", version=f"covemix {VERSION}")
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="serve the app and the API")
    _serve_options(serve)
    export = commands.add_parser("export", help="write the app as static files for an https host")
    export.add_argument("folder", type=Path)
    export.add_argument("--compress", action="store_true",
                        help="write .gz and .br beside each text, for nginx (gzip_static) and Caddy (precompressed)")
    check = commands.add_parser("check", help="look whether a host serves the app rightly; say what to change there")
    check.add_argument("address", metavar="URL")
    given = parser.parse_args(arguments)
    if given.command == "serve":
        _serve(serve, given)
    elif given.command == "export":
        _export(given.folder, given.compress)
    else:
        _check(check, given.address)


def _serve_options(serve: argparse.ArgumentParser) -> None:
    serve.add_argument("--host", help="address to listen on (127.0.0.1); 0.0.0.0 for the shop's network")
    serve.add_argument("--port", type=int, default=8000, help="port to listen on (8000); never change it once phones "
                       "use it: what they keep belongs to the address")
    serve.add_argument("--certificate", type=Path, help="serve https with this certificate (PEM, with its chain)")
    serve.add_argument("--key", type=Path, help="the private key of that certificate (PEM)")
    serve.add_argument("--root-path", default="", metavar="/NAME", help="the path that a proxy serves the app under")
    serve.add_argument("--socket", type=Path, help="listen on this unix socket, for a proxy on the same machine")
    serve.add_argument("--allow-origin", action="append", default=[], metavar="ORIGIN",
                       help="let pages of another host ask the API, like https://club.example; may be given again")
    serve.add_argument("--log", action="store_true", help="write a line for each request, without query or address")
    lan = serve.add_argument_group("to phones in this network, by https")
    lan.add_argument("--lan", action="store_true", help="make a certificate, and show a QR code that brings it across")
    lan.add_argument("--name", help="the name of this laptop in the network, like shop.local")
    lan.add_argument("--address", help="the address of this laptop in the network, like 192.168.1.20")
    lan.add_argument("--authority", type=Path, metavar="FOLDER", help="where the certificates are kept")
    lan.add_argument("--new-authority", action="store_true",
                     help="make a new authority; each phone has to take the certificate again")


def _serve(parser: argparse.ArgumentParser, given: argparse.Namespace) -> None:
    if (given.certificate is None) != (given.key is None):
        parser.error("give both --certificate and --key")
    if given.root_path and not given.root_path.startswith("/"):
        parser.error("begin --root-path with a slash, like /covemix")
    for origin in given.allow_origin:
        if not re.fullmatch(r"https?://[a-z0-9.:\[\]-]+", origin):
            parser.error("give --allow-origin as a page's address has it, without a path: https://club.example")
    if given.socket and (given.host or given.certificate):
        parser.error("a unix socket has no --host and no --certificate: the proxy has them")
    if given.lan and (given.socket or given.certificate or given.root_path):
        parser.error("--lan makes its own certificate and listens by itself: leave out --certificate, --root-path, "
                     "--socket")
    if not given.lan and (given.name or given.address or given.authority or given.new_authority):
        parser.error("--name, --address, --authority and --new-authority go with --lan")
    print(f"Covemix {VERSION} is starting. The first start on a slow machine takes half a minute.", flush=True)
    from .running import Unready

    try:
        _way(given.lan)(given)
    except Unready as reason:
        parser.exit(1, f"covemix: {reason}\n")


def _way(lan: bool) -> Callable[[argparse.Namespace], None]:
    """How it is served: to phones in this network, or at an address."""
    if lan:
        from .lan import serve_lan

        return serve_lan
    from .running import serve

    return serve


def _check(parser: argparse.ArgumentParser, address: str) -> None:
    if not address.startswith(("http://", "https://")):
        parser.error("give the whole address, like https://example.org/covemix/")
    print(f"Looking at {address}: every file is fetched once.", flush=True)
    from .check import check

    found = check(address)
    for line in found.lines():
        print(line)
    parser.exit(1 if found.wrong else 0)


def _export(folder: Path, compress: bool) -> None:
    print("Gathering and packing the files of all languages: up to a minute.", flush=True)
    from .export import export

    print(f"{export(folder, compress=compress)} files in {folder}: put them on an https host, in any folder.")
