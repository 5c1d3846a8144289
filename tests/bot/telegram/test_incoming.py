"""What each kind of update comes to. Shapes: https://core.telegram.org/bots/api#update"""

from datetime import UTC, datetime
from typing import Any

import pytest
from telegram import Update

from bot.telegram.incoming import InGroup, WithFile, translate
from domain.incoming import Document, Edited, FromChat, Pressed, Reachable, Started, Text, Unsupported
from persistence.inbox import Received

NOW = datetime(2026, 3, 5, 12, 0, tzinfo=UTC)
SAID_AT = datetime(2026, 3, 4, 23, 59, 30, tzinfo=UTC)
USER = {"id": 1001, "is_bot": False, "first_name": "Anna"}
BOT = {"id": 4242, "is_bot": True, "first_name": "Kilopost"}
PRIVATE = {"id": 1001, "type": "private", "first_name": "Anna"}
GROUP = {"id": -5, "type": "supergroup", "title": "A group"}
PHOTO = [{"file_id": "p", "file_unique_id": "p", "width": 1, "height": 1}]
FILE = {"file_id": "f", "file_unique_id": "f"}


def message(chat: dict[str, Any] = PRIVATE, **content: Any) -> dict[str, Any]:
    return {"message_id": 77, "date": int(SAID_AT.timestamp()), "chat": chat, "from": USER, **content}


def understood(update_id: int = 5, **update: Any) -> Received | WithFile | InGroup | None:
    read = Update.de_json({"update_id": update_id, **update}, None)
    return translate(read, 4242, NOW)


def whole(found: Received | WithFile | InGroup | None) -> Received:
    assert isinstance(found, Received)
    return found


def pressed(data: str, update_id: int = 5, query_id: str = "q1") -> Received:
    query = {
        "id": query_id,
        "from": USER,
        "chat_instance": "1",
        "data": data,
        "message": message(text="Right?"),
    }
    return whole(understood(update_id, callback_query=query))


def membership(chat: dict[str, Any], status: str) -> dict[str, Any]:
    new = {"user": BOT, "status": status, "until_date": 0}
    old = {"user": BOT, "status": "left"}
    return {
        "chat": chat,
        "from": USER,
        "date": int(SAID_AT.timestamp()),
        "old_chat_member": old,
        "new_chat_member": new,
    }


@pytest.mark.parametrize(
    ("content", "expected"),
    [
        ({"text": "row 60 x 8"}, Text(text="row 60 x 8", key="77")),
        ({"text": "  row\n"}, Text(text="  row\n", key="77")),
        (
            {"text": "8", "reply_to_message": message(text="How many?")},
            Text(text="8", key="77", replies_to="77"),
        ),
        ({"text": "a\0b\ud800"}, Text(text="a\ufffdb\ufffd", key="77")),
        ({"text": "/start"}, Started()),
        ({"text": "/start a-Code_9"}, Started(code="a-Code_9")),
        ({"text": "/Start@kilopost_test_bot  a-Code_9 "}, Started(code="a-Code_9")),
        ({"text": "/startle me"}, Text(text="/startle me", key="77")),
        ({"text": "please /start"}, Text(text="please /start", key="77")),
        ({"photo": PHOTO}, Unsupported(what="photo")),
        ({"photo": PHOTO, "caption": "row 60 x 8"}, Text(text="row 60 x 8", key="77")),
        ({"voice": {**FILE, "duration": 3}}, Unsupported(what="voice message")),
        ({"location": {"longitude": 1.0, "latitude": 2.0}}, Unsupported(what="location")),
        (
            {
                "sticker": {
                    **FILE,
                    "type": "regular",
                    "width": 1,
                    "height": 1,
                    "is_animated": False,
                    "is_video": False,
                }
            },
            Unsupported(what="sticker"),
        ),
        (
            {"animation": {**FILE, "width": 1, "height": 1, "duration": 1}, "document": FILE},
            Unsupported(what="animation"),
        ),
        (
            {"document": {**FILE, "file_name": "sheet.txt", "file_size": 10**6}},
            Document(name="sheet.txt", fault="too large"),
        ),
        (
            {"document": {**FILE, "file_name": "plan.pdf", "mime_type": "application/pdf"}},
            Document(name="plan.pdf", fault="not text"),
        ),
    ],
)
def test_a_message_becomes_what_it_means(content: dict[str, Any], expected: FromChat) -> None:
    received = whole(understood(message=message(**content)))
    assert received == Received("telegram", "4242:1001:77", "telegram:1001", SAID_AT, expected)


def test_a_file_that_may_be_a_sheet_is_to_be_fetched() -> None:
    found = understood(message=message(document={**FILE, "file_name": "sheet.txt"}))
    assert isinstance(found, WithFile)
    assert (found.name, found.file_id) == ("sheet.txt", "f")


def test_service_messages_are_of_no_concern() -> None:
    assert understood(message=message(pinned_message=message(text="x"))) is None


def test_an_edit_names_the_message_and_is_never_a_command() -> None:
    received = whole(understood(9, edited_message=message(text="/start x", edit_date=int(NOW.timestamp()))))
    assert received.incoming == Edited(text="/start x", key="77")
    assert received.at == NOW
    again = whole(understood(10, edited_message=message(text="row", edit_date=int(NOW.timestamp()))))
    assert received.key != again.key


def test_the_same_press_has_the_same_key_under_another_update() -> None:
    first, again, other = pressed("7:0", 5), pressed("7:0", 6), pressed("7:1", 7)
    assert first.incoming == Pressed(button="7:0", query="q1")
    assert first.at == NOW
    assert first.key == again.key != other.key


def test_a_new_press_of_what_only_shows_something_has_a_key_of_its_own() -> None:
    first, again, anew = pressed("7:0:shows", 5), pressed("7:0:shows", 6), pressed("7:0:shows", 7, "q2")
    assert first.key == again.key != anew.key
    assert pressed("7:0", 5).key == pressed("7:0", 7, "q2").key


@pytest.mark.parametrize(("status", "reachable"), [("kicked", False), ("member", True)])
def test_blocking_and_unblocking_are_told(status: str, *, reachable: bool) -> None:
    received = whole(understood(my_chat_member=membership(PRIVATE, status)))
    assert received.incoming == Reachable(reachable=reachable)


def test_a_group_is_to_be_left_and_a_channel_ignored() -> None:
    assert understood(message=message(GROUP, text="hello")) == InGroup(-5)
    assert understood(edited_message=message(GROUP, text="hello")) == InGroup(-5)
    assert understood(my_chat_member=membership(GROUP, "member")) == InGroup(-5)
    assert understood(my_chat_member=membership(GROUP, "left")) is None
    channel = {"id": -7, "type": "channel", "title": "A channel"}
    assert understood(channel_post=message(channel, text="hello")) is None
    assert understood(my_chat_member=membership(channel, "member")) is None


def test_keys_tell_bots_and_chats_apart() -> None:
    read = Update.de_json({"update_id": 5, "message": message(text="x")}, None)
    keys = {whole(translate(read, number, NOW)).key for number in (1, 2)}
    elsewhere = {**PRIVATE, "id": 1002}
    keys.add(whole(understood(message=message(elsewhere, text="x"))).key)
    assert len(keys) == 3
