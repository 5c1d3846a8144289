"""A coach's words to several clients: confirmed where they are many, and told whom they have reached."""

from domain.coach.draft import Draft
from domain.coach.yes_no import is_no, is_yes
from domain.coach_memory import Spread
from domain.incoming import Arrived, Told
from domain.memory import Waiting
from domain.parts import Say, Weight
from domain.reach import Reach, Unreached

CONFIRM_ABOVE = 5
"""Words to more clients than this go only after they were confirmed. The house's own choice."""

SEND_IT = "Send it"
REFUSE = "Do not send it"

STEPS, CLIENTS_A_STEP = 10, 5
"""In how many steps at most it is shown how far the words have come, and for how many clients at least each
is. The house's own choice."""

SPREADS_KEPT = 3
"""Of how many messages to several it is remembered whom they have reached. The house's own choice."""


def spread(draft: Draft, clients: tuple[int, ...], words: str) -> None:
    """Pass words on to several clients; where they are many, ask first."""
    if len(clients) <= CONFIRM_ABOVE:
        send(draft, clients, words)
        return
    names = [draft.name_of(client) for client in clients]
    about = {"clients": list(clients), "text": words}
    draft.ask("send", about, {"names": names, "text": words}, (SEND_IT, REFUSE))


def answer_spreading(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whether words are to go to many; return False where it is none."""
    refuses = is_no(text, REFUSE)
    if waiting.slot != "send" or not (refuses or is_yes(text, SEND_IT, "send", "go")):
        return False
    draft.remember(waiting=None)
    known = dict(draft.names)
    clients = tuple(each for each in waiting.about["clients"] if each in known)
    if refuses or not clients:
        draft.notice("not sent")
    else:
        send(draft, clients, str(waiting.about["text"]))
    return True


def send(draft: Draft, clients: tuple[int, ...], words: str) -> None:
    """Pass words on, and show whom they have reached as that becomes known."""
    order = Told(coach=draft.number, text=words, to_several=True, spread=draft.message)
    draft.order_all(clients, order)
    made = Spread(message=draft.message, clients=clients)
    draft.remember(spreads=(*draft.memory.spreads, made)[-SPREADS_KEPT:])
    draft.say(reach_of(draft, made))


def note_arrival(draft: Draft, arrived: Arrived) -> None:
    """Note that words have reached a client, or cannot; show it in the message that says how far they are."""
    spread = next((each for each in draft.memory.spreads if each.message == arrived.message), None)
    if spread is None or arrived.person not in spread.clients or arrived.person in spread.known:
        return
    if arrived.why is None:
        noted = spread.model_copy(update={"reached": (*spread.reached, arrived.person)})
    else:
        noted = spread.model_copy(update={"failed": (*spread.failed, (arrived.person, arrived.why))})
    draft.remember(
        spreads=tuple(noted if each.message == spread.message else each for each in draft.memory.spreads)
    )
    if step_of(noted) != step_of(spread):
        reach = reach_of(draft, noted)
        weight: Weight = "answer" if len(noted.known) == len(noted.clients) else "nudge"
        again = Say(to=draft.number, parts=(reach,), weight=weight, instead_of=spread.message)
        draft.say_again(again)


def step_of(spread: Spread) -> int:
    """Return in which of the steps it is; the last one only once all is known."""
    steps = max(1, min(STEPS, len(spread.clients) // CLIENTS_A_STEP))
    return len(spread.known) * steps // len(spread.clients)


def reach_of(draft: Draft, spread: Spread) -> Reach:
    """Return how far words to several have come."""
    names = dict(draft.names)
    return Reach(
        total=len(spread.clients),
        reached=tuple(names[each] for each in spread.reached if each in names),
        unreached=tuple(
            Unreached(client=names[each], why=why) for each, why in spread.failed if each in names
        ),
    )
