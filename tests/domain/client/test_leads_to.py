"""Every kind of answer has its buttons, each of them once, and each leads on to another answer."""

import copy
from typing import Any, get_args

from bot.wording.client_notices import CLIENT_WORDS
from bot.wording.looked_up import LOOKED_UP_WORDS
from domain.actions import Words
from domain.client.draft import Draft
from domain.client.leads_to import LEADS_TO
from domain.client.likely import MOST_BUTTONS, offer_likely
from domain.incoming import Pressed
from domain.parts import Notice, Part
from domain.state import ClientState
from domain.topics import Topic
from tests.domain.client.people import Life, at, kinds
from tests.domain.client.test_likely import trained

BUTTONS = """\
already here: What's next?, Last time, My settings
all recorded stands: Take back the last set
back: What's next?
beaten: What's next?
best: Picture of Row
comes later: What's next?
counts as: What's next?
days ahead: What's next?
days told: What's next?
done last: Picture of Row
equipment kept: What's next?
help: What's next?, Last time, My settings
history: Picture of Row
hold lifted: What's next?
joined: What's next?
last workout: What's next?
left out: Undo, What's next?
let train: What's next?
lighter: What's next?
missed noted: What's next?
moved: Undo
moved away: Undo
new programme: What's next?
next day: What's next?
no file wanted: Help
no pause: What's next?
no set found: Help
no such unit: I use kg, I use pounds
not in it: What's next?
nothing recorded: Help
nothing to read: Help
other script: Help
out of turn: Undo
paused: Undo
plans as before: What's next?
put back: Undo, What's next?
reminders off: Start reminders
reminders on: What's next?
rest as before: What's next?
rest day: What's next?
rest more: What's next?
rest of it moved: Undo
strength so far: Picture of progress
swapped: What's next?
taken back: What's next?
told before: What's next?
too late today: Tomorrow instead
trains on there: What's next?
turn taken: Undo, What's next?
warm-up noted: What's next?
welcome: What's next?
what this is: Send me my data
when later: In an hour, In 3 hours, Tomorrow instead
which stop: Stop reminders, Leave
words only: Help
workout done: What's next?
workouts counted: Picture of progress
"""
"""What stands under each notice to a client who trains, where something does."""

BUTTONS_WHILE_AWAY = """\
no workout planned: I'm back
nothing to leave out: I'm back
nothing to move: I'm back
pause stands: I'm back
reminders rest: I'm back
still ill: I'm back
"""
"""What stands under notices to a client who is away."""

WITHOUT_BUTTONS = """\
again later, all stays, barred, body mass kept, body mass later, body mass not asked, body mass taken
back, body mass unlikely, button is not yours, button is old, coach is reached, coach said, cues, cut,
day is past, doctor first, early, equipment known, erased, erased before, ever,
feels dizzy, feels odd, fine again, from coach,
get well, guardian noted, heard, hour from coach, hour kept, how to, invitation is over, joining edit,
keep on, lately noted, later with that, left, left for now, may begin, minor after all, missed counted,
more than asked, name kept, no cues, no cues at all, no history, no such hour, no trouble, nothing to
draw, not put back, nothing to put right, nothing to take back, of that day,
out of reason, passed on, place unclear, pause over, plates, put off
often, question dropped, question withdrawn, read again, reminders unwanted, review, say it again,
settings, stall, still aside, still there, stranger, term, thanked, training later, trained after all,
trouble noted, unit kept, waits for doctor, warm-up, went wrong, which hour, which sets then, which town,
why, written down, your new coach, zone kept, zone later
"""
"""What asks for words of the client's own, ends something, or has buttons by what is asked beside it."""

NO_ANSWER = frozenset({"button is old", "button is not yours", "no set found", "nothing recorded", "heard"})


def table(text: str) -> dict[str, list[str]]:
    """Return the buttons of each notice."""
    rows = (line.split(": ") for line in text.splitlines())
    return {topic: buttons.split(", ") for topic, buttons in rows}


def under(state: ClientState, *topics: Topic, exercises: tuple[str, ...] = ("Row",)) -> list[Words]:
    """Return the buttons under notices that are said to that client, on a day for training."""
    draft = Draft(state, at(8))
    for topic in topics:
        for name in exercises:
            facts: dict[str, Any] = {"exercise": name, "rows": [{"exercise": name}], "about": ["stored"]}
            draft.say(Notice(topic=topic, facts=facts))
    offer_likely(draft)
    buttons = draft.outcome(None).says[0].buttons
    return [button for button in buttons if isinstance(button, Words)]


def away() -> Life:
    """Noor, after one round, away until further notice."""
    life = copy.copy(trained())
    life.says("I'm away for a while", at(6))
    return life


def press(life: Life, button: Words) -> tuple[Part, ...]:
    """Return what a press of that button leads to."""
    return copy.copy(life).hears(Pressed(button="1:0", action=button), at(8, 18, 1))


def test_every_notice_to_a_client_has_the_buttons_that_are_meant() -> None:
    here, gone = table(BUTTONS), table(BUTTONS_WHILE_AWAY)
    without = WITHOUT_BUTTONS.replace("\n", " ").strip().split(", ")
    topics = {*CLIENT_WORDS, *LOOKED_UP_WORDS}
    assert sorted([*here, *gone, *without]) == sorted(topics)
    assert set(LEADS_TO) <= topics <= set(get_args(Topic))
    trains, is_away = trained().state, away().state
    said = {topic: [each.text for each in under(trains, topic)] for topic in topics}
    assert {topic: buttons for topic, buttons in said.items() if buttons} == here
    assert {
        topic: [each.text for each in under(is_away, topic)] for topic in LEADS_TO if topic in gone
    } == gone


def test_every_button_leads_on_to_an_answer_and_stands_there_once() -> None:
    for life in (copy.copy(trained()), away()):
        found = {topic: under(life.state, topic) for topic in LEADS_TO}
        assert all(len(set(each)) == len(each) <= MOST_BUTTONS for each in found.values())
        for button in {button for each in found.values() for button in each}:
            answer = kinds(press(life, button))
            assert answer, button.text
            assert not NO_ANSWER & set(answer), (button.text, answer)


def test_what_is_next_is_not_offered_where_nothing_is_or_it_is_said_already() -> None:
    assert "What's next?" not in [each.text for each in under(away().state, "back")]
    life = away()
    assert kinds(life.says("I'm back", at(8, 19))) == ["back", "plan"]
    assert "What's next?" not in [getattr(each, "text", "") for each in life.outcome.says[0].buttons]


def test_there_are_four_buttons_at_most_under_an_answer_of_several_parts() -> None:
    state = trained().state
    assert len(under(state, "history", exercises=("Row", "Curl", "Dip", "Squat", "Lunge"))) == MOST_BUTTONS
    both = under(state, "moved", "workout done", "taken back")
    assert [each.text for each in both] == ["Undo", "What's next?"]
