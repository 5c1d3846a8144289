"""Every answer of the joining can be changed later in plain words, and is said back; a reminder can wait."""

import copy
from datetime import time
from functools import cache

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.client.called import name_said
from domain.later_words import Later, later_of
from domain.parts import Notice, Plan, Reminder
from tests.domain.client.people import Life, at, kinds, noor


@cache
def on_a_rest_day() -> Life:
    """Noor on the day after a workout, reminded at eight; nothing is planned today."""
    life = Life(noor(lacking=("bench",)))
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(2))
    return life


SAID_BACK = {
    # name
    "call me Bea": "Bea it is",
    "my name is Bea": "Bea it is",
    "please call me bea from now on": "Bea it is",
    "I'm called Ana Lucía now": "Ana Lucía it is",
    "sorry, my name is Bea, not Noor": "Bea it is",
    "change my name to O'Brien": "O'Brien it is",
    # hour
    "remind me at 7": "Reminders come at 07:00",
    "remind me at 6:30 pm": "Reminders come at 18:30",
    "remind me at half past six in the evening": "Reminders come at 18:30",
    "could you remind me at 7 instead?": "Reminders come at 07:00",
    "can you remind me earlier, say at 7?": "Reminders come at 07:00",
    "change my reminder to 18:30": "Reminders come at 18:30",
    "Could you remind me a little later, perhaps ten o'clock?": "Reminders come at 10:00",
    "please message me at 6am": "Reminders come at 06:00",
    "move my reminder to noon": "Reminders come at 12:00",
    "reminders at 20:15 please": "Reminders come at 20:15",
    "remind me an hour later": "Reminders come at 09:00",
    "can you remind me half an hour earlier?": "Reminders come at 07:30",
    "the reminder 2 hours later please": "Reminders come at 10:00",
    "actually start reminders again please": "Welcome back",
    "I fly to Auckland tomorrow": "Once you are there, say «I'm in Auckland»",
    # unit
    "use pounds": "Plain numbers are lb",
    "I use lbs": "Plain numbers are lb",
    "I'd rather use pounds": "Plain numbers are lb",
    "can we switch to pounds?": "Plain numbers are lb",
    "switch me to lb": "Plain numbers are lb",
    "show me everything in pounds": "Plain numbers are lb",
    "go back to kilos": "Plain numbers are kg",
    "could you use kg from now on": "Plain numbers are kg",
    # place
    "I'm in Lisbon now": "Europe/Lisbon, where it is 09:00",
    "I've moved to Toronto": "America/Toronto, where it is 04:00",
    "I live in Spain": "Europe/Madrid, where it is 10:00",
    "I moved to Sydney": "Australia/Sydney, where it is 20:00",
    "my time zone is UTC+3": "where it is 12:00",
    "it's 17:00 here": "where it is 17:00",
    "I'm flying to Tokyo tomorrow": "«I'm in Tokyo»",
    "I'll be in Lisbon next week": "«I'm in Lisbon»",
    "flying to LA tonight": "«I'm in LA»",
    "heading to Tokyo tomorrow": "«I'm in Tokyo»",
    "I'm back in Amsterdam on the 14th": "Until Saturday 14 March all goes on as it stands",
    "back in Lisbon on Friday": "Have a good trip back. Once you are there, say «I'm in Lisbon»",
    # equipment
    "hotel only has dumbbells": "You have no bench, barbell",
    "I'm back at my usual gym with everything": "You have bench again",
    "we have everything again": "You have bench again",
    "I sold my dumbbells": "You have no bench or dumbbells. Cable curl takes the place of Hammer curl",
    "I have no leg press any more": "no bench or leg press",
    "the gym got rid of the leg press": "no bench or leg press",
    "no more barbell at home": "no bench or barbell",
    "my barbell broke": "no bench or barbell",
    "I lost my bands": "no bench or bands",
    "I no longer have a barbell": "no bench or barbell",
    "there is no leg press in my new gym": "no bench or leg press",
    "I have a bench again": "You have bench again",
    "I bought a bench": "You have bench again",
    "the bench is back": "You have bench again",
    "I got a barbell": "as I have it already",
    "I bought 0.5 kg plates": "1.25 and 0.5 kg",
    "I have new plates: 0.5 and 1": "1.25, 1 and 0.5 kg",
    "new plates 0.5 kg": "1.25 and 0.5 kg",
    "I bought 1.25 kg plates": "as I have it already",
    "I sold my 25s": "plates of 20, 15, 10, 5, 2.5 and 1.25 kg",
    "I no longer have the 1.25 plates": "plates of 25, 20, 15, 10, 5 and 2.5 kg",
    "my bar is 15 kg": "a bar of 15 kg",
    "I have dumbbells up to 24 kg now": "dumbbells from 2 to 24",
    "I changed gyms": "Tell me what differs there",
    # what the body weighs, the first day, an illness
    "I weigh 72": "72 kg",
    "I'm pregnant": "see a doctor before you train",
    "I was diagnosed with angina": "see a doctor before you train",
    # what cannot be had is said, too
    "remind me the evening before": "I write on training days, once",
    "no reminders on weekends": "I write on training days, once",
    "change my unit": "Just say how it is now",
    "I use stones": "I count loads in kg or lb",
    "stop reminding me": "No more reminders",
}


@pytest.mark.parametrize(("text", "back"), SAID_BACK.items())
def test_it_is_changed_and_said_back(text: str, back: str) -> None:
    life = copy.copy(on_a_rest_day())
    parts = life.says(text, at(3, 10))
    client = life.state.client
    said = plain(message_words(parts, Reader(client.name, client.zone, client.unit))).replace("\u00a0", " ")
    assert back in said
    assert life.state.entries == on_a_rest_day().state.entries


def test_the_first_day_can_be_another_as_long_as_nothing_was_trained() -> None:
    life = Life()
    assert kinds(life.says("start on Friday", at(2, 9))) == ["moved"]


def test_a_new_name_is_kept_and_the_coach_hears_of_it() -> None:
    life = copy.copy(on_a_rest_day())
    life.says("call me Bea", at(3, 10))
    assert life.state.client.name == "Bea"
    assert kinds(life.to_coach) == ["client renamed"]
    life.presses("Call me Noor", at(3, 10, 1))
    assert life.state.client.name == "Noor"


@pytest.mark.parametrize(
    "text",
    [
        "call me tomorrow",
        "call me back when you can",
        "call me",
        "call me crazy",
        "my name is wrong",
        "my name is 80x8",
        "can you call me at 7?",
        "I'm called to work",
        "call me a fan of long and winding names",
        "the name is on the list",
    ],
)
def test_what_gives_no_name_is_none(text: str) -> None:
    assert name_said(text) is None


@pytest.mark.parametrize(
    ("before", "said", "hour"),
    [
        (8, "remind me at 7", 7),
        (8, "remind me at 3", 15),
        (18, "remind me at 7", 19),
        (18, "text me 7 am", 7),
        (18, "remind me at 4:45", 4),
    ],
)
def test_a_bare_hour_is_taken_for_one_at_which_people_are_up_and_in_the_half_of_the_day_of_the_one_before(
    before: int, said: str, hour: int
) -> None:
    life = Life(noor(remind_at=time(before)))
    life.says(said, at(3, 10))
    assert life.state.client.remind_at.hour == hour


def test_an_hour_that_can_be_in_the_evening_has_a_button_for_that() -> None:
    life = copy.copy(on_a_rest_day())
    life.says("remind me at 7", at(3, 10))
    life.presses("Remind me at 19:00", at(3, 10, 1))
    assert life.state.client.remind_at == time(19)


AGAIN = {
    "not now, in 30 minutes": "10:30",
    "in half an hour": "10:30",
    "remind me in 2 hours": "12:00",
    "in an hour and a half please": "11:30",
    "busy, remind me again in 45 min": "10:45",
    "give me 20 more minutes": "10:20",
    "snooze for 15 min": "10:15",
    "remind me an hour later": "11:00",
    "remind me again at 6": "18:00",
    "remind me again at 11": "11:00",
    "remind me tonight at 8": "20:00",
    "remind me at 6 pm today": "18:00",
    "not now, at 12:30": "12:30",
    "I'll train at 7 pm": "19:00",
    "going to the gym at half past six": "18:30",
    "at 6 tonight": "18:00",
    "going in an hour": "11:00",
    "tonight": "18:00",
    "maybe after work": "17:00",
}


@pytest.mark.parametrize(("text", "clock"), AGAIN.items())
def test_a_reminder_comes_once_more_today(text: str, clock: str) -> None:
    life = Life()
    life.passes_to(at(2, 10))
    (part,) = life.says(text, at(2, 10))
    assert part.model_dump()["facts"] == {"at": clock}
    assert life.state.client.remind_at == time(8)
    hour, minute = map(int, clock.split(":"))
    before = life.passes_to(at(2, hour, minute - 1) if minute else at(2, hour - 1, 59))
    assert before == []
    reminder, plan = life.passes_to(at(2, hour, minute))
    assert isinstance(reminder, Reminder)
    assert isinstance(plan, Plan)
    # Who has asked for another reminder is not asked again the same evening.
    assert life.passes_to(at(2, 23)) == []


@pytest.mark.parametrize("text", ["row 60x9, rdl 90x7, hammer curl 14x10", "tomorrow instead", "skip today"])
def test_no_reminder_comes_of_what_is_done_moved_or_left_by_then(text: str) -> None:
    life = Life()
    life.passes_to(at(2, 10))
    life.says("in 2 hours", at(2, 10))
    life.says(text, at(2, 11))
    assert life.passes_to(at(2, 23)) == []


def test_an_hour_said_with_why_not_now_is_for_today_alone() -> None:
    life = Life()
    life.passes_to(at(2, 8))
    assert kinds(life.says("running late, remind me at 10", at(2, 8, 30))) == ["again later"]
    assert life.state.client.remind_at == time(8)
    assert kinds(life.passes_to(at(2, 10))) == ["reminder", "plan"]


def test_what_is_left_of_a_workout_is_reminded_of() -> None:
    life = Life()
    life.says("row 60x9", at(2, 10))
    life.says("remind me in an hour", at(2, 10, 5))
    _, plan = life.passes_to(at(2, 11, 5))
    assert isinstance(plan, Plan)
    assert [line.exercise for line in plan.lines] == ["Romanian deadlift", "Hammer curl"]


def test_no_amount_and_too_late_are_asked_about() -> None:
    life = Life()
    life.passes_to(at(2, 10))
    assert kinds(life.says("not now", at(2, 10))) == ["when later"]
    assert kinds(life.presses("In an hour", at(2, 10, 1))) == ["again later"]
    assert kinds(life.says("in 3 hours", at(2, 22))) == ["too late today"]
    assert kinds(life.says("remind me again at 9 am", at(2, 22))) == ["too late today"]
    assert kinds(life.presses("Tomorrow instead", at(2, 22, 1))) == ["moved"]


def test_an_hour_later_for_once_can_become_for_good() -> None:
    life = Life()
    life.passes_to(at(2, 8))
    assert kinds(life.says("remind me an hour later", at(2, 8, 30))) == ["again later"]
    life.presses("Reminders always at 09:00", at(2, 8, 31))
    assert life.state.client.remind_at == time(9)
    assert kinds(life.passes_to(at(2, 9, 30))) == ["reminder", "plan"]


def test_without_training_there_is_nothing_to_be_reminded_of() -> None:
    life = copy.copy(on_a_rest_day())
    assert kinds(life.says("remind me in 2 hours", at(3, 10))) == ["rest day"]
    barred = Life()
    barred.says("I had chest pain and nearly fainted", at(2, 10))
    assert kinds(barred.says("remind me in an hour", at(2, 10, 1))) == ["barred"]


@pytest.mark.parametrize(
    ("text", "later"),
    [
        ("snooze", Later("some time")),
        ("remind me later", Later("some time")),
        ("in 2 hours and a half", Later("in", 150)),
        ("make it 30 minutes later", Later("later", 30)),
        ("in 30", None),
        ("in 10 reps", None),
        ("60 x 8 in an hour", None),
        ("remind me in 2 days", None),
        ("remind me at 7", None),
        ("later", None),
        ("I did it an hour later", None),
        ("remind me again at 25:00", None),
        ("6 today", None),
        ("got 6 today", None),
        ("I train at 80", None),
    ],
)
def test_later_is_told_from_all_else(text: str, later: Later | None) -> None:
    assert later_of(text) == later


@pytest.mark.parametrize("text", ["it's 9:45 here", "it is quarter to ten here", "I live in Nowhereton"])
def test_where_nobody_can_be_the_local_time_is_said_back(text: str) -> None:
    life = Life()
    (notice,) = life.says(text, at(3, 9, 20))
    assert isinstance(notice, Notice)
    assert (notice.topic, notice.facts["zone"]) == ("place unclear", "Europe/Amsterdam")
    assert notice.facts["local"] == "09:20"
    assert life.state.client.zone == "Europe/Amsterdam"
