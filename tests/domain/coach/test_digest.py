"""The digest: when it comes, what it counts, and that it stays short; who needs the coach, in order."""

from datetime import UTC, date, datetime, time, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.markup import plain
from bot.wording.overview import digest_words
from domain.actions import Words
from domain.coach_memory import CoachMemory, DigestTime
from domain.decide import hear, wake
from domain.erasure import Name, parts_left
from domain.incoming import Heard, Text
from domain.journal import AlertReason
from domain.outcome import Outcome
from domain.parts import ClientLine, Digest, Eager, Notice
from domain.state import Coach, CoachState
from domain.tally import ClientTally, Counts, RemedyResult, Unbeaten, WorkoutCounts

MONDAY = datetime(2026, 3, 2, 7, tzinfo=UTC)
"""In Lisbon, where it is winter."""


def line(
    name: str, *reasons: AlertReason, held: tuple[str, ...] = (), eager: int = 0, **more: object
) -> ClientLine:
    jump = Eager(
        rule="great jump",
        exercise="Row",
        workout="Pull",
        on=date(2026, 3, 4),
        at=MONDAY + timedelta(days=2),
        facts={"percent": 25.0},
    )
    base = ClientLine(name=name, programme="Harbour Base", last_workout=None, due_on=date(2026, 3, 9))
    alerts = tuple((reason, "Row" if reason == "stall" else None) for reason in reasons)
    return base.model_copy(update={"open_alerts": alerts, "held": held, "eager": (jump,) * eager, **more})


def state(
    *lines: ClientLine, tallies: dict[int, ClientTally] | None = None, digest: DigestTime | None = None
) -> CoachState:
    return CoachState(
        coach=Coach(number=1, name="Mara", zone="Europe/Lisbon", unit="kg"),
        memory=CoachMemory(looked_back_at=MONDAY, digest=digest),
        clients=tuple(enumerate(lines, start=2)),
        tallies=tallies or {},
    )


def says(text: str, before: CoachState, at: datetime = MONDAY + timedelta(hours=5)) -> Outcome:
    return hear(before, Heard(1, at, Text(text=text)))


def chosen(outcome: Outcome) -> tuple[str, int, time] | None:
    assert isinstance(outcome.memory, CoachMemory)
    digest = outcome.memory.digest
    return None if digest is None else (digest.every, digest.weekday, digest.at)


@pytest.mark.parametrize(
    ("text", "when"),
    [
        ("digest every day at 6", ("day", 0, time(6))),
        ("Daily digest at 18:30 please", ("day", 0, time(18, 30))),
        ("weekly on Sunday evening", ("week", 6, time(18))),
        ("send me the digest on Fridays at 5pm", ("week", 4, time(17))),
        ("digest every sunday at half past six in the evening", ("week", 6, time(18, 30))),
        ("I want the digest every morning", ("day", 0, time(7))),
        ("digest at 8", ("week", 0, time(8))),
        ("move the digest to 9 in the evening", ("week", 0, time(21))),
        ("weekly digest", ("week", 0, time(7))),
        ("digest on Wednesday", ("week", 2, time(7))),
        ("no digest", ("never", 0, time(7))),
        ("stop the weekly digest", ("never", 0, time(7))),
        ("turn off the digest", ("never", 0, time(7))),
    ],
)
def test_the_coach_chooses_when_the_digest_comes(text: str, when: tuple[str, int, time]) -> None:
    assert chosen(says(text, state(line("Noor")))) == when


@pytest.mark.parametrize(
    "text", ["digest every fortnight at 25", "tell Noor: weekly on Sunday", "how is Noor?", "daily grind"]
)
def test_what_is_no_time_for_the_digest_changes_nothing(text: str) -> None:
    outcome = says(text, state(line("Noor")))
    assert outcome.memory is None or chosen(outcome) is None


def test_where_the_half_of_the_day_is_not_said_the_other_is_a_button() -> None:
    (say,) = says("digest on sunday at 6", state(line("Noor"))).says
    assert say.buttons == (Words(text="Digest every sunday at 18:00", once=True),)
    assert chosen(says("Digest every sunday at 18:00", state(line("Noor")))) == ("week", 6, time(18))


@pytest.mark.parametrize(
    ("text", "next_at"),
    [
        ("digest every day at 6", datetime(2026, 3, 3, 6, tzinfo=UTC)),
        ("digest every day at 20:00", datetime(2026, 3, 2, 20, tzinfo=UTC)),
        ("digest every day at 23:30", datetime(2026, 3, 2, 23, 30, tzinfo=UTC)),
        ("weekly on Sunday evening", datetime(2026, 3, 8, 18, tzinfo=UTC)),
        ("no digest", None),
    ],
)
def test_a_chosen_time_holds_at_any_hour_and_nothing_is_overdue_by_it(
    text: str, next_at: datetime | None
) -> None:
    assert says(text, state(line("Noor"))).wake_at == next_at


def counts(on: int, **of: int) -> WorkoutCounts:
    return WorkoutCounts(on=date(2026, 3, on), counts=Counts(**of))


def digest_of(outcome: Outcome) -> Digest:
    ((part,),) = [say.parts for say in outcome.says]
    assert isinstance(part, Digest)
    return part


def words(digest: Digest) -> list[str]:
    return plain(digest_words(digest)).splitlines()


NUMBERS = st.integers(0, 9)
WORKOUTS = st.builds(
    WorkoutCounts,
    on=st.dates(date(2026, 2, 20), date(2026, 3, 12)),
    counts=st.builds(Counts, **dict.fromkeys(Counts.model_fields, NUMBERS)),
)


@given(st.lists(st.lists(WORKOUTS, max_size=6), min_size=1, max_size=40))
def test_its_numbers_are_the_sum_over_all_clients_of_the_days_since_the_last_one(
    clients: list[list[WorkoutCounts]],
) -> None:
    tallies = {at: ClientTally(workouts=tuple(done)) for at, done in enumerate(clients, start=2)}
    lines = [line(f"Client {number}", "question") for number in tallies]
    digest = digest_of(wake(state(*lines, tallies=tallies), MONDAY + timedelta(days=7)))
    assert digest.numbers is not None
    week = [
        each.counts for done in clients for each in done if date(2026, 3, 2) <= each.on <= date(2026, 3, 8)
    ]
    for name in Counts.model_fields:
        assert getattr(digest.numbers.counts, name) == sum(getattr(each, name) for each in week)


def test_a_daily_one_is_of_yesterday_and_comes_with_numbers_alone() -> None:
    daily = DigestTime(every="day", at=time(6))
    tallies = {
        2: ClientTally(
            workouts=(counts(2, due=1, done=1, beat=3, level=1), counts(3, due=1)),
            longest=Unbeaten(exercise="Dip", workouts=4, since=date(2026, 2, 1)),
            remedies=(RemedyResult(remedy="lighten", worked=True, on=date(2026, 3, 2)),),
        )
    }
    outcome = wake(state(line("Noor"), tallies=tallies, digest=daily), datetime(2026, 3, 3, 6, tzinfo=UTC))
    assert words(digest_of(outcome)) == [
        "Monday 2 March",
        "Workouts: 1 of 1 done",
        "Exercises: 3 beaten, 1 level, 0 below",
        "Longest without a beat: Noor, Dip (4 workouts)",
        "Remedies that worked: load down, build back 1 of 1",
        "Nobody needs you right now.",
    ]


@pytest.mark.parametrize("text", ["when is my digest?", "when does the next digest come?"])
def test_when_it_comes_can_be_asked(text: str) -> None:
    outcome = says(text, state(line("Noor")))
    (part,) = outcome.says[0].parts
    assert isinstance(part, Notice)
    assert part.facts == {"every": "week", "at": "07:00", "on": "2026-03-09"}
    assert outcome.memory is None


def test_it_can_be_had_at_once_without_moving_the_next_one() -> None:
    outcome = says("digest", state(line("Noor", "stall")), MONDAY + timedelta(days=3))
    assert digest_of(outcome).since == date(2026, 2, 26)
    assert outcome.memory is None


MOST_LINES = 24
"""What can be read standing: about two screens of a phone. The house's own bound."""


@given(
    st.lists(
        st.tuples(
            st.lists(st.sampled_from(["stall", "pain", "question", "missed", "review"]), max_size=4),
            st.integers(0, 6),
        ),
        min_size=40,
        max_size=40,
    )
)
def test_with_forty_clients_it_can_still_be_read_standing(
    clients: list[tuple[list[AlertReason], int]],
) -> None:
    lines = [line(f"Client {at}", *reasons, eager=eager) for at, (reasons, eager) in enumerate(clients)]
    long = ClientTally(
        workouts=(counts(4, due=2, done=2, beat=3, first=1, not_comparable=1),),
        longest=Unbeaten(exercise="Romanian deadlift", workouts=5, since=date(2026, 2, 1)),
        remedies=tuple(
            RemedyResult(remedy=remedy, worked=True, on=date(2026, 3, 4))
            for remedy in ("lighten", "swap", "rest more")
        ),
    )
    tallies = dict.fromkeys(range(2, 42), long)
    digest = digest_of(wake(state(*lines, tallies=tallies), MONDAY + timedelta(days=7)))
    assert len(words(digest)) <= MOST_LINES


def test_who_needs_the_coach_comes_in_the_order_of_what_is_needed_soonest() -> None:
    lines = [
        line("Idle"),
        line("New", to_release=True),
        line("Reviewed", "review"),
        line("Absent", "missed"),
        line("Asking", "question"),
        line("Aside", held=("Squat",)),
        line("Gone", "unreachable"),
        line("Stalled", "stall"),
        line("Hurt", "pain", held=("Row",)),
        line("Collapsed", "urgent"),
        line("Today", due_on=date(2026, 3, 2)),
        line("Both", "missed", "stall"),
    ]
    said = words(digest_of(says("who needs me?", state(*lines))))
    assert said == [
        "Needs you",
        "Collapsed: a warning sign",
        "Hurt: pain",
        "Both: stalled (Row) and missed workouts",
        "Stalled: stalled (Row)",
        "Gone: cannot be reached",
        "Aside: still aside for pain (Squat)",
        "Asking: a question",
        "Absent: missed workouts",
        "Reviewed: review due",
        "New: your word that training may begin",
        "Train today: Today",
        "And 11 later.",
    ]


def test_an_erased_client_is_in_no_digest_that_waits() -> None:
    tally = ClientTally(
        workouts=(counts(4, due=1, done=1),),
        longest=Unbeaten(exercise="Dip", workouts=4, since=date(2026, 2, 1)),
    )
    digest = digest_of(wake(state(line("Noor", "stall"), tallies={2: tally}), MONDAY + timedelta(days=7)))
    (left,) = parts_left((digest,), Name("Noor"), is_sent=False)
    assert "Noor" not in str(left.model_dump())
    assert isinstance(left, Digest)
    assert left.numbers is not None
    assert left.numbers.counts == Counts(due=1, done=1)
