"""The other end of the chats: people who type, edit, press, send files and block, and groups."""

import time

from tests.botapi.forms import Upload
from tests.botapi.methods import as_json
from tests.botapi.world import Json, Message, World


class Person:
    """Somebody with a private chat. `number` is the person's and the chat's."""

    def __init__(self, world: World, number: int) -> None:
        self.world = world
        self.number = number

    @property
    def received(self) -> tuple[Message, ...]:
        """Return what the bot has sent to this chat, in order, as it stands now."""
        with self.world.changed:
            return tuple(message for message in self.world.sent if message.chat == self.number)

    def says(self, text: str, *, replies_to: int | None = None, at: float | None = None) -> int:
        """Type `text`, maybe as a reply to an own message or the bot's. Returns the message's identifier."""
        content: Json = {"text": text}
        if text.startswith("/"):
            length = len(text.split(maxsplit=1)[0])
            content["entities"] = [{"type": "bot_command", "offset": 0, "length": length}]
        if replies_to is not None:
            own = self.world.said.get((self.number, replies_to))
            answered = own or as_json(self.world, self.world.message(self.number, replies_to))
            content["reply_to_message"] = answered
        return self.sends(content, at=at)

    def sends(self, content: Json, *, at: float | None = None) -> int:
        """Send a message with this content (a sticker, a photo, ...). Returns its identifier."""
        self.world.started.add(self.number)
        message: Json = {
            "message_id": self.world.next_message_id(),
            "from": self._user,
            "chat": self._chat,
            "date": int(time.time() if at is None else at),
            **content,
        }
        message_id = int(str(message["message_id"]))
        self.world.said[self.number, message_id] = message
        self.world.add_update("message", message)
        return message_id

    def edits(self, message_id: int, text: str) -> None:
        """Edit an own message."""
        message = {**self.world.said[self.number, message_id], "text": text, "edit_date": int(time.time())}
        self.world.said[self.number, message_id] = message
        self.world.add_update("edited_message", message)

    def sends_file(self, name: str, content: bytes, *, mime: str = "text/plain") -> int:
        """Send a document. Returns the message's identifier."""
        file_id = f"upload-{len(self.world.files) + 1}"
        self.world.files[file_id] = Upload(name, content)
        document = {
            "file_id": file_id,
            "file_unique_id": f"unique-{file_id}",
            "file_name": name,
            "mime_type": mime,
            "file_size": len(content),
        }
        return self.sends({"document": document})

    def presses(self, label: str) -> str:
        """Press the button `label` on the latest message that has it. Returns the query's identifier."""
        for message in reversed(self.received):
            for row in message.buttons:
                for text, data in row:
                    if text == label:
                        return self.presses_data(message, data)
        raise LookupError(f"no button {label!r} among {[m.labels for m in self.received]}")

    def presses_data(self, message: Message, data: str) -> str:
        """Press a button of `message` that has this data, on any message. Returns the query's identifier."""
        self.world.started.add(self.number)
        query = f"query-{self.world.next_message_id()}"
        self.world.queries.add(query)
        self.world.add_update(
            "callback_query",
            {
                "id": query,
                "from": self._user,
                "message": {**as_json(self.world, message), "chat": self._chat},
                "chat_instance": str(self.number),
                "data": data,
            },
        )
        return query

    def blocks(self) -> None:
        """Block the bot."""
        self.world.blocked.add(self.number)
        self._membership("member", "kicked")

    def unblocks(self) -> None:
        """Let the bot in again."""
        self.world.blocked.discard(self.number)
        self._membership("kicked", "member")

    def _membership(self, before: str, after: str) -> None:
        old: Json = {"user": self.world.bot, "status": before}
        new: Json = {"user": self.world.bot, "status": after}
        for member in (old, new):
            if member["status"] == "kicked":
                member["until_date"] = 0
        content: Json = {
            "chat": self._chat,
            "from": self._user,
            "date": int(time.time()),
            "old_chat_member": old,
            "new_chat_member": new,
        }
        self.world.add_update("my_chat_member", content)

    @property
    def _user(self) -> Json:
        return {**self.world.people[self.number], "is_bot": False}

    @property
    def _chat(self) -> Json:
        return {**self.world.people[self.number], "type": "private"}


class Group:
    """A group that the bot can be brought into."""

    def __init__(self, world: World, number: int) -> None:
        self.world = world
        self.number = number

    def says(self, text: str, person: Person) -> None:
        """Let `person` say something in the group."""
        content: Json = {
            "message_id": self.world.next_message_id(),
            "from": {**self.world.people[person.number], "is_bot": False},
            "chat": self.world.groups[self.number],
            "date": int(time.time()),
            "text": text,
        }
        self.world.add_update("message", content)

    @property
    def left(self) -> bool:
        """Return whether the bot has left."""
        return self.number not in self.world.groups
