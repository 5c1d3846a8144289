"""Who may come in: this machine's own browser, with the secret, from the page itself.

The page listens on loopback only; this keeps out what else could reach it there. A name that somebody points
at this machine is told by its Host header, another site by what the browser says of where a request comes
from (https://www.w3.org/TR/fetch-metadata/), whoever else is on this machine by the secret in the path.
"""

import hmac
import secrets
from collections.abc import Mapping
from typing import Final

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse, RedirectResponse, Response
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from bot.wording.page import FOREIGN_SITE, NO_SUCH_PLACE, OWN_ADDRESS_ONLY

HEADERS: Final[Mapping[str, str]] = {
    "Content-Security-Policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        "base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
        "require-trusted-types-for 'script'; trusted-types 'none'"
    ),
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Cache-Control": "no-store",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
}

_SAFE_METHODS: Final = frozenset({"GET", "HEAD"})


class Guard:
    """Lets through what may come in to `application`, by its path behind the secret."""

    def __init__(self, application: ASGIApp, port: int = 0) -> None:
        """Make a fresh secret. `port` is where the page listens; it may be set once that is known."""
        self._application = application
        self.port = port
        self._secret = secrets.token_urlsafe(32)
        self._once: str | None = secrets.token_urlsafe(32)

    @property
    def path(self) -> str:
        """Where the page is."""
        return f"/{self._secret}/"

    @property
    def path_once(self) -> str:
        """A way to the page that opens once, for a browser's command line, which others here can read."""
        return f"/{self._once}"

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request."""
        if scope["type"] != "http":
            return

        async def send_with_headers(message: Message) -> None:
            if message["type"] == "http.response.start":
                MutableHeaders(scope=message).update(HEADERS)
            await send(message)

        answer = self._refusal(scope)
        if answer is None:
            inner = dict(scope)
            inner["path"] = scope["path"][len(self.path) - 1 :]
            inner.pop("raw_path", None)
            await self._application(inner, receive, send_with_headers)
        else:
            await answer(scope, receive, send_with_headers)

    def _refusal(self, scope: Scope) -> Response | None:
        headers = Headers(scope=scope)
        hosts = {f"127.0.0.1:{self.port}", f"localhost:{self.port}"}
        host = headers.get("host", "")
        if host not in hosts:
            return PlainTextResponse(OWN_ADDRESS_ONLY, status_code=403)
        path = scope["path"]
        first = path[1:].partition("/")[0].encode()
        if self._once is not None and hmac.compare_digest(first, self._once.encode()):
            self._once = None
            return RedirectResponse(self.path, status_code=303)
        if not hmac.compare_digest(first, self._secret.encode()):
            return PlainTextResponse(NO_SUCH_PLACE, status_code=404)
        if not path.startswith(self.path):
            return RedirectResponse(self.path, status_code=307)
        is_look = scope["method"] in _SAFE_METHODS
        site = headers.get("sec-fetch-site")
        opens = is_look and headers.get("sec-fetch-mode") == "navigate"
        if site not in {None, "same-origin", "none"} and not opens:
            return PlainTextResponse(FOREIGN_SITE, status_code=403)
        if not is_look and headers.get("origin") != f"http://{host}":
            return PlainTextResponse(FOREIGN_SITE, status_code=403)
        return None
