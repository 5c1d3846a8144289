"""What a coach's digest holds: the numbers of the days looked back on, and who is to be seen to.

The numbers are sums of what each client's own decisions have counted (`domain.client.tallying`).
"""

from collections import Counter
from datetime import date, datetime
from zoneinfo import ZoneInfo

from domain.actions import Taken
from domain.calendar import DAY, local_day
from domain.parts import ClientLine, Digest
from domain.state import CoachState
from domain.tally import Counts, LongUnbeaten, Numbers, RemedyCount, between, total

NAMED_UNBEATEN = 3
"""How many exercises that were not beaten for long are named. The house's own choice."""


def look_back(state: CoachState, now: datetime) -> Digest | None:
    """Return the digest on the days since the last one; None where there is nothing in it, or no week yet."""
    looked = state.memory.looked_back_at
    if looked is None:
        return None
    digest = digest_since(state, looked, now)
    is_empty = digest.numbers is None or digest.numbers.counts == Counts()
    return None if is_empty and not digest.clients else digest


def digest_since(state: CoachState, since: datetime, now: datetime) -> Digest:
    """Return the numbers of the days from that of `since` until yesterday, and whoever is to be seen to."""
    zone = ZoneInfo(state.coach.zone)
    first, today = local_day(since, zone), local_day(now, zone)
    lines = tuple(line_since(line, since) for _, line in state.clients)
    to_do = tuple(line for line in lines if line.open_alerts or line.to_release or line.eager)
    return Digest(today=today, clients=to_do, since=first, numbers=numbers_of(state, first, today - DAY))


def line_since(line: ClientLine, since: datetime) -> ClientLine:
    """Return a client's line with what came to light after `since`."""
    return line.model_copy(
        update={"eager": tuple(each for each in line.eager if each.at > since), "tried": ()}
    )


def numbers_of(state: CoachState, first: date, last: date) -> Numbers:
    """Return the numbers over all clients from the day `first` to the day `last`."""
    names = {number: line.name for number, line in state.clients}
    tallies = {number: tally for number, tally in state.tallies.items() if number in names}
    longest = sorted(
        (
            LongUnbeaten(client=names[number], of=tally.longest)
            for number, tally in tallies.items()
            if tally.longest is not None
        ),
        key=lambda each: (-each.of.workouts, each.of.since, each.client),
    )
    looked: Counter[Taken] = Counter()
    worked: Counter[Taken] = Counter()
    for tally in tallies.values():
        for each in tally.remedies:
            if first <= each.on <= last:
                looked[each.remedy] += 1
                worked[each.remedy] += each.worked
    return Numbers(
        until=last,
        counts=total(between(tally, first, last) for tally in tallies.values()),
        longest=tuple(longest[:NAMED_UNBEATEN]),
        remedies=tuple(
            RemedyCount(remedy=remedy, worked=worked[remedy], looked=count)
            for remedy, count in looked.most_common()
        ),
    )
