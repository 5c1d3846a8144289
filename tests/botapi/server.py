"""The server: HTTP on a port of its own, in a thread, and what a test holds in its hands.

with BotApi() as api:
    anna = api.person(1001, "Anna")
    anna.says("seated row 60 x 8")
    ...
    assert anna.received[0].text == ...
"""

import json
import socket
import threading
import time
from collections.abc import Callable
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Self
from urllib.parse import unquote

from tests.botapi.errors import Broken, Cut, Failure, Nonsense, Odd, RefusedError, Says, Slow, TooMany
from tests.botapi.forms import decode
from tests.botapi.methods import METHODS
from tests.botapi.people import Group, Person
from tests.botapi.world import Call, Message, Scripted, World

TOKEN = "4242:a-token-for-tests"


class BotApi:
    """A running Bot API server. The bot reaches it at `url`, with `token`."""

    def __init__(self, token: str = TOKEN) -> None:
        self.token = token
        self.world = World(int(token.partition(":")[0]))
        self._http = _Http(self)
        self._thread = threading.Thread(target=self._http.serve_forever, args=(0.02,), daemon=True)

    def __enter__(self) -> Self:
        self._thread.start()
        return self

    def __exit__(self, *error: object) -> None:
        with self.world.changed:
            self.world.closing = True
            self.world.changed.notify_all()
        self._http.shutdown()
        self._thread.join()
        self._http.close_connections()
        self._http.server_close()

    @property
    def url(self) -> str:
        """Return the address, without a slash at its end."""
        return f"http://127.0.0.1:{self._http.server_address[1]}"

    def person(self, number: int, name: str = "Somebody") -> Person:
        """Add a person. Nothing can be sent to them before they have said or pressed something."""
        self.world.people[number] = {"id": number, "first_name": name}
        return Person(self.world, number)

    def group(self, number: int, title: str = "A group") -> Group:
        """Add a group; its `number` is below zero."""
        self.world.groups[number] = {"id": number, "title": title, "type": "group"}
        return Group(self.world, number)

    def fail(self, method: str, failure: Failure, *, chat: int | None = None, times: int = 1) -> None:
        """Let the next `times` requests for `method` (to `chat`) fail so. Several wait their turn."""
        with self.world.changed:
            self.world.failures.append(Scripted(method, failure, chat, times))

    @property
    def sent(self) -> tuple[Message, ...]:
        """Return everything that the bot has sent, in order."""
        with self.world.changed:
            return tuple(self.world.sent)

    def calls(self, method: str) -> tuple[Call, ...]:
        """Return the requests for `method`, in order, carried out or not."""
        with self.world.changed:
            return tuple(call for call in self.world.calls if call.method == method)

    def wait_until(self, true: Callable[[], bool], seconds: float = 10) -> None:
        """Wait until `true()` holds. Raises TimeoutError after `seconds`."""
        with self.world.changed:
            if not self.world.changed.wait_for(true, seconds):
                raise TimeoutError(f"after {seconds} s; sent so far: {[m.text for m in self.world.sent]}")


class _Http(ThreadingHTTPServer):
    """The listening socket, and the connections that stand."""

    daemon_threads = True
    block_on_close = False

    def __init__(self, api: BotApi) -> None:
        super().__init__(("127.0.0.1", 0), _Handler)
        self.api = api
        self._connections: set[socket.socket] = set()

    def process_request(self, request: object, client_address: object) -> None:
        assert isinstance(request, socket.socket)
        self._connections.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: object) -> None:
        assert isinstance(request, socket.socket)
        self._connections.discard(request)
        super().shutdown_request(request)

    def close_connections(self) -> None:
        for connection in tuple(self._connections):
            self.shutdown_request(connection)

    def handle_error(self, request: object, client_address: object) -> None:
        """A client that went away in the middle (the bot was killed) is no error of ours."""


class _Handler(BaseHTTPRequestHandler):
    """One connection."""

    protocol_version = "HTTP/1.1"
    server: _Http

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 the base's name
        """Say nothing."""

    def do_GET(self) -> None:
        api = self.server.api
        prefix = f"/file/bot{api.token}/documents/"
        path = unquote(self.path)
        if api.world.take_failure("download", None) is not None:
            self._answer(500, b"")
        elif path.startswith(prefix) and path.removeprefix(prefix) in api.world.files:
            self._answer(200, api.world.files[path.removeprefix(prefix)].content)
        else:
            self._answer(404, b"")

    def do_POST(self) -> None:
        api = self.server.api
        body = self.rfile.read(int(self.headers.get("Content-Length", 0)))
        token, _, method = self.path.removeprefix("/bot").partition("/")
        if token != api.token:
            self._refuse(RefusedError(401, "Unauthorized"))
            return
        if method not in METHODS:
            self._refuse(RefusedError(404, "Not Found"))
            return
        form = decode(self.headers.get("Content-Type", ""), body)
        with api.world.changed:
            api.world.calls.append(Call(method, form))
            api.world.changed.notify_all()
        match api.world.take_failure(method, form.number("chat_id") or None):
            case TooMany(retry_after):
                description = f"Too Many Requests: retry after {retry_after}"
                self._refuse(RefusedError(429, description, retry_after=retry_after))
                return
            case Says(code, description):
                self._refuse(RefusedError(code, description))
                return
            case (Broken(done=False) | Cut(done=False)) as failure:
                answer = None
            case failure:
                try:
                    answer = METHODS[method](api.world, form)
                except RefusedError as refused:
                    self._refuse(refused)
                    return
        match failure:
            case Broken(code):
                self._refuse(RefusedError(code, "Internal Server Error"))
            case Cut():
                self.close_connection = True
            case Nonsense():
                self._answer(200, b"<html>")
            case Odd(other):
                self._answer(200, json.dumps(other).encode())
            case Slow(seconds):
                time.sleep(seconds)
                self._answer(200, json.dumps({"ok": True, "result": answer}).encode())
            case _:
                self._answer(200, json.dumps({"ok": True, "result": answer}).encode())

    def _refuse(self, refused: RefusedError) -> None:
        answer = {"ok": False, "error_code": refused.code, "description": refused.description}
        if refused.retry_after is not None:
            answer["parameters"] = {"retry_after": refused.retry_after}
        self._answer(refused.code, json.dumps(answer).encode())

    def _answer(self, status: int, body: bytes) -> None:
        self.send_response(status)
        self.send_header("Content-Type", "application/json")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)
