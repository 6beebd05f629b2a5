"""The page that brings the certificate to a phone: plain http, because no phone trusts this laptop before it has it."""
import plistlib
import uuid
from collections.abc import Callable
from dataclasses import dataclass

from covemix.shared.words.messages import listed, typed
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import Route

from .app import differing
from .bare import POLICY, bare
from .front import OwnPlace
from .language import of_page
from .pages import t

HEADERS = {"Cache-Control": "no-store", "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer",
           "Content-Security-Policy": POLICY}
FOUND = ("<svg xmlns='http://www.w3.org/2000/svg' width='48' height='48'>"
         "<path d='m8 24 12 12 20-24' fill='none' stroke='#080' stroke-width='6'/></svg>")


@dataclass(frozen=True)
class Brought:
    """What the page tells. name, address: of this laptop, "" where it has none that the certificate covers."""

    name: str
    address: str
    port: int  # of https
    page_port: int  # of this page
    networks: list[str]
    fingerprint: str
    der: bytes  # the certificate of the authority

    @property
    def by_name(self) -> str:
        return f"https://{self.name}:{self.port}/" if self.name else ""

    @property
    def by_address(self) -> str:
        return f"https://{self.address}:{self.port}/" if self.address else ""

    @property
    def title(self) -> str:
        """What the certificate is called on a phone."""
        return f"Covemix on {self.name or self.address}"

    @property
    def profile(self) -> bytes:
        """The certificate as iOS takes it (Configuration Profile Reference, com.apple.security.root)."""
        def own(part: str) -> str:
            return str(uuid.uuid5(uuid.NAMESPACE_OID, self.fingerprint + part)).upper()

        root = {"PayloadType": "com.apple.security.root", "PayloadVersion": 1, "PayloadUUID": own("root"),
                "PayloadIdentifier": f"covemix.lan.{own('root')}", "PayloadDisplayName": self.title,
                "PayloadContent": self.der}
        return plistlib.dumps({"PayloadType": "Configuration", "PayloadVersion": 1, "PayloadUUID": own("profile"),
                               "PayloadIdentifier": f"covemix.lan.{own('profile')}", "PayloadDisplayName": self.title,
                               "PayloadContent": [root]})

    def page(self, language: str) -> str:
        """The page itself."""
        return bare("bring.html", language, name=self.name, address=self.address, fingerprint=self.fingerprint,
                    covered=listed([typed(one) for one in (self.name, *self.networks) if one]),
                    by_name=self.by_name, by_address=self.by_address,
                    probe=f"http://{self.name}:{self.page_port}/found.svg")


def bringing(brought: Brought) -> Starlette:
    """The page and what it hands out."""

    def page(request: Request) -> Response:
        return differing(HTMLResponse(brought.page(of_page(request)), headers=HEADERS))

    def file(body: bytes | str, kind: str, name: str = "") -> Callable[[Request], Response]:
        more = {"Content-Disposition": f'attachment; filename="{name}"'} if name else {}

        def answer(request: Request) -> Response:
            return Response(body, media_type=kind, headers=HEADERS | more)

        return answer

    def nothing(request: Request, error: Exception) -> Response:
        language = of_page(request)
        told = [{"language": language, "text": t(language, "bring-not-here"),
                 "back": t(language, "bring-not-here.back")}]
        return HTMLResponse(bare("missing.html", language, told=told, back="/"), status_code=404, headers=HEADERS)

    app = Starlette(routes=[
        Route("/", page),
        Route("/covemix.crt", file(brought.der, "application/x-x509-ca-cert", "covemix.crt")),
        Route("/covemix.mobileconfig", file(brought.profile, "application/x-apple-aspen-config")),
        Route("/found.svg", file(FOUND, "image/svg+xml")),
    ], exception_handlers={404: nothing})
    app.add_middleware(OwnPlace)
    return app
