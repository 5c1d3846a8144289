"""Messages that change an earlier one in the chat, instead of adding one more.

What takes the place of another is sent like any other where it cannot: the earlier one was never sent, came
in several pieces or with a picture, or was deleted. What only shows a choice under an earlier one is let be.
"""

from dataclasses import replace

from bot.channel import Delivered, Final, Rendered, Sender, Sent
from bot.enclosing import encloses
from domain.parts import Chosen
from persistence.outbox import Outgoing


def only_adds(outgoing: Outgoing) -> bool:
    """Return whether a message leaves an earlier one's words, and at most shows a choice under them."""
    return outgoing.say.edits is not None and all(isinstance(part, Chosen) for part in outgoing.say.parts)


async def deliver(sender: Sender, outgoing: Outgoing, rendered: Rendered) -> Delivered:
    """Send a message, or change an earlier one by it."""
    if outgoing.say.edits is None:
        return await sender.send(outgoing.chat, rendered)
    earlier = outgoing.earlier
    is_one = earlier is not None and len(earlier.message_keys) == 1 and not encloses(earlier.parts)
    if only_adds(outgoing):
        if earlier is None or not earlier.message_keys:
            return Sent(())
        words = (
            f"{earlier.words}\n{rendered.text_html}"
            if is_one and earlier.words and rendered.text_html
            else ""
        )
        changed = replace(rendered, text_html=words)
        result = await sender.change(outgoing.chat, earlier.message_keys[-1], changed)
        # What is no longer there needs no change; and the change has no place in the chat of its own.
        return Sent(()) if isinstance(result, Sent) or result == Final("refused") else result
    if earlier is not None and is_one and not encloses(outgoing.say.parts):
        result = await sender.change(outgoing.chat, earlier.message_keys[0], rendered)
        if result != Final("refused"):
            return result
    return await sender.send(outgoing.chat, rendered)
