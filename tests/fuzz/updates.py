"""`python -m tests.fuzz.updates --updates 200000`: updates of every kind, mutated, through the whole bot.

Updates are made as the Bot API describes them, then fields go missing, change their type, their text or
their date. Each goes the way of a posted one: read, stored, decided on, put into words. Nothing may stop
that, be set aside, be left half-done, or take longer and longer. What cannot be read at all is passed over.
"""

import argparse
import asyncio
import copy
import json
import logging
import random
import sys
import tempfile
import time
from collections import Counter
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from telegram import Update, User

from bot.channel import Rendered, Sent
from bot.delivery import Delivery
from bot.desk import Desk
from bot.enclosing import named
from bot.telegram.connection import make_bot, readable
from bot.telegram.intake import Intake
from persistence.engine import open_engine
from persistence.migrate import migrate
from persistence.store import Store
from tests.bot.telegram.village import AMSTERDAM, codes
from tests.botapi.server import TOKEN
from tests.fuzz.reading import message as reported

NOWHERE = "http://127.0.0.1:9"
"""Where nothing listens: what the bot would do on the side comes to nothing."""
USERS = tuple(range(1, 9))
TEXTS = (
    "", " ", "80x8", "squat 60 x 8", "/start", "/start x", "/help", "what's next?", "who needs me?", "undo",
    "my knee hurts", "присед 100 на 5", "スクワット 60kg 8回", "قرفصاء ٦٠ × ٨", "\u0000", "\ud83d", "😀" * 50,
    "<b>x</b>", "x" * 5000, "9" * 400, "\n" * 300, "-1", "NaN", "1e999", "'; DROP TABLE people; --",
)  # fmt: skip
ODD: tuple[Any, ...] = (
    None, True, 0, -1, 2**31, 2**63, 2**70, 1.5, "", "x", [], {}, [None], {"id": "x"}, "12", [[]],
)  # fmt: skip
MEDIA: dict[str, Any] = {
    "photo": [{"file_id": "f", "file_unique_id": "u", "width": 1, "height": 1}],
    "sticker": {
        "file_id": "f", "file_unique_id": "u", "type": "regular", "width": 1, "height": 1,
        "is_animated": False, "is_video": False,
    },
    "voice": {"file_id": "f", "file_unique_id": "u", "duration": 1},
    "video": {"file_id": "f", "file_unique_id": "u", "width": 1, "height": 1, "duration": 1},
    "document": {"file_id": "f", "file_unique_id": "u", "file_name": "a.pdf", "mime_type": "application/pdf"},
    "location": {"longitude": 1.0, "latitude": 2.0},
    "contact": {"phone_number": "1", "first_name": "x"},
    "dice": {"emoji": "🎲", "value": 3},
    "poll": {
        "id": "1", "question": "?", "options": [], "total_voter_count": 0, "is_closed": False,
        "is_anonymous": True, "type": "regular", "allows_multiple_answers": False,
    },
    "new_chat_members": [{"id": 5, "is_bot": False, "first_name": "x"}],
    "pinned_message": {"message_id": 1, "date": 0, "chat": {"id": 1, "type": "private"}},
    "web_app_data": {"data": "x", "button_text": "x"},
}  # fmt: skip
OTHERS: dict[str, Any] = {
    "inline_query": {"id": "1", "query": "x", "offset": ""},
    "chosen_inline_result": {"result_id": "1", "query": "x"},
    "shipping_query": {"id": "1", "invoice_payload": "x", "shipping_address": {}},
    "pre_checkout_query": {"id": "1", "currency": "EUR", "total_amount": 1, "invoice_payload": "x"},
    "poll": MEDIA["poll"],
    "poll_answer": {"poll_id": "1", "option_ids": [0]},
    "chat_join_request": {"user_chat_id": 1, "date": 0},
    "message_reaction": {"message_id": 1, "date": 0, "old_reaction": [], "new_reaction": []},
    "chat_boost": {"boost": {"boost_id": "1"}},
    "business_connection": {"id": "1", "date": 0, "is_enabled": True},
    "deleted_business_messages": {"business_connection_id": "1", "message_ids": [1]},
    "of_a_new_kind": {"x": 1},
}


class Faults(logging.Handler):
    """Counts what the bot itself calls an error, by where it was and its first words."""

    def __init__(self) -> None:
        super().__init__(logging.ERROR)
        self.found: Counter[str] = Counter()

    def emit(self, record: logging.LogRecord) -> None:
        words = record.getMessage()
        # What becomes of an update that nobody can read, or that no database can hold.
        if "passed over" not in words and "cannot be stored together" not in words:
            self.found[f"{record.name}: {words[:200]}"] += 1


class Everything:
    """A platform to which all arrives."""

    async def send(self, _chat: str, _message: Rendered) -> Sent:
        return Sent((str(time.perf_counter_ns()),))

    async def change(self, _chat: str, message_key: str, _message: Rendered) -> Sent:
        return Sent((message_key,))


def made(chance: random.Random, number: int) -> dict[str, Any]:
    """Return an update as the Bot API describes one."""
    user: dict[str, Any] = {
        "id": chance.choice(USERS),
        "is_bot": False,
        "first_name": chance.choice(("Bram", "<x>", "", "Ö")),
    }
    kind = chance.choice(("private",) * 8 + ("group", "supergroup", "channel"))
    chat = {**user, "type": kind} if kind == "private" else {"id": -user["id"], "type": kind, "title": "x"}
    date = chance.choice((int(time.time()),) * 6 + (0, 1, 2**31 - 1, int(time.time()) - 10**7))
    message: dict[str, Any] = {"message_id": number, "from": user, "chat": chat, "date": date}
    if chance.random() < 0.8:
        message["text"] = chance.choice((reported(chance), chance.choice(TEXTS)))
    else:
        name = chance.choice(list(MEDIA))
        message[name] = copy.deepcopy(MEDIA[name])
        if chance.random() < 0.3:
            message["caption"] = chance.choice(TEXTS)
    if chance.random() < 0.1:
        message["reply_to_message"] = {**message, "message_id": chance.randint(1, max(1, number))}
    choice = chance.random()
    if choice < 0.6:
        return {"update_id": number, "message": message}
    if choice < 0.75:
        edited = {**message, "message_id": chance.randint(1, number), "edit_date": date}
        return {"update_id": number, "edited_message": edited}
    if choice < 0.87:
        data = chance.choice((f"{chance.randint(1, number)}:{chance.randint(0, 3)}", "x", "1:0:0", "9" * 64))
        query = {"id": str(number), "from": user, "message": message, "chat_instance": "1", "data": data}
        return {"update_id": number, "callback_query": query}
    if choice < 0.92:
        status = chance.choice(("member", "kicked", "left", "administrator"))
        member = {"user": {**user, "is_bot": True}, "status": status}
        change = {
            "chat": chat,
            "from": user,
            "date": date,
            "old_chat_member": member,
            "new_chat_member": member,
        }
        return {"update_id": number, "my_chat_member": change}
    if choice < 0.95:
        return {"update_id": number, chance.choice(("channel_post", "business_message")): message}
    name = chance.choice(list(OTHERS))
    return {"update_id": number, name: {**OTHERS[name], "from": user, "user": user, "chat": chat}}


def mutated(chance: random.Random, update: dict[str, Any]) -> dict[str, Any]:
    """Return the update with some fields missing or of another kind; its identifier stands."""
    update = copy.deepcopy(update)
    for _ in range(chance.choice((0, 0, 1, 1, 2, 4))):
        holder: Any = update
        path: list[Any] = [key for key in update if key != "update_id"]
        while path:
            key = chance.choice(path)
            inner = holder[key]
            if isinstance(inner, dict) and inner and chance.random() < 0.8:
                holder, path = inner, list(inner)
            elif isinstance(inner, list) and inner and chance.random() < 0.5:
                holder, path = inner, [*range(len(inner))]
            else:
                if chance.random() < 0.4:
                    del holder[key]
                else:
                    holder[key] = copy.deepcopy(chance.choice((*ODD, *TEXTS)))
                break
    return update


async def run(updates: int, seed: int, folder: Path) -> int:
    """Let so many updates through; print what was found, and return 1 where anything went wrong."""
    chance, faults, clock = random.Random(seed), Faults(), lambda: datetime.now(UTC)
    logging.getLogger().addHandler(faults)
    engine = open_engine(f"sqlite:///{folder / 'fuzz.sqlite3'}", durable=False)
    migrate(engine)
    store = Store(engine)
    code = codes(store, "Bram", "Chidi", zone=AMSTERDAM)
    bot = make_bot(TOKEN, NOWHERE)
    bot._bot_user = User(4242, "Kilopost", is_bot=True)
    intake = Intake(bot, store, clock, lambda: None)
    desk = Desk(store, clock)
    delivery = Delivery(store, Everything(), clock=clock, enclose=named)
    times: list[float] = []
    for number in range(1, updates + 1):
        update = mutated(chance, made(chance, number))
        if number <= len(code):
            who = [*code][number - 1]
            chat = {"id": number, "type": "private", "first_name": who}
            start = {
                "message_id": number,
                "date": int(time.time()),
                "chat": chat,
                "text": f"/start {code[who]}",
            }
            update = {"update_id": number, "message": start}
        began = time.perf_counter()
        posted = json.loads(json.dumps(update))
        await intake.take([Update.de_json(readable(posted), None)])
        for _ in range(20):
            if desk.clear() + await delivery.clear() == 0:
                break
        times.append(time.perf_counter() - began)
        if number % 100 == 0:
            await asyncio.gather(*intake._asides)
    await asyncio.gather(*intake._asides)
    await bot.shutdown()
    waiting = store.queues(datetime.now(UTC))
    store.close()
    logging.getLogger().removeHandler(faults)
    return _told(updates, seed, times, faults, (waiting.inbox.length, waiting.outbox.length))


def _told(updates: int, seed: int, times: list[float], faults: Faults, waiting: tuple[int, int]) -> int:
    tenth = max(1, updates // 10)
    first, last = sum(times[tenth : 2 * tenth]) / tenth, sum(times[-tenth:]) / tenth
    print(f"{updates} updates (seed {seed}), {sum(times) / updates * 1e3:.1f} ms each; the last tenth took")
    print(f"{last / first:.2f} times the second; {sum(faults.found.values())} errors; {waiting} still wait")
    for words, times_ in faults.found.most_common(12):
        print(f"{times_:>6}  {words}")
    return 1 if faults.found or any(waiting) else 0


def main() -> int:
    """Let as many updates through as the command line says."""
    arguments = argparse.ArgumentParser(description="Mutated updates through the whole bot.")
    arguments.add_argument("--updates", type=int, default=200_000)
    arguments.add_argument("--seed", type=int, default=1)
    said = arguments.parse_args()
    with tempfile.TemporaryDirectory(prefix="kilopost-fuzz-") as folder:
        return asyncio.run(run(said.updates, said.seed, Path(folder)))


if __name__ == "__main__":
    sys.exit(main())
