"""An authority of this laptop's own. It vouches for this laptop in its own network, and can vouch for nothing else.

Three certificates (RFC 5280): a root, whose key is never written; a signer below it, whose key file only its owner
reads; and a leaf for the server, made anew at each start. Root and signer are constrained (4.2.1.10, critical) to the
name of this laptop and to one network. A verifier may ignore that on a root, but not on the signer.
"""
import contextlib
import datetime
import hashlib
import ipaddress
import os
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

Network = ipaddress.IPv4Network | ipaddress.IPv6Network
Address = ipaddress.IPv4Address | ipaddress.IPv6Address
Name = x509.DNSName | x509.IPAddress

DAY = datetime.timedelta(days=1)
ROOT_DAYS = 3650
LEAF_DAYS = 397  # phones refuse more than 825 days of any authority, and more than 398 of a public one
ROOT, CHAIN, SIGNER = "root.crt", "signer.pem", "signer.key"  # the signer's key is written last
LEAF, LEAF_KEY = "server.pem", "server.key"
NOWHERE = (ipaddress.ip_network("0.0.0.0/0"), ipaddress.ip_network("::/0"))


@dataclass(frozen=True)
class Authority:
    """An authority as it lies in its folder."""

    folder: Path

    @cached_property
    def root(self) -> x509.Certificate:
        """What a phone takes over."""
        return x509.load_der_x509_certificate((self.folder / ROOT).read_bytes())

    @cached_property
    def signer(self) -> x509.Certificate:
        return x509.load_pem_x509_certificate((self.folder / CHAIN).read_bytes())

    @property
    def der(self) -> bytes:
        """The root as a file for a phone."""
        return self.root.public_bytes(serialization.Encoding.DER)

    @property
    def fingerprint(self) -> str:
        """SHA-256 of the root as phones show it, in pairs."""
        return hashlib.sha256(self.der).digest().hex(" ").upper()

    @property
    def permitted(self) -> list:
        """The names and networks that it may vouch for."""
        return self.signer.extensions.get_extension_for_class(x509.NameConstraints).value.permitted_subtrees or []

    def covers(self, name: Name) -> bool:
        """Whether it may vouch for a name or an address."""
        if isinstance(name, x509.DNSName):
            return name.value in [one.value for one in self.permitted if isinstance(one, x509.DNSName)]
        return any(name.value in ipaddress.ip_network(str(one.value)) for one in self.permitted
                   if isinstance(one, x509.IPAddress))

    @property
    def networks(self) -> list[str]:
        """The networks that it may vouch for."""
        return [str(one.value) for one in self.permitted if isinstance(one, x509.IPAddress)]

    @property
    def over(self) -> datetime.datetime:
        """When it ends."""
        return self.signer.not_valid_after_utc

    def vouch(self, names: list[Name], days: float = LEAF_DAYS) -> x509.Certificate:
        """A new leaf for these names and its key, written for the server. It does not ask what the constraints permit:
        whoever verifies the leaf does.
        """
        signing = serialization.load_pem_private_key((self.folder / SIGNER).read_bytes(), None)
        assert isinstance(signing, ec.EllipticCurvePrivateKey)
        key = ec.generate_private_key(ec.SECP256R1())
        builder = _certificate(_called("Covemix server"), self.signer.subject, key, signing, days)
        leaf = (builder.add_extension(x509.SubjectAlternativeName(names), critical=False)
                .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
                .sign(signing, hashes.SHA256()))
        write(self.folder / LEAF, _pem(leaf) + _pem(self.signer))
        write(self.folder / LEAF_KEY, _unlocked(key))
        return leaf


def found(folder: Path) -> Authority | None:
    """The authority of a folder, if one was made there."""
    return Authority(folder) if (folder / SIGNER).is_file() else None


def made(folder: Path, name: str, networks: list[Network]) -> Authority:
    """A new authority for one name and these networks, in the place of the one that was there.

    Without a network it vouches for no address at all.
    """
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    folder.chmod(0o700)
    with contextlib.suppress(FileNotFoundError):
        (folder / SIGNER).unlink()
    limits = x509.NameConstraints([x509.DNSName(name), *map(x509.IPAddress, networks)],
                                  None if networks else [x509.IPAddress(every) for every in NOWHERE])
    root_key, key = ec.generate_private_key(ec.SECP256R1()), ec.generate_private_key(ec.SECP256R1())
    today = datetime.datetime.now(datetime.UTC).date().isoformat()
    root_name, signer_name = _called(f"Covemix on {name}, {today}"), _called(f"Covemix on {name}, signer")
    root = (_certificate(root_name, root_name, root_key, root_key, ROOT_DAYS, depth=1)
            .add_extension(limits, critical=True).sign(root_key, hashes.SHA256()))
    signer = (_certificate(signer_name, root_name, key, root_key, ROOT_DAYS - 1, depth=0)
              .add_extension(limits, critical=True)
              .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
              .sign(root_key, hashes.SHA256()))
    write(folder / ROOT, root.public_bytes(serialization.Encoding.DER))
    write(folder / CHAIN, _pem(signer))
    write(folder / SIGNER, _unlocked(key))
    return Authority(folder)


def write(path: Path, body: bytes) -> None:
    """Write a file that only its owner reads, whole or not at all, whatever stood there before."""
    beside = path.with_name(path.name + ".new")
    with contextlib.suppress(FileNotFoundError):
        beside.unlink()
    with os.fdopen(os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(body)
    beside.replace(path)


def _certificate(subject: x509.Name, issuer: x509.Name, key: ec.EllipticCurvePrivateKey,
                 signing: ec.EllipticCurvePrivateKey, days: float, depth: int | None = None) -> x509.CertificateBuilder:
    """depth: how many signers may stand below it; None of a leaf. It begins a day ago: a phone's clock may be behind.
    """
    now, signs = datetime.datetime.now(datetime.UTC), depth is not None
    usage = x509.KeyUsage(digital_signature=not signs, key_cert_sign=signs, crl_sign=signs, content_commitment=False,
                          key_encipherment=False, data_encipherment=False, key_agreement=False, encipher_only=False,
                          decipher_only=False)
    return (x509.CertificateBuilder().subject_name(subject).issuer_name(issuer).public_key(key.public_key())
            .serial_number(x509.random_serial_number()).not_valid_before(now - DAY).not_valid_after(now + days * DAY)
            .add_extension(x509.BasicConstraints(signs, depth), critical=True)
            .add_extension(usage, critical=True)
            .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
            .add_extension(x509.AuthorityKeyIdentifier.from_issuer_public_key(signing.public_key()), critical=False))


def _called(text: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text[:64])])


def _pem(certificate: x509.Certificate) -> bytes:
    return certificate.public_bytes(serialization.Encoding.PEM)


def _unlocked(key: ec.EllipticCurvePrivateKey) -> bytes:
    return key.private_bytes(serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8,
                             serialization.NoEncryption())
