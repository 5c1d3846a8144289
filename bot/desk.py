"""The desk: the one shell around the pure decisions. It takes one person at a time, and one thing of theirs.

Each step is one transaction of the store; nothing here knows a chat, and nothing sleeps. Time comes in as an
argument, so that a played script and the running bot go through the very same steps.
"""

import logging
import traceback
from datetime import datetime
from pathlib import Path

from domain.decide import hear, wake
from domain.incoming import Heard
from domain.outcome import Outcome
from domain.parts import Notice
from domain.state import State
from persistence.faults import Undecided, Unreadable
from persistence.leases import Lease
from persistence.store import Store
from persistence.work import Decide

LEASE_SECONDS = 60.0

log = logging.getLogger(__name__)


class Desk:
    """Handles what has come in and what is due."""

    def __init__(self, store: Store) -> None:
        """Work on what stands in `store`."""
        self._store = store

    def clear(self, now: datetime) -> int:
        """Do all there is to do at `now` (aware); return the number of steps done."""
        steps = 0
        while (lease := self._store.claim_person(now, LEASE_SECONDS)) is not None:
            more = True
            while more:
                more = self._step(lease, now)
                steps += 1
        return steps

    def _step(self, lease: Lease, now: datetime) -> bool:
        """Do one step; what nothing comes of is set aside, so that it does not hold up what comes after."""
        try:
            return self._store.work(lease, now, decider(now))
        except Undecided as fault:
            log.error("person %s: message %s set aside: %s", fault.person, fault.message, told(fault))
            self._store.set_aside(lease, fault.message, fault.why, now, (Notice(topic="went wrong"),))
            return True
        except Unreadable as fault:
            # Nothing is set aside, so nothing is lost: the lease runs out, and then it is tried again.
            log.error("person %s cannot be read: %s", fault.person, told(fault))
            return False


def told(fault: Undecided | Unreadable) -> str:
    """Return what went wrong and in which lines, without anything that a person wrote."""
    frames = traceback.extract_tb(fault.__cause__.__traceback__ if fault.__cause__ else None)
    places = (f"{Path(frame.filename).name}:{frame.lineno}" for frame in frames[-5:])
    return f"{fault.why} at {' < '.join(reversed([*places]))}"


def decider(now: datetime) -> Decide:
    """Return the decision for a step at `now`: on what was heard, or on nothing, which is a wake."""

    def decide(state: State, heard: Heard | None) -> Outcome:
        return wake(state, now) if heard is None else hear(state, heard)

    return decide
