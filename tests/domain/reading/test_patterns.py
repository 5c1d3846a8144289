"""The small language for turns of phrase."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.reading.message import message_of
from domain.reading.patterns import Found, Pattern
from domain.reading.words import words_of

CASES = [
    ("went? up by?", "I went up by 5", ["went up by"]),
    ("went? up by?", "up!", ["up"]),
    ("up|down", "up and down", ["up", "down"]),
    ("went up\nadded [it|the weight]* n:#", "added it the weight it 5", ["added it the weight it 5"]),
    ("added [it|the weight]* n:#", "added it it it it it 5", []),
    ("(a|the) knee", "the knee a knee", ["the knee", "a knee"]),
    ("my {part}", "my knee, my hip, my dog", ["my knee", "my hip"]),
    ("my swell~", "my swelling", ["my swelling"]),
    ("is ~ing", "it is hurting", ["is hurting"]),
    ("no _ pain", "no big pain no pain", ["no big pain"]),
    ("pain ..2 knee", "pain in my knee; pain all over my knee", ["pain in my knee"]),
    ("pain ..2 knee", "pain 3 knee", []),
    ("pain ...2 knee", "pain 3, knee. pain. knee", ["pain 3 , knee"]),
    ("pain ....2 knee", "pain. my knee", ["pain . my knee"]),
    ("pain ....2 knee", "pain\nmy knee", []),
    ("ok '?'", "ok? ok", ["ok ?"]),
    ("to the gym", "to gym, to the gym, to my gym", ["to gym", "to the gym"]),
    ("to (my|the) gym", "to gym, to my gym", ["to gym", "to my gym"]),
    ("in 'the' neck", "in neck, in the neck", ["in the neck"]),
    ("in (my|'the') neck", "in neck, in the neck", ["in the neck"]),
    ("the #", "8, the 8", ["the 8"]),
    ("in the", "in, in the", ["in the"]),
    ("left >(on|in) ", "left on, left off", ["left"]),
    ("left !(on|in)", "left on, left off", ["left"]),
    ("<(my) back", "my back, get back", ["back"]),
    ("<!(my|,) back", "my back, back, get back", ["back"]),
    ("^ go", "go go", ["go"]),
    ("^ go", "ok go, go. go now", ["go", "go"]),
    ("ok $", "ok ok", ["ok"]),
    ("ok $", "ok, ok. thanks", ["ok"]),
    ("ok $", "ok. felt good today", ["ok"]),
    ("ok $", "ok. felt good at 9", []),
    ("ok $", "ok then", []),
    ("# x #", "80x8, 85 x 5", ["80 x 8", "85 x 5"]),
    ("up", "cup upper", []),
]  # fmt: skip


def said(pattern: Pattern, text: str) -> list[str]:
    message = message_of(text)
    return [" ".join(message.texts(f.start, f.end)) for f in pattern.find(message)]


@pytest.mark.parametrize(("pattern", "text", "expected"), CASES)
def test_a_pattern_finds_what_it_says(pattern: str, text: str, expected: list[str]) -> None:
    assert said(Pattern(pattern, part=words_of("knee hip")), text) == expected


def test_the_parts_of_a_phrase_keep_their_names_whichever_way_it_is_said() -> None:
    pattern = Pattern("n:# u:(kg|lb) more\nup n:# [u:(kg|lb)]")
    message = message_of("5 kg more, up 10")
    assert list(pattern.find(message)) == [
        Found(0, 3, {"n": (0, 1), "u": (1, 2)}),
        Found(4, 6, {"n": (5, 6)}),
    ]


def test_a_pattern_can_be_made_of_others() -> None:
    some = "n:# {unit}\nsome"
    pattern = Pattern("add {some}|take {some} off", some=some, unit=words_of("kg lb"))
    message = message_of("take 5 kg off, add some")
    assert list(pattern.find(message)) == [Found(0, 4, {"n": (1, 2)}), Found(5, 7, {})]


def test_a_pattern_can_be_looked_for_in_a_stretch_only() -> None:
    up, at_the_end = Pattern("up"), Pattern("up $")
    message = message_of("up and up and up")
    assert [f.start for f in up.find(message, 1, 4)] == [2]
    assert up.at(message, 0)
    assert not up.at(message, 1)
    assert not up.at(message, 5)
    assert at_the_end.at(message, 0, 1)


@pytest.mark.parametrize(
    "text", ["", "up?", "(up", "up)", "[up", "up |", "n:", "{nobody}", "<(my own) back", "(up]", "{up"]
)
def test_what_is_no_pattern_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        Pattern(text)


_UP = Pattern("up [it|the weight]* by? n:#\n[it]* more\nby !(#) ..2 up")


@given(st.lists(st.sampled_from(["up", "it", "the", "weight", "by", "5", ",", "more"]), max_size=30))
def test_looking_from_the_first_words_finds_what_looking_everywhere_does(words: list[str]) -> None:
    message = message_of(" ".join(words))
    found = [(f.start, f.end) for f in _UP.find(message)]
    everywhere: list[tuple[int, int]] = []
    at = 0
    while at < len(message.tokens):
        one = _UP.at(message, at)
        if one is not None:
            everywhere.append((one.start, one.end))
        at = one.end if one is not None else at + 1
    assert found == everywhere


def test_a_pattern_that_needs_no_word_is_looked_for_in_every_message() -> None:
    pattern = Pattern("_ more\n~ing ..2 swell~")
    assert pattern.needs is None
    assert said(pattern, "some more, icing and swelling") == ["some more", "icing and swelling"]
    assert said(pattern, "up") == []


@given(st.lists(st.sampled_from(["up", "by", "it", "the", "5", "more", "down", "less"]), max_size=12))
def test_the_first_way_that_fits_is_taken_whichever_words_are_said_beside_it(words: list[str]) -> None:
    message = message_of(" ".join(words))
    found = [(f.start, f.end) for f in _IN_WAYS.find(message)]
    alone = [(f.start, f.end) for f in _IN_ONE_WAY.find(message)]
    assert found == alone


_IN_WAYS = Pattern("up by #\nup\nby # more|by #\ndown [the|it]* less\nthe\ndown")
_IN_ONE_WAY = Pattern("(up by #|up|by # more|by #|down [the|it]* less|the|down)")
