"""One HTTP server in the bot's own event loop. It knows nothing of what is served: that is an application.

It listens before it returns, so that a port that is taken is told of at the start. What has begun is answered
before it stops; signals are none of its business.
"""

import asyncio
import contextlib
import socket
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager

import uvicorn
from starlette.types import ASGIApp

from bot.faults import OperatorFault
from bot.web.address import Address

STOP_SECONDS = 3
"""How long a request that has begun may take once the server is to stop."""


@asynccontextmanager
async def listening(application: ASGIApp, address: Address) -> AsyncIterator[Address]:
    """Serve `application` until the block ends; the address is the one with the port as it is.

    Raises OperatorFault where nothing can listen there.
    """
    with contextlib.closing(_bound(address)) as listener:
        host, port = listener.getsockname()[:2]
        config = uvicorn.Config(
            application,
            log_config=None,
            access_log=False,  # it would hold what people are called in paths and queries
            lifespan="off",
            server_header=False,
            timeout_graceful_shutdown=STOP_SECONDS,
        )
        server = _Server(config)
        serving = asyncio.create_task(server.serve(sockets=[listener]))
        try:
            yield Address(host, port)
        finally:
            server.should_exit = True
            await serving


def _bound(address: Address) -> socket.socket:
    try:
        family = socket.getaddrinfo(address.host, address.port, type=socket.SOCK_STREAM)[0][0]
        listener = socket.create_server((address.host, address.port), family=family)
    except OSError as error:
        raise OperatorFault((f"cannot listen on {address}: {error.strerror or error}",)) from None
    return listener


class _Server(uvicorn.Server):
    @contextmanager
    def capture_signals(self) -> Iterator[None]:
        """Leave the signals to the bot."""
        yield
