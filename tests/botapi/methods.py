"""What each method of the Bot API does here, and what it refuses."""

import json
import time
from collections.abc import Callable
from typing import Final

from tests.botapi.errors import RefusedError
from tests.botapi.forms import Form, Upload
from tests.botapi.markup import Entity, parse, units
from tests.botapi.world import Json, Message, World

TEXT_LIMIT: Final = 4096
CAPTION_LIMIT: Final = 1024
BUTTON_DATA_LIMIT: Final = 64
DOWNLOAD_LIMIT: Final = 20 * 1024 * 1024
IMAGE_STARTS: Final = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")

Method = Callable[[World, Form], object]


def get_me(world: World, form: Form) -> object:  # noqa: ARG001 every method is called alike
    return world.bot


def get_updates(world: World, form: Form) -> object:
    allowed = form.text("allowed_updates")
    if allowed:
        world.allowed = set(json.loads(allowed)) or None
    limit = min(max(form.number("limit", 100), 1), 100)
    return world.poll(form.number("offset"), limit, min(form.number("timeout"), 50))


def set_webhook(world: World, form: Form) -> object:
    world.webhook = form.text("url")
    return True


def delete_webhook(world: World, form: Form) -> object:  # noqa: ARG001 every method is called alike
    world.webhook = ""
    return True


def get_webhook_info(world: World, form: Form) -> object:  # noqa: ARG001 every method is called alike
    return {
        "url": world.webhook,
        "has_custom_certificate": False,
        "pending_update_count": world.waiting,
        **world.webhook_trouble,
    }


def send_message(world: World, form: Form) -> object:
    chat = _open_chat(world, form)
    text, entities = _formatted(form, "text", TEXT_LIMIT, "message is too long")
    if not text:
        raise RefusedError(400, "Bad Request: message text is empty")
    return _deliver(world, Message(chat, 0, text, entities, _buttons(form)))


def send_photo(world: World, form: Form) -> object:
    chat = _open_chat(world, form)
    photo = form.files.get("photo")
    if photo is None:
        raise RefusedError(400, "Bad Request: there is no photo in the request")
    if not photo.content.startswith(IMAGE_STARTS):
        raise RefusedError(400, "Bad Request: IMAGE_PROCESS_FAILED")
    text, entities = _formatted(form, "caption", CAPTION_LIMIT, "message caption is too long")
    return _deliver(world, Message(chat, 0, text, entities, _buttons(form), photo=photo.content))


def send_document(world: World, form: Form) -> object:
    chat = _open_chat(world, form)
    document = form.files.get("document")
    if document is None:
        raise RefusedError(400, "Bad Request: there is no document in the request")
    if not document.content:
        raise RefusedError(400, "Bad Request: file must be non-empty")
    text, entities = _formatted(form, "caption", CAPTION_LIMIT, "message caption is too long")
    return _deliver(world, Message(chat, 0, text, entities, _buttons(form), document=document))


def edit_message_text(world: World, form: Form) -> object:
    message = _own_message(world, form)
    if message.photo is not None or message.document is not None:
        raise RefusedError(400, "Bad Request: there is no text in the message to edit")
    return _reworded(world, form, message, *_formatted(form, "text", TEXT_LIMIT, "MESSAGE_TOO_LONG"))


def edit_message_caption(world: World, form: Form) -> object:
    message = _own_message(world, form)
    if message.photo is None and message.document is None:
        raise RefusedError(400, "Bad Request: there is no caption in the message to edit")
    return _reworded(
        world, form, message, *_formatted(form, "caption", CAPTION_LIMIT, "MEDIA_CAPTION_TOO_LONG")
    )


def _reworded(world: World, form: Form, message: Message, text: str, entities: list[Json]) -> object:
    buttons = _buttons(form)
    if (text, entities, buttons) == (message.text, message.entities, message.buttons):
        raise _not_modified()
    message.text, message.entities, message.buttons = text, entities, buttons
    message.versions.append(text)
    return as_json(world, message)


def edit_message_reply_markup(world: World, form: Form) -> object:
    message = _own_message(world, form)
    buttons = _buttons(form)
    if buttons == message.buttons:
        raise _not_modified()
    message.buttons = buttons
    return as_json(world, message)


def answer_callback_query(world: World, form: Form) -> object:
    if form.text("callback_query_id") not in world.queries:
        old = "query is too old and response timeout expired or query ID is invalid"
        raise RefusedError(400, f"Bad Request: {old}")
    world.queries.remove(form.text("callback_query_id"))
    return True


def send_chat_action(world: World, form: Form) -> object:
    _open_chat(world, form)
    return True


def set_my_commands(world: World, form: Form) -> object:
    world.commands = json.loads(form.text("commands"))
    return True


def leave_chat(world: World, form: Form) -> object:
    if world.groups.pop(form.number("chat_id"), None) is None:
        raise RefusedError(400, "Bad Request: chat not found")
    return True


def get_file(world: World, form: Form) -> object:
    upload = world.files.get(form.text("file_id"))
    if upload is None:
        raise RefusedError(400, "Bad Request: wrong file_id or the file is temporarily unavailable")
    if len(upload.content) > DOWNLOAD_LIMIT:
        raise RefusedError(400, "Bad Request: file is too big")
    return {
        "file_id": form.text("file_id"),
        "file_unique_id": f"unique-{form.text('file_id')}",
        "file_size": len(upload.content),
        "file_path": f"documents/{form.text('file_id')}",
    }


METHODS: Final[dict[str, Method]] = {
    "getMe": get_me,
    "getUpdates": get_updates,
    "setWebhook": set_webhook,
    "deleteWebhook": delete_webhook,
    "getWebhookInfo": get_webhook_info,
    "sendMessage": send_message,
    "sendPhoto": send_photo,
    "sendDocument": send_document,
    "editMessageText": edit_message_text,
    "editMessageCaption": edit_message_caption,
    "editMessageReplyMarkup": edit_message_reply_markup,
    "answerCallbackQuery": answer_callback_query,
    "sendChatAction": send_chat_action,
    "setMyCommands": set_my_commands,
    "leaveChat": leave_chat,
    "getFile": get_file,
}


def as_json(world: World, message: Message) -> Json:
    """Return a message of the bot's as the Bot API shows it."""
    chat = world.people.get(message.chat) or world.groups[message.chat]
    shown: Json = {
        "message_id": message.message_id,
        "from": world.bot,
        "chat": {**chat, "type": chat.get("type", "private")},
        "date": int(time.time()),
    }
    if message.photo is not None:
        photo_id = f"photo-{message.message_id}"
        shown["photo"] = [{"file_id": photo_id, "file_unique_id": photo_id, "width": 1, "height": 1}]
    if message.document is not None:
        shown["document"] = {
            "file_id": f"document-{message.message_id}",
            "file_unique_id": f"unique-{message.message_id}",
            "file_name": message.document.name,
        }
    caption = message.photo is not None or message.document is not None
    if message.text:
        shown["caption" if caption else "text"] = message.text
        shown["caption_entities" if caption else "entities"] = message.entities
    if message.buttons:
        rows = [[{"text": label, "callback_data": data} for label, data in row] for row in message.buttons]
        shown["reply_markup"] = {"inline_keyboard": rows}
    return shown


def _open_chat(world: World, form: Form) -> int:
    chat = form.number("chat_id")
    if chat not in world.people and chat not in world.groups:
        raise RefusedError(400, "Bad Request: chat not found")
    if chat in world.blocked:
        raise RefusedError(403, "Forbidden: bot was blocked by the user")
    if chat in world.people and chat not in world.started:
        raise RefusedError(403, "Forbidden: bot can't initiate conversation with a user")
    return chat


def _own_message(world: World, form: Form) -> Message:
    try:
        return world.message(_open_chat(world, form), form.number("message_id"))
    except KeyError:
        raise RefusedError(400, "Bad Request: message to edit not found") from None


def _formatted(form: Form, name: str, limit: int, too_long: str) -> tuple[str, list[Entity]]:
    mode = form.text("parse_mode")
    if mode not in {"", "HTML"}:
        raise RefusedError(400, "Bad Request: unsupported parse_mode")
    text, entities = parse(form.text(name)) if mode else (form.text(name), [])
    text = text.strip()
    if units(text) > limit:
        raise RefusedError(400, f"Bad Request: {too_long}")
    return text, entities


def _buttons(form: Form) -> list[list[tuple[str, str]]]:
    markup = form.text("reply_markup")
    if not markup:
        return []
    rows = json.loads(markup).get("inline_keyboard", [])
    for button in (button for row in rows for button in row):
        if not button["text"]:
            raise RefusedError(400, "Bad Request: can't parse inline keyboard button: Text must be non-empty")
        if not 1 <= len(button["callback_data"].encode()) <= BUTTON_DATA_LIMIT:
            raise RefusedError(400, "Bad Request: BUTTON_DATA_INVALID")
    return [[(button["text"], button["callback_data"]) for button in row] for row in rows]


def _deliver(world: World, message: Message) -> Json:
    message.message_id = world.next_message_id()
    message.versions.append(message.text)
    if message.document is not None:
        world.files[f"document-{message.message_id}"] = Upload(
            message.document.name, message.document.content
        )
    with world.changed:
        world.sent.append(message)
        world.changed.notify_all()
    return as_json(world, message)


def _not_modified() -> RefusedError:
    same = "specified new message content and reply markup are exactly the same"
    return RefusedError(
        400,
        f"Bad Request: message is not modified: {same} as a current content and reply markup of the message",
    )
