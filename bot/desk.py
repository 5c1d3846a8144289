"""The desk: the one shell around the pure decisions. It takes one person at a time, and one thing of theirs.

Each step is one transaction of the store; nothing here knows a chat, and nothing sleeps. The clock comes in
from outside, so that a played script and the running bot go through the very same steps.

Nobody holds up others: whoever has written more than a turn's worth rests for a moment before it goes on.
Where the database is away in the middle of a turn, the turn goes on once it is back.
"""

import logging
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from itertools import count

from bot.faults import told
from domain.decide import hear, wake
from domain.incoming import Heard
from domain.outcome import Outcome
from domain.parts import Notice
from domain.state import State
from persistence.faults import DatabaseTrouble, Undecided, Unreadable
from persistence.leases import Lease
from persistence.store import Store
from persistence.work import Decide

LEASE_SECONDS = 10.0
"""How long a worker that was lost holds a person up. A step under way is safe however long it takes: it has
the person's row locked."""
TURN_STEPS = 10
"""How much is done for one person in a row."""
REST_SECONDS = 5.0
"""How long it then waits, while others have their turn."""

STUCK = "person %s: %r would be due without an end, and is left alone for a while"
"""What is logged where an event is due however often it is done."""

log = logging.getLogger(__name__)


class Desk:
    """Handles what has come in and what is due."""

    def __init__(self, store: Store, clock: Callable[[], datetime]) -> None:
        """Work on what stands in `store`; `clock` gives the moment, aware."""
        self._store = store
        self._clock = clock
        self._begun: list[Lease] = []
        self._stopping = False

    def stop(self) -> None:
        """Begin no further step; from any thread."""
        self._stopping = True

    def clear(self) -> int:
        """Do all there is to do by now; return the number of steps done. Raises DatabaseTrouble."""
        steps = 0
        while not self._stopping:
            done = self._turn(self._begun.pop()) if self._begun else self._first()
            if done == 0:
                break
            steps += done
        return steps

    def _first(self) -> int:
        """Take somebody up and do the first step in one unit, and then the rest of the turn; or wake some."""
        now = self._clock()
        try:
            steps, goes_on = self._store.begin(now, LEASE_SECONDS, decider(now))
        except (Undecided, Unreadable):  # once more, under a lease that stands, so that it can be set aside
            lease = self._store.claim_person(now, LEASE_SECONDS)
            return 0 if lease is None else self._turn(lease)
        if goes_on is None:
            return steps
        if self._stopping:
            self._store.let_go(goes_on)
            return steps
        return self._turn(goes_on, steps)

    def _turn(self, lease: Lease, done: int = 0) -> int:
        """Do step after step for one person, of whom so many are done; return how many there were in all."""
        for steps in count(done + 1):
            try:
                if not self._step(lease, self._clock()):
                    break
                if self._stopping:
                    self._store.let_go(lease)
                    break
                if steps == TURN_STEPS:
                    self._store.rest(lease, self._clock(), REST_SECONDS)
                    break
            except DatabaseTrouble:
                self._begun.append(lease)
                raise
        return steps

    def _step(self, lease: Lease, now: datetime) -> bool:
        """Do one step; what nothing comes of is set aside, so that it does not hold up what comes after."""
        try:
            return self._store.work(lease, now, decider(now))
        except Undecided as fault:
            log.error(
                "person %s: message %s set aside: %s", fault.person, fault.message, told(fault.__cause__)
            )
            self._store.set_aside(lease, fault.message, fault.why, now, (Notice(topic="went wrong"),))
            return True
        except Unreadable as fault:
            # Nothing is set aside, so nothing is lost: the lease runs out, and then it is tried again.
            log.error("person %s cannot be read: %s", fault.person, told(fault.__cause__))
            return False


def decider(now: datetime) -> Decide:
    """Return the decision for a step at `now`: on what was heard, or on nothing, which is a wake."""

    def decide(state: State, heard: Heard | None) -> Outcome:
        if heard is not None:
            return hear(state, replace(heard, answered=now))
        outcome = wake(state, now)
        for each in outcome.stuck:
            log.error(STUCK, each.person, each.event)
        return outcome

    return decide
