"""What the server knows: the people, the messages in their chats, the updates that wait, the files.

Everything is guarded by one condition, `changed`, which is notified at each change. How a request is answered
is told in `methods`, how it comes over HTTP in `server`.
"""

import threading
import time
from collections import Counter
from dataclasses import dataclass, field

from tests.botapi.errors import Failure, RefusedError
from tests.botapi.forms import Form, Upload
from tests.botapi.markup import Entity

Json = dict[str, object]

_MEND = "use deleteWebhook to delete the webhook first"
_ONLY_ONE = "make sure that only one bot instance is running"


@dataclass
class Message:
    """A message of the bot's, as it stands now. `versions` holds each text that it had, oldest first."""

    chat: int
    message_id: int
    text: str
    entities: list[Entity] = field(default_factory=list)
    buttons: list[list[tuple[str, str]]] = field(default_factory=list)
    photo: bytes | None = None
    document: Upload | None = None
    versions: list[str] = field(default_factory=list)

    @property
    def labels(self) -> list[str]:
        """Return what stands on the buttons, in reading order."""
        return [label for row in self.buttons for label, _ in row]


@dataclass(frozen=True)
class Call:
    """A request that came in for `method`, carried out or not."""

    method: str
    form: Form


@dataclass
class Scripted:
    """A failure that waits for the next `times` requests for `method` (to `chat`, where given)."""

    method: str
    failure: Failure
    chat: int | None
    times: int


class World:
    """The state behind the server."""

    def __init__(self, bot_id: int) -> None:
        self.bot: Json = {
            "id": bot_id,
            "is_bot": True,
            "first_name": "Kilopost",
            "username": "kilopost_test_bot",
        }
        self.changed = threading.Condition()
        self.people: dict[int, Json] = {}
        self.groups: dict[int, Json] = {}
        self.started: set[int] = set()
        self.blocked: set[int] = set()
        self.queries: set[str] = set()
        self.sent: list[Message] = []
        self.said: dict[tuple[int, int], Json] = {}
        self.files: dict[str, Upload] = {}
        self.calls: list[Call] = []
        self.commands: list[Json] = []
        self.failures: list[Scripted] = []
        self.webhook = ""
        self.webhook_trouble: Json = {}
        self.allowed: set[str] | None = None
        self.acknowledged: list[int] = []
        self.handed_out: Counter[int] = Counter()
        """How often each update was handed out."""
        self._updates: list[Json] = []
        self._next_update = 730_001
        self._next_message = 100
        self._poller = 0
        self.closing = False

    def add_update(self, kind: str, content: Json) -> int:
        """Queue an update, unless the bot asked not to be told of that kind. Returns its identifier."""
        with self.changed:
            number = self._next_update
            if self.allowed is None or kind in self.allowed:
                self._next_update += 1
                self._updates.append({"update_id": number, kind: content})
                self.changed.notify_all()
            return number

    def jump_to(self, number: int) -> None:
        """Choose the next update's identifier, as the real server does at random after a week of silence."""
        with self.changed:
            self._next_update = number

    def next_message_id(self) -> int:
        """Return a new message identifier."""
        with self.changed:
            self._next_message += 1
            return self._next_message

    @property
    def waiting(self) -> int:
        """Return how many updates are not acknowledged yet."""
        with self.changed:
            return len(self._updates)

    def poll(self, offset: int, limit: int, seconds: float) -> list[Json]:
        """Forget what lies below `offset`, then return what waits, or what comes within `seconds`.

        An offset beyond the end by more than ten is taken for none at all, and a new poller ends the
        one that waits (`do_get_updates` in Client.cpp).
        """
        until = time.monotonic() + seconds
        with self.changed:
            if self.webhook:
                raise RefusedError(
                    409, f"Conflict: can't use getUpdates method while webhook is active; {_MEND}"
                )
            self._poller += 1
            mine = self._poller
            self.changed.notify_all()
            if offset < 0:
                offset += self._next_update
            if offset <= self._next_update + 10:
                self.acknowledged += [_number(u) for u in self._updates if _number(u) < offset]
                self._updates = [u for u in self._updates if _number(u) >= offset]
            while not self._updates and not self.closing:
                if self._poller != mine:
                    raise RefusedError(409, f"Conflict: terminated by other getUpdates request; {_ONLY_ONE}")
                left = until - time.monotonic()
                if left <= 0:
                    break
                self.changed.wait(left)
            batch = self._updates[:limit]
            self.handed_out.update(_number(u) for u in batch)
            return batch

    def message(self, chat: int, message_id: int) -> Message:
        """Return a message of the bot's. Raises KeyError where there is none."""
        for message in self.sent:
            if (message.chat, message.message_id) == (chat, message_id):
                return message
        raise KeyError(message_id)

    def take_failure(self, method: str, chat: int | None) -> Failure | None:
        """Return the failure scripted for this request, if there is one, and count it off."""
        with self.changed:
            for scripted in self.failures:
                if scripted.method == method and scripted.chat in {None, chat}:
                    scripted.times -= 1
                    if scripted.times == 0:
                        self.failures.remove(scripted)
                    return scripted.failure
        return None


def _number(update: Json) -> int:
    number = update["update_id"]
    assert isinstance(number, int)
    return number
