"""The first questions to a new client, as a table: each with how its answer is read and what it changes.

They are asked in the order of the table; what comes next is the first that is to be asked and is not settled.
Only its own answer settles a question, so that neither the agreement nor the readiness can be passed over;
the others may be settled by a setting told in between as well. How a conversation goes along the table, with
detours and interruptions, is in `joining_flow.py`; the words are in `bot/wording/joining.py`.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, time, timedelta
from typing import Any, Literal

from domain.calendar import following_days
from domain.client.clearance import see_a_doctor_first
from domain.client.draft import Draft
from domain.client.equipping import set_equipment, without_of
from domain.client.rotation import in_turn
from domain.client.settings import (
    says_time_here,
    set_hour,
    set_unit,
    set_zone,
    take_usual_hour,
    unit_named,
    zones_said,
)
from domain.client.turn import take_turn
from domain.client.understanding import request_for
from domain.clock_words import clock_in
from domain.equipment import Equipment
from domain.equipment_answers import answered
from domain.equipment_words import told
from domain.expressions import Expression
from domain.first_day_words import first_day_of
from domain.joining_words import SKIP, age_by_year, age_of, agrees, guardian_agrees, plainly
from domain.memory import Joining, JoiningStep
from domain.outcome import SettingsKept
from domain.parts import Notice
from domain.places import city_of, zones_in
from domain.programme import FixedDays
from domain.readiness import readiness_of
from domain.reading import days_meant, read
from domain.topics import Topic
from domain.usual_hours import leaves_choice

Taken = Literal["settled", "open", "unread"]
"""What an answer comes to: the question is settled; it was understood but leaves it open; it is no answer."""

LONGEST = 200
"""No answer to a question of these is longer. The house's own choice."""

EVENING = time(20)
"""From this hour on the first workout is no longer offered for the same day. The house's own choice."""

LATEST_START = timedelta(days=90)
"""No first day lies further ahead; whoever says so has mistyped. The house's own choice."""


@dataclass(frozen=True, slots=True)
class Step:
    """One question. `take` reads an answer and does what it changes; `is_asked`: whether it concerns this
    client.

    `choices` are the likely answers, for buttons; `facts` are for the words. `setting` is what is said when
    the same thing is told in plain words, which settles the question as well.
    """

    name: JoiningStep
    take: Callable[[Draft, str], Taken]
    choices: Callable[[Draft], tuple[str, ...]]
    facts: Callable[[Draft], dict[str, Any]] = lambda _: {}
    is_asked: Callable[[Draft], bool] = lambda _: True
    setting: Topic | None = None
    no_goes_back: bool = False
    """Whether a mere no can be meant only of what was said back of the answer before."""


def joining_of(draft: Draft) -> Joining:
    """Return how far the first questions have come."""
    return draft.memory.joining or Joining()


def note(draft: Draft, **updates: Any) -> None:
    """Change how far the first questions have come."""
    draft.remember(joining=joining_of(draft).model_copy(update=updates))


def next_step(draft: Draft) -> Step | None:
    """Return the question that is to be answered now; None where none is."""
    settled = joining_of(draft).settled
    return next((each for each in STEPS if each.name not in settled and each.is_asked(draft)), None)


def take_consent(draft: Draft, text: str) -> Taken:
    """Take the agreement to what this is and is not; a refusal leaves all as it is, and the coach hears of
    it."""
    agreed = agrees(text)
    if agreed is None:
        return "unread"
    if agreed:
        note(draft, refused=False)
        draft.remember(agreed_at=draft.at)
        return "settled"
    if not joining_of(draft).refused:
        news = Notice(topic="client agreed not", facts={"client": draft.client.name})
        draft.tell_coach(news, buttons=(draft.writing,))
    note(draft, refused=True)
    return "open"


def take_age(draft: Draft, text: str) -> Taken:
    """Take whether the client is of age."""
    age = age_of(text) or age_by_year(text, draft.today.year)
    if age is None:
        return "unread"
    if age == "minor":
        note(draft, is_minor=True)
        news = Notice(topic="client is minor", facts={"client": draft.client.name})
        draft.tell_coach(news, buttons=(draft.writing,))
    return "settled"


def take_guardian(draft: Draft, text: str) -> Taken:
    """Take a guardian's own word, which the coach gets too; or that the client is of age after all."""
    if guardian_agrees(text):
        draft.remember(guardian_said=text)
        draft.notice("guardian noted", coach=draft.client.coach.name)
        facts = {"client": draft.client.name, "said": text, "is_adult": False}
        draft.tell_coach(Notice(topic="guardian's word", facts=facts))
        return "settled"
    if any(sign.isdigit() for sign in text) and age_of(text) == "adult":
        note(draft, is_minor=False)
        facts = {"client": draft.client.name, "said": text, "is_adult": True}
        draft.tell_coach(Notice(topic="guardian's word", facts=facts))
        return "settled"
    return "open" if agrees(text) is False else "unread"


def take_readiness(draft: Draft, text: str) -> Taken:
    """Take which of the matters fit: any of them goes to a doctor first, and is the coach's to release."""
    matters = readiness_of(text)
    if matters is None:
        return "unread"
    if matters:
        see_a_doctor_first(draft, frozenset() if matters == "yes" else matters, text)
    return "settled"


def take_unit(draft: Draft, text: str) -> Taken:
    """Take the usual unit."""
    unit = unit_named(plainly(text)) or (draft.client.unit if leaves_choice(text) else None)
    if unit is None:
        return "unread"
    set_unit(draft, unit)
    return "settled"


def take_zone(draft: Draft, text: str) -> Taken:
    """Take where the client lives, by place, offset or the time it is there; the local time is said back."""
    said = plainly(text)
    for lead in ("i live ", "i'm ", "i am ", "it's in ", "we live "):
        said = said.removeprefix(lead)
    zones = zones_said(draft, said, joining_of(draft).zones) or zones_among(draft, said)
    note(draft, zones=zones if len(zones) > 1 else ())
    if len(zones) == 1:
        set_zone(draft, zones[0])
        return "settled"
    return "open" if zones else "unread"


_NOT_THERE = Expression(r"\?|\b(?:not|no|never|n't|was|from|moving|move|when|until|till)\b|n't\b")
_LIKE_THE_COACH = Expression(
    r"(?:the )?same (?:zone |time(?: zone)? |place |town |city )?(?:as|like) (?P<whom>[\w ]+)"
)


def zones_among(draft: Draft, said: str) -> tuple[str, ...]:
    """Return the zones of the places that stand among other words, or the coach's, where that is said."""
    coach = draft.client.coach
    like = _LIKE_THE_COACH.fullmatch(said)
    if like and like["whom"] in {"my coach", "the coach", "coach", "you", coach.name.casefold()}:
        return (coach.zone,)
    return () if _NOT_THERE.search(said) else zones_in(said)


def take_hour(draft: Draft, text: str) -> Taken:
    """Take the hour of the reminder, or that none is wanted."""
    said = plainly(text)
    if AFTER_THANKS.sub("", said) in NO_REMINDERS:
        draft.remember(reminders_off=True)
        draft.notice("reminders unwanted")
        return "settled"
    if take_usual_hour(draft, said):
        return "settled"
    clock = None if says_time_here(said) else clock_in(said)
    if clock is None and len(zones := zones_among(draft, said)) == 1:
        # Where home is, said more closely or put right.
        set_zone(draft, zones[0])
        return "open"
    if clock is None:
        # A yes is to the local time that was said back with the question.
        return "open" if agrees(said) else "unread"
    at = clock.awake()
    set_hour(draft, at.hour, at.minute, None)
    return "settled"


def take_equipment(draft: Draft, text: str) -> Taken:
    """Take what the client has to train with, or has not."""
    said = plainly(text)
    if ALL_AT_HAND.fullmatch(said) or SKIP.fullmatch(said):
        return "settled"
    own = draft.client.equipment
    names = without_of(draft.client)
    equipment = told(text, own, names) or answered(text, own, names)
    equipment = equipment or told_in_parts(draft, said)
    if equipment is None:
        return "unread"
    set_equipment(draft, equipment)
    return "settled"


def told_in_parts(draft: Draft, said: str) -> Equipment | None:
    """Return the equipment where a part of an answer tells of it: "all but a bench", "no bench, rest ok"."""
    found, equipment = False, draft.client.equipment
    for part in PARTS.split(ALL_BUT.sub("no ", said)):
        after = told(part, equipment, without_of(draft.client))
        found, equipment = found or after is not None, after or equipment
    return equipment if found else None


def take_first_day(draft: Draft, text: str) -> Taken:
    """Take the day of the first workout, today or later, or which workout that is, and then ask again."""
    said = CHANGED_MIND.split(plainly(text))[-1]
    if take_turn(draft, text):
        return "open"
    on = first_days(draft)[0] if leaves_choice(said) else first_day_of(said, draft.today)
    on = on or read(request_for(draft, f"move it to {said}")).on
    meant = () if on is not None or any(sign in said for sign in "?/x") else days_meant(said, draft.local)
    if meant and max(meant) < draft.today:
        draft.notice("day is past", on=max(meant).isoformat())
        return "open"
    if on is None or on < draft.today or on - draft.today > LATEST_START:
        return "unread"
    draft.change(SettingsKept(replace(draft.client, starts=on)))
    return "settled"


def first_days(draft: Draft) -> tuple[date, ...]:
    """Return the likeliest first days."""
    stored = draft.client.programme
    begin = draft.today if draft.local.time() < EVENING else draft.today + timedelta(days=1)
    days = [begin + timedelta(days=ahead) for ahead in range(3)]
    if stored is not None and isinstance(stored.programme.schedule, FixedDays):
        days = list(following_days(stored.programme.schedule, begin - timedelta(days=1), 3))
    return tuple(days)


def day_label(draft: Draft, day: date) -> str:
    """Return a day within a week as one types it."""
    ahead = (day - draft.today).days
    return {0: "Today", 1: "Tomorrow"}.get(ahead) or f"{day:%A}"


def home_of(draft: Draft) -> tuple[str, ...]:
    """Return the towns of the zones named, else that of the coach's."""
    zones = joining_of(draft).zones or (draft.client.coach.zone,)
    return tuple(city for zone in zones if (city := city_of(zone)))


def first_workout(draft: Draft) -> dict[str, Any]:
    """Return the name of the workout that comes first."""
    coming = in_turn(draft.state, draft.today)
    return {"workout": coming.workout if coming else None}


ALL_BUT = Expression(
    r"(?:i have |i've got |we have )?(?:all|everything|it all)(?: of it| there is)? "
    r"(?:but|except|apart from|besides|bar|other than)(?: for)?(?: no)? (?:an? |the )?"
)
PARTS = Expression(r"[,;.!\n]+(?: ?(?:and|but|well|though|only))? |\s(?:but|though)\s")
"""What parts one thing that is said of the equipment from the next."""

CHANGED_MIND = Expression(r"\b(?:no,? wait|wait|actually|i mean|sorry|make that)\b[, ]*")
"""What comes after these takes the place of what came before."""

AFTER_THANKS = Expression(r",? (?:thanks|thank you|please)$")
NO_REMINDERS = frozenset(
    {"no reminders", "no reminder", "none", "never", "don't remind me", "do not remind me", "no thanks"}
    | {"i don't need reminders", "i don't want reminders", "no need", "not at all", "without"}
)
ALL_AT_HAND = Expression(
    r"(?=.*\b(?:gym|gyms|most|bit of|fitness cent(?:re|er)|leisure cent(?:re|er)|all|everything|lot|usual|"
    r"stuff|yes|whatever)\b)"
    r"(?!.*\b(?:home|hotel|garage)\b|(?:is|are|should|have|has|do|does|can) .*\?)"
    r"(?:(?:yes|i|we|it|they|there|my|our|the|a|an|has|have|'ve|i've|we've|got|go|train|to|in|at|is|are|"
    r"be|should|"
    r"full|fully|usual|normal|commercial|big|large|good|proper|regular|standard|local|well|equipped|"
    r"equipment|"
    r"ordinary|gym|gyms|chain|fitness|leisure|cent(?:re|er)|membership|member of|i think|i believe|"
    r"i guess|i suppose|all|of|everything|you|"
    r"you'd|need|"
    r"expect|whatever|lot|stuff|things|most|bit|machines|weights|nothing special|just|that's needed|with|"
    r"pretty much|and|"
    r"access)[ ,.?]*)+"
)
"""That all is there, in whatever words; a home or a hotel seldom has all."""
MOST_CHOICES = 4

STEPS: tuple[Step, ...] = (
    Step(
        "consent",
        take_consent,
        choices=lambda draft: ("Yes, I agree",) if joining_of(draft).refused else ("Yes, I agree", "No"),
        facts=lambda draft: {
            "name": draft.client.name,
            "coach": draft.client.coach.name,
            "programme": draft.client.programme.programme.name if draft.client.programme else None,
            "refused": joining_of(draft).refused,
        },
    ),
    Step("age", take_age, choices=lambda _: ("18 or older", "Under 18")),
    Step(
        "guardian",
        take_guardian,
        choices=lambda _: ("Not yet",),
        is_asked=lambda draft: joining_of(draft).is_minor,
    ),
    Step("readiness", take_readiness, choices=lambda _: ("None of these", "1", "2", "3", "4")),
    Step("unit", take_unit, choices=lambda _: ("kg", "lb"), setting="unit kept"),
    Step(
        "zone",
        take_zone,
        choices=home_of,
        facts=lambda draft: {"several": bool(joining_of(draft).zones)},
        setting="zone kept",
    ),
    Step(
        "hour",
        take_hour,
        choices=lambda _: ("7:00", "12:00", "17:00", "No reminders"),
        setting="hour kept",
        no_goes_back=True,
    ),
    Step(
        "equipment",
        take_equipment,
        choices=lambda draft: (
            "A full gym",
            *(f"No {each}" for each in without_of(draft.client)[:MOST_CHOICES]),
            "Skip",
        ),
        facts=lambda draft: {"without": list(without_of(draft.client))},
        setting="equipment kept",
    ),
    Step(
        "first day",
        take_first_day,
        choices=lambda draft: tuple(day_label(draft, day) for day in first_days(draft)),
        facts=first_workout,
        is_asked=lambda draft: draft.client.programme is not None and draft.memory.clearance is None,
        setting="moved",
    ),
)
"""All questions, in order: with one for a minor alone, eight for everybody else."""
