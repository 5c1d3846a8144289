"""What the page's script can ask for: thin, and each a line or two around what `Live` does."""

import re
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Final, TypeVar
from urllib.parse import quote
from zoneinfo import ZoneInfo

from pydantic import BaseModel, ConfigDict, Field, ValidationError
from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import ClientDisconnect, Request
from starlette.responses import FileResponse, JSONResponse, PlainTextResponse, Response, StreamingResponse
from starlette.routing import Route

from bot.channel import Attachment
from bot.faults import OperatorFault
from bot.page.live import Live, NotReadyError
from bot.page.moving import Leap, MovingClock, Pace
from bot.page.news import News
from bot.textfile import limit_of, storable
from bot.wording.page import DATABASE_AWAY, NOT_TAKEN, NOTHING_AHEAD, PLAYING, TOO_LONG
from domain.expressions import Expression
from persistence.chats import Before
from persistence.faults import StoreFault

STATIC: Final = Path(__file__).parent / "static"
LONGEST_MESSAGE: Final = 4096
"""In characters, as on a phone."""
LARGEST_BODY: Final = 64 * 1024
"""Of what is not a file, in bytes."""

_ENTRY: Final = Expression(r"[io]\d{1,18}", re.ASCII)

_TYPES: Final = {
    "png": "image/png",
    "pdf": "application/pdf",
    "csv": "text/csv; charset=utf-8",
    "json": "application/json",
    "zip": "application/zip",
}


class _Body(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)


class _Saying(_Body):
    chat: str
    text: str
    replies_to: str | None = Field(default=None, max_length=200)


class _Editing(_Body):
    chat: str
    key: str = Field(max_length=200)
    text: str


class _Pressing(_Body):
    chat: str
    button: str = Field(max_length=64)


class _Leaping(_Body):
    leap: Leap
    chats: tuple[str, ...] = Field(max_length=2)


class _Pacing(_Body):
    pace: Pace


class _Beginning(_Body):
    scene: int = Field(ge=0)


Asked = TypeVar("Asked", bound=_Body)


class Routes:
    """The page as an application."""

    def __init__(self, live: Live, clock: MovingClock, news: News) -> None:
        """Serve what is `live`."""
        self._live = live
        self._clock = clock
        self._news = news

    @property
    def application(self) -> Starlette:
        """What is to be served, behind a guard."""
        look = ["GET"]
        do = ["POST"]
        return Starlette(
            routes=[
                *(Route(path, _static(name)) for path, name in _STATIC_FILES),
                Route("/state", self._state, methods=look),
                Route("/chat", self._chat, methods=look),
                Route("/news", self._listen, methods=look),
                Route("/understood/{entry}", self._understood, methods=look),
                Route("/picture/{number:int}", self._picture, methods=look),
                Route("/file/{number:int}", self._file, methods=look),
                Route("/say", self._say, methods=do),
                Route("/edit", self._edit, methods=do),
                Route("/press", self._press, methods=do),
                Route("/send", self._send, methods=do),
                Route("/newcomer", self._newcomer, methods=do),
                Route("/leap", self._leap, methods=do),
                Route("/pace", self._pace, methods=do),
                Route("/begin", self._begin, methods=do),
            ],
            exception_handlers={
                NotReadyError: _playing,
                StoreFault: _away,
                OperatorFault: _away,
            },
        )

    async def _state(self, _request: Request) -> Response:
        return JSONResponse(self._live.facts() | {"pace": self._clock.pace})

    async def _chat(self, request: Request) -> Response:
        place = None
        before = request.query_params.get("before")
        if before is not None:
            try:
                place = Before(*(int(number) for number in before.split(",", 1)))
            except (TypeError, ValueError):
                raise HTTPException(400, NOT_TAKEN) from None
        return JSONResponse(await self._live.chat(request.query_params.get("of", ""), place))

    async def _listen(self, request: Request) -> Response:
        had = request.headers.get("last-event-id") or request.query_params.get("since")
        return StreamingResponse(self._news.since(had), media_type="text/event-stream")

    async def _understood(self, request: Request) -> Response:
        entry = request.path_params["entry"]
        if _ENTRY.fullmatch(entry) is None:
            raise HTTPException(404, NOT_TAKEN)
        return JSONResponse(await self._live.behind(entry))

    async def _picture(self, request: Request) -> Response:
        return _enclosed(await self._live.picture(request.path_params["number"]), inline=True)

    async def _file(self, request: Request) -> Response:
        return _enclosed(await self._live.file(request.path_params["number"]), inline=False)

    async def _say(self, request: Request) -> Response:
        said = await _body(request, _Saying)
        await self._live.say(self._known(said.chat), _sayable(said.text), said.replies_to)
        return JSONResponse({})

    async def _edit(self, request: Request) -> Response:
        said = await _body(request, _Editing)
        await self._live.edit(self._known(said.chat), said.key, _sayable(said.text))
        return JSONResponse({})

    async def _press(self, request: Request) -> Response:
        said = await _body(request, _Pressing)
        await self._live.press(self._known(said.chat), said.button)
        return JSONResponse({})

    async def _send(self, request: Request) -> Response:
        """Take a file as the body; of one too large the bot says so in the chat, and no byte is kept."""
        chat = self._known(request.query_params.get("of", ""))
        name = storable(request.query_params.get("name", ""))[:200]
        if not name:
            raise HTTPException(400, NOT_TAKEN)
        declared = request.query_params.get("size", "0")
        content = None
        if declared.isdecimal() and int(declared) <= limit_of(name):
            content = await _read(request, limit_of(name))
        await self._live.send(chat, name, content)
        return JSONResponse({})

    async def _newcomer(self, _request: Request) -> Response:
        return JSONResponse({"chat": await self._live.bring_newcomer()})

    async def _leap(self, request: Request) -> Response:
        said = await _body(request, _Leaping)
        zone = ZoneInfo(self._live.zone_of(said.chats))
        found = await self._clock.leap(said.leap, said.chats, zone)
        return JSONResponse({"note": None if found else NOTHING_AHEAD})

    async def _pace(self, request: Request) -> Response:
        self._clock.go((await _body(request, _Pacing)).pace)
        return JSONResponse({})

    async def _begin(self, request: Request) -> Response:
        wanted = (await _body(request, _Beginning)).scene
        if wanted >= len(self._live.scenes):
            raise HTTPException(400, NOT_TAKEN)
        self._clock.go("still")
        self._live.begin(self._live.scenes[wanted])
        return JSONResponse({})

    def _known(self, chat: str) -> str:
        if not self._live.is_known(chat):
            raise HTTPException(400, NOT_TAKEN)
        return chat


_STATIC_FILES: Final = (
    ("/", "page.html"),
    ("/page.css", "page.css"),
    ("/page.js", "page.js"),
    ("/icon.svg", "icon.svg"),
)


def _static(name: str) -> Callable[[Request], Awaitable[Response]]:
    async def answer(_request: Request) -> Response:
        return FileResponse(STATIC / name)

    return answer


def _enclosed(attachment: Attachment | None, *, inline: bool) -> Response:
    if attachment is None:
        raise HTTPException(404, NOT_TAKEN)
    kind = _TYPES.get(attachment.name.rpartition(".")[2], "application/octet-stream")
    how = "inline" if inline else "attachment"
    headers = {"Content-Disposition": f"{how}; filename*=UTF-8''{quote(attachment.name)}"}
    return Response(attachment.content, media_type=kind, headers=headers)


async def _body(request: Request, kind: type[Asked]) -> Asked:
    """Return what a request asks for. Raises HTTPException."""
    content = await _read(request, LARGEST_BODY)
    if content is None:
        raise HTTPException(413, TOO_LONG)
    try:
        return kind.model_validate_json(content)
    except ValidationError:
        raise HTTPException(400, NOT_TAKEN) from None


async def _read(request: Request, most: int) -> bytes | None:
    """Return the body; None where it has more bytes than `most`, of which the rest is not read."""
    content = bytearray()
    try:
        async for chunk in request.stream():
            content += chunk
            if len(content) > most:
                return None
    except ClientDisconnect:
        raise HTTPException(400, NOT_TAKEN) from None
    return bytes(content)


def _sayable(text: str) -> str:
    if len(text) > LONGEST_MESSAGE:
        raise HTTPException(413, TOO_LONG)
    if not text.strip():
        raise HTTPException(400, NOT_TAKEN)
    return storable(text)


async def _playing(_request: Request, _fault: Exception) -> Response:
    return PlainTextResponse(PLAYING, status_code=409)


async def _away(_request: Request, _fault: Exception) -> Response:
    return PlainTextResponse(DATABASE_AWAY, status_code=503)
