"""Where this laptop stands in its network: its name there, its address, and the network that this is one of."""
import contextlib
import ipaddress
import re
import socket
import struct
import sys

if sys.platform.startswith("linux"):
    import fcntl

# RFC 1918 and 3927
PRIVATE = tuple(map(ipaddress.ip_network, ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16")))
USUAL = 24  # bits of a network whose mask the system does not tell: a router at home gives this one
ADDRESS, MASK = 0x8915, 0x891B  # SIOCGIFADDR, SIOCGIFNETMASK of Linux
OUTSIDE = ("10.255.255.255", 9)  # nothing is sent there: the system says by which address it would


def own_name(host: str) -> str:
    """The name that a network's devices find each other by (RFC 6762), or "" where the host has none of its own.

    >>> own_name("Shop.fritz.example"), own_name("localhost"), own_name("my_laptop")
    ('shop.local', '', '')
    """
    first = host.partition(".")[0].lower()
    plain = re.fullmatch(r"[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?", first)
    return f"{first}.local" if plain and first != "localhost" else ""


def is_private(address: str) -> bool:
    """Whether an address is one of a house's own network.

    >>> is_private("192.168.77.10"), is_private("198.51.100.7"), is_private("127.0.0.1"), is_private("shop")
    (True, False, False, False)
    """
    try:
        found = ipaddress.ip_address(address)
    except ValueError:
        return False
    return any(found in network for network in PRIVATE if found.version == 4)


def own_address() -> str:
    """The address of this laptop in its network, the one that it would reach others by; "" where it is in none."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked, contextlib.suppress(OSError):
        asked.connect(OUTSIDE)
        if is_private(asked.getsockname()[0]):
            return asked.getsockname()[0]
    return next((address for address, _ in _interfaces() if is_private(address)), "")


def network_of(address: str) -> ipaddress.IPv4Network:
    """The network that one of this laptop's addresses stands in; never one that reaches beyond a house's own.

    >>> network_of("192.168.177.10")
    IPv4Network('192.168.177.0/24')
    """
    mask = dict(_interfaces()).get(address, str(USUAL))
    network = ipaddress.IPv4Network(f"{address}/{mask}", strict=False)
    inside = any(network.subnet_of(one) for one in PRIVATE if isinstance(one, ipaddress.IPv4Network))
    return network if inside else ipaddress.IPv4Network(f"{address}/{USUAL}", strict=False)


def _interfaces() -> list[tuple[str, str]]:
    """(address, mask) of each interface, where the system is a Linux."""
    if not sys.platform.startswith("linux"):
        return []
    found = []
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
        for _, name in socket.if_nameindex():
            with contextlib.suppress(OSError):
                named = struct.pack("256s", name[:15].encode())
                address, mask = (socket.inet_ntoa(fcntl.ioctl(asked.fileno(), what, named)[20:24])
                                 for what in (ADDRESS, MASK))
                found.append((address, mask))
    return found
