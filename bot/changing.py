"""Messages that change an earlier one in the chat, instead of adding one more.

What takes the place of another is sent like any other where it cannot: the earlier one was never sent, came
in several pieces or with a picture, or was deleted. What only shows a choice under an earlier one is let be;
what has come of the choice is sent.
"""

from dataclasses import replace

from bot.channel import Delivered, Final, Rendered, Sender, Sent
from bot.enclosing import encloses
from domain.parts import CameOf, Chosen
from persistence.outbox import Earlier, Outgoing


def only_adds(outgoing: Outgoing) -> bool:
    """Return whether a message leaves an earlier one's words, and at most shows something under them."""
    parts = outgoing.say.parts
    return outgoing.say.edits is not None and all(isinstance(part, Chosen | CameOf) for part in parts)


def shows_choice(outgoing: Outgoing) -> bool:
    """Return whether a message shows at most which button was pressed."""
    return only_adds(outgoing) and not any(isinstance(part, CameOf) for part in outgoing.say.parts)


async def deliver(sender: Sender, outgoing: Outgoing, rendered: Rendered) -> Delivered:
    """Send a message, or change an earlier one by it."""
    if outgoing.say.edits is None:
        return await sender.send(outgoing.chat, rendered)
    earlier = outgoing.earlier
    if only_adds(outgoing):
        return await _add(sender, outgoing, rendered, earlier)
    is_one = earlier is not None and len(earlier.message_keys) == 1 and not encloses(earlier.parts)
    if earlier is not None and is_one and not encloses(outgoing.say.parts):
        result = await sender.change(outgoing.chat, earlier.message_keys[0], rendered)
        if result != Final("refused"):
            return result
    return await sender.send(outgoing.chat, rendered)


async def _add(sender: Sender, outgoing: Outgoing, rendered: Rendered, earlier: Earlier | None) -> Delivered:
    """Show something under an earlier message; where it cannot be, change its buttons at least."""
    result: Delivered = Final("refused")
    is_to_be_read = any(isinstance(part, CameOf) for part in outgoing.say.parts)
    if earlier is not None and earlier.message_keys:
        key = earlier.message_keys[-1]
        if len(earlier.message_keys) == 1 and earlier.words and rendered.text_html:
            words = f"{earlier.words}\n{rendered.text_html}"
            shown = replace(rendered, text_html=words, is_caption=encloses(earlier.parts))
            result = await sender.change(outgoing.chat, key, shown)
            is_to_be_read = is_to_be_read and result == Final("refused")
        if result == Final("refused"):
            result = await sender.change(outgoing.chat, key, replace(rendered, text_html=""))
    if is_to_be_read and (isinstance(result, Sent) or result == Final("refused")):
        return await sender.send(outgoing.chat, replace(rendered, buttons=()))
    # What is no longer there needs no change; and the change has no place in the chat of its own.
    return Sent(()) if isinstance(result, Sent) or result == Final("refused") else result
