"""Plain questions about the own journal, settings and data, and what only looks like one."""

import pytest

from domain.asked_words import Asked, asked_in
from domain.glossary import glossary, term_asked

QUESTIONS: dict[Asked, str] = {
    "seen": "who sees this?|Who can see my messages?|who reads what I write here|is this private?|"
    "does my coach see this?|can other people see my data?|is my data safe?|do you share my data?",
    "stored": "what do you store?|what do you store about me?|what happens to my data?|"
    "what do you know about me?|"
    "what data do you have about me?|what is stored?|what data do you keep?",
    "equipment": "what equipment do I have?|which plates do I have?|my equipment|"
    "what do I have to train with?",
    "settings": "what are my settings?|settings|when do you remind me?|what unit do I use?|who is my coach?|"
    "where am I?|what time zone am I in?|which programme am I on?|what's my time zone?",
    "last workout": "last time|what did I do last time?|my last workout|when did I last train?|"
    "what was my last session",
    "stronger": "am I getting stronger?|have I got stronger|am I making progress?|is this working?|"
    "am I any stronger yet?|have I been getting stronger?|do you think I'm getting stronger?",
    "stones": "I use stones|in stone|use grams",
    "hour": "can you remind me an hour later?|remind me earlier|the reminders come too early",
    "coach": "speak to my coach|can I talk to a human?|I want to talk to my coach|how do I reach my coach?",
    "lost": "what?|huh?|I don't understand|I'm confused",
    "dismiss": "forget it|never mind|nvm|don't bother|no, never mind|hmm no, leave it",
}
BESTS = {
    "best ever": "",
    "what's my best row?": "row",
    "my best ever on the seated cable row?": "seated cable row",
    "pb": "",
    "what's my pb on bench?": "bench",
    "my best squat ever": "squat",
    "what is the most I have ever lifted on rows?": "rows",
}
NONE = (
    "what's next?|history of rows|how many plates do I need for 80?|how many reps?|how many|last set|thanks|"
    "what did I squat last time?|what do you have for me today?|80x8|why?|stop|what's the plan?|"
    "forget that set|"
    "who are you?|how many times a week should I train?|I use kg|what can I do?"
)


@pytest.mark.parametrize(
    ("text", "asked"), [(text, asked) for asked, texts in QUESTIONS.items() for text in texts.split("|")]
)
def test_a_question_is_told(text: str, asked: Asked) -> None:
    assert asked_in(text) == (asked, "")


@pytest.mark.parametrize(("text", "of"), BESTS.items())
def test_the_best_is_asked_of_an_exercise_or_of_all(text: str, of: str) -> None:
    assert asked_in(text) == ("best", of)


@pytest.mark.parametrize("text", NONE.split("|"))
def test_what_is_no_such_question_is_none(text: str) -> None:
    assert asked_in(text) is None


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("what is a superset?", "superset"),
        ("What's a super set", "superset"),
        ("what does to failure mean?", "failure"),
        ("what does RIR mean", "reps in reserve"),
        ("define AMRAP", "AMRAP"),
        ("what is meant by deload?", "deload"),
        ("what are lowering-only reps?", "lowering-only rep"),
        ("explain «hold» please", "static hold"),
        ("I don't know what a pb is", "personal best"),
        ("what is a rep range", "rep range"),
    ],
)
def test_a_word_of_the_trade_is_explained(text: str, name: str) -> None:
    term = term_asked(text)
    assert term is not None
    assert term.name == name


@pytest.mark.parametrize(
    "text",
    ["what is my target?", "what's the load", "what's my weight?", "what is a hammer curl?", "what is 80x8"],
)
def test_what_asks_for_something_of_one_s_own_is_no_word(text: str) -> None:
    assert term_asked(text) is None


def test_each_term_says_something_short_in_plain_words() -> None:
    assert len({term.name for term in glossary().values()}) > 30
    for term in glossary().values():
        assert 20 < len(term.says) < 240
        assert term.says[0].isupper() or term.says[0] == "«"
        assert term.says.endswith(".")
