"""`check`: looks at the whole set-up, and says of each part that it will do or what would mend it."""

import asyncio
import zoneinfo
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import httpx

from bot.pictures.style import FONT
from bot.settings import Settings, load_settings
from bot.telegram.looking import look
from bot.wording.faults import store_fault_words
from persistence.backup import check_whole
from persistence.engine import file_of, open_engine
from persistence.faults import DatabaseOlder, StoreFault
from persistence.migrate import require_current
from persistence.store import Store

CLOCK_SECONDS = 10.0
"""How far this machine's clock may be off."""
LATELY = timedelta(hours=1)
ZONES = ("Europe/Oslo", "America/St_Johns", "Pacific/Chatham")

Finding = tuple[str, str, bool]
"""A part of the set-up, what there is to say of it, and whether it will do."""


def check_command() -> int:
    """Print a line for each part; return 1 where something has to be mended. Raises OperatorFault."""
    well = True
    for part, said, will_do in findings(load_settings()):
        print(f"{'ok  ' if will_do else 'MEND'}  {part}: {said}", flush=True)
        well = well and will_do
    return 0 if well else 1


def findings(settings: Settings) -> Iterator[Finding]:
    """Yield what is found of each part."""
    yield "settings", "every one can be used", True
    yield from _telegram(settings)
    yield _database(settings.database)
    yield _clock(settings)
    yield _zones()
    yield _font()


def _telegram(settings: Settings) -> Iterator[Finding]:
    if settings.token is None:
        yield "token", "KILOPOST_TOKEN is missing: put the bot's token there, or into .env", False
        return
    since = datetime.now(UTC) - LATELY
    seen = asyncio.run(look(settings.token.get_secret_value(), settings.api_url, since))
    yield "token", seen.fault or f"the bot is called @{seen.name}", seen.fault is None
    if seen.fault is not None:
        return
    waiting = f"{seen.waiting} updates wait there"
    if settings.webhook_url is None:
        other = f", and it will ask Telegram to post no longer to {seen.posts_to}" if seen.posts_to else ""
        yield "updates", f"the bot asks for them{other}; {waiting}", True
    elif seen.failing is not None:
        yield "updates", f"posting to {settings.webhook_url} fails: {seen.failing}; {waiting}", False
    else:
        yield "updates", f"they are posted to {settings.webhook_url}; {waiting}", True


def _database(url: str) -> Finding:
    try:
        engine = open_engine(url)
        try:
            check_whole(engine)
            require_current(engine)
        finally:
            engine.dispose()
    except DatabaseOlder:
        return "database", "it is of an older Kilopost, or new: the next start brings it up to date", True
    except StoreFault as fault:
        return "database", store_fault_words(fault), False
    if (folder := _too_open(url)) is not None:
        return "database", f"others on this machine can read {folder}: chmod 600", False
    return "database", "it is whole and up to date", True


def _too_open(url: str) -> Path | None:
    """Return the SQLite file that others than its owner can read; None where there is none such."""
    path = file_of(url)
    return path if path is not None and path.stat().st_mode & 0o077 else None


def _clock(settings: Settings) -> Finding:
    """Hold this machine's clock against the database server's, or Telegram's as its answers are dated."""
    try:
        there = _server_time(settings)
    except (StoreFault, httpx.HTTPError, ValueError):
        return "clock", "there is nothing to hold it against just now", True
    off = abs((there - datetime.now(UTC)).total_seconds())
    if off > CLOCK_SECONDS:
        return "clock", f"it is off by {off:.0f} s: set it by the network", False
    return "clock", "it is right", True


def _server_time(settings: Settings) -> datetime:
    if not settings.database.startswith("sqlite"):
        store = Store(open_engine(settings.database))
        try:
            found = store.server_time()
        finally:
            store.close()
        if found is not None:
            return found
    dated = httpx.get(settings.api_url, timeout=5).headers["Date"]
    return datetime.strptime(dated, "%a, %d %b %Y %H:%M:%S GMT").replace(tzinfo=UTC)


def _zones() -> Finding:
    missing = [name for name in ZONES if name not in zoneinfo.available_timezones()]
    if missing:
        return "zones", f"there is no {missing[0]}: install the package tzdata", False
    return "zones", "they are there", True


def _font() -> Finding:
    from matplotlib import font_manager  # noqa: PLC0415 slow to load

    try:
        font_manager.findfont(FONT, fallback_to_default=False)
    except ValueError:
        return "pictures", f"there is no font {FONT}: install matplotlib anew", False
    return "pictures", "their font is there", True
