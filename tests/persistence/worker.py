"""A worker that decides and sends until it is killed, for tests: `python -m tests.persistence.worker URL`.

Its decision on a message is to record a set, to say so, and to order something of the coach. What it sends
goes to standard output, one line each, as chat and number of the message.
"""

import sys
import time
from datetime import UTC, datetime
from decimal import Decimal

from domain.incoming import Decided, Heard, Text
from domain.journal import Entry, WorkoutRecord
from domain.outcome import Order, Outcome, Recorded, WorkoutKept
from domain.parts import Question, Say
from domain.sets import TrainingSet
from domain.state import ClientState, State
from persistence.store import Store, open_store

LEASE_SECONDS = 0.4


def decide(state: State, heard: Heard | None) -> Outcome:
    """Record one set for each message."""
    if not isinstance(state, ClientState) or heard is None or not isinstance(heard.incoming, Text):
        return Outcome()
    number = state.memory.last_entry + 1
    client, programme = state.client.number, state.programmes[0].number
    workout = WorkoutRecord(1, programme, "Push", heard.at.date(), "open", 1)
    done = TrainingSet("Dip", Decimal(heard.incoming.text), "kg", "added", reps=8)
    echo = Question(slot="confirm", facts={"text": heard.incoming.text})
    told = Order(state.client.coach.number, Decided(coach=client, alert=number, remedy="seen"))
    return Outcome(
        changes=(WorkoutKept(workout), Recorded(Entry(number, 1, heard.number, done, heard.at))),
        says=(Say(to=client, parts=(echo,)),),
        orders=(told,),
        memory=state.memory.model_copy(update={"last_entry": number}),
    )


def step(store: Store) -> bool:
    """Decide for one person and send to one chat; return whether there was anything to do."""
    now = datetime.now(UTC)
    person = store.claim_person(now, LEASE_SECONDS)
    while person is not None and store.work(person, datetime.now(UTC), decide):
        pass
    chat = store.claim_chat(now, LEASE_SECONDS)
    while chat is not None and (outgoing := store.next_message(chat, datetime.now(UTC))) is not None:
        if store.sending(chat, outgoing.number, datetime.now(UTC)):
            print(f"{outgoing.chat} {outgoing.number}", flush=True)
            store.sent(chat, outgoing.number, "words", ["1"], [], datetime.now(UTC))
    return person is not None or chat is not None


def main() -> None:
    """Work on the database of the first argument until killed."""
    store = open_store(sys.argv[1])
    print("ready", flush=True)
    while True:
        if not step(store):
            time.sleep(0.01)


if __name__ == "__main__":
    main()
