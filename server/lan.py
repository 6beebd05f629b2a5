"""`covemix serve --lan`: from this laptop to the phones in its network, by https with an authority of its own."""
import argparse
import datetime
import io
import ipaddress
import os
import socket
import sys
import threading
from pathlib import Path

import uvicorn

from .own_network import is_private, network_of, own_address, own_name
from .running import ALL, Unready, config, run, say, taken

try:
    import segno
    from cryptography import x509

    from . import authority
except ImportError as error:
    raise Unready("--lan needs two more packages. Install them with: pip install 'covemix[lan]'") from error

from .bringing import Brought, bringing

ANEW = "Add --new-authority to make another one; each phone has to take its certificate again."
AVAHI = Path("/run/avahi-daemon")


def serve_lan(given: argparse.Namespace) -> None:
    """Make what is missing, say how a phone comes to the app, and serve until somebody stops it."""
    name, address = wanted(given.name, given.address)
    folder = given.authority or home()
    host = given.host or ALL
    with taken(host, given.port) as listener, taken(host, given.port + 1) as beside:
        own, new = kept(folder, name, address, given.new_authority)
        covered = [one for one in names(name, address) if own.covers(one)]
        if not covered:
            raise Unready(f"the authority in {folder} is for {' and '.join(limits(own))}, and this laptop is "
                          f"{' and '.join(filter(None, (name, address)))} now. {ANEW}")
        own.vouch(covered)
        brought = Brought(name if x509.DNSName(name) in covered else "",
                          address if address and x509.IPAddress(ipaddress.ip_address(address)) in covered else "",
                          given.port, given.port + 1, own.networks, own.fingerprint, own.der)
        for line in told(brought, own, new, name, address):
            say(line)
        page = uvicorn.Server(config(bringing(brought), lifespan="off"))
        threading.Thread(target=page.run, kwargs={"sockets": [beside]}, daemon=True).start()
        run(listener, given, f"Covemix is at {brought.by_name or brought.by_address}",
            ssl_certfile=folder / authority.LEAF, ssl_keyfile=folder / authority.LEAF_KEY)


def home() -> Path:
    """Where this user's data lies."""
    usual = os.environ.get("LOCALAPPDATA") if os.name == "nt" else os.environ.get("XDG_DATA_HOME")
    return Path(usual or Path.home() / ".local" / "share") / "covemix" / "authority"


def wanted(name: str | None, address: str | None) -> tuple[str, str]:
    """Name and address of this laptop in its network: those that were given, else those that it has."""
    if name and own_name(name) != name.lower():
        raise Unready(f"{name} is no name for a network. Give one like shop.local with --name.")
    if address and not is_private(address):
        raise Unready(f"{address} is no address of a private network. Give one like 192.168.1.20 with --address.")
    name, address = (name or own_name(socket.gethostname())).lower(), address or own_address()
    if not name and not address:
        raise Unready("this laptop is in no network that it could be found in. Connect it, or give --name or "
                      "--address.")
    return name, address


def names(name: str, address: str) -> list[authority.Name]:
    """What a certificate has to vouch for."""
    return [*([x509.DNSName(name)] if name else []),
            *([x509.IPAddress(ipaddress.ip_address(address))] if address else [])]


def limits(own: authority.Authority) -> list[str]:
    """What an authority may vouch for."""
    return [str(one.value) for one in own.permitted]


def kept(folder: Path, name: str, address: str, new: bool) -> tuple[authority.Authority, bool]:
    """The authority of the folder, and whether it was made now."""
    own = None if new else authority.found(folder)
    if own and own.over > datetime.datetime.now(datetime.UTC) + authority.LEAF_DAYS * authority.DAY:
        return own, False
    if own:
        raise Unready(f"the authority in {folder} ends on {own.over:%Y-%m-%d}. {ANEW}")
    return authority.made(folder, name or "covemix.invalid", [network_of(address)] if address else []), True


def told(brought: Brought, own: authority.Authority, new: bool, name: str, address: str) -> list[str]:
    """What stands on the terminal."""
    page = f"http://{address or name}:{brought.page_port}/"
    authority_is = "A new authority" if new else "The authority"
    lines = [f"{authority_is} for {' and '.join(limits(own))} only is in {own.folder}.",
             "Its key stays there. Who has that folder can pose as this laptop in this network, and as nothing else.",
             "", f"On a phone in this network, scan this code or open {page}", *code(page),
             "Compare on the phone before it trusts the certificate. SHA-256:",
             f"  {brought.fingerprint[:47]}", f"  {brought.fingerprint[48:]}", ""]
    if brought.by_name:
        lines.append(f"Then open {brought.by_name} there: this address stays.")
        if sys.platform.startswith("linux") and not AVAHI.exists():
            lines.append("  Phones find this name only if something here answers for it: on Debian, install "
                         "avahi-daemon.")
    elif name:
        lines.append(f"This authority does not cover the name {name}. With --new-authority it would.")
    if brought.by_address:
        lines.append(f"{'Only if the phone does not find that: ' if brought.by_name else 'Then open '}"
                     f"{brought.by_address}")
        lines.append("  What a phone keeps belongs to the address. Tell the router to always give this laptop the same "
                     "one.")
    elif address:
        lines.append(f"This authority does not cover the address {address}: use the name, or add --new-authority.")
    return [*lines, f"To take the certificate off a phone again: {page}#remove", ""]


def code(text: str) -> list[str]:
    """A QR code for the terminal, where its letters can show one."""
    try:
        "▀▄█".encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return []
    drawn = io.StringIO()
    segno.make(text, micro=False).terminal(drawn, compact=True)
    return drawn.getvalue().splitlines()
