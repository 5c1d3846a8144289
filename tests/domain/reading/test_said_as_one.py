"""What can be said in several ways is read alike in each of them."""

import pytest

from domain.reading import read
from tests.domain.reading.build import one, reading, request, short

ALIKE = (
    ("I didn't do the dips", "I did not do the dips"),
    ("can't make it today", "cannot make it tonight"),
    ("can't make it today", "can not make it this evening"),
    ("I won't be there today", "I will not be there this afternoon"),
    ("knee doesn't hurt any more", "knee does not hurt any more"),
    ("my left arm won't move", "my left arm will not move"),
    ("I couldn't finish the dips", "I could not finish the dips"),
    ("not today, tomorrow", "not this morning, tomorrow"),
    ("bench 80x8 today", "bench 80x8 tonight"),
    ("what's today's workout?", "what's tonight's workout?"),
    ("not going to the gym today", "ain't going to the gym today"),
    ("bench 82.5 for 8", "bench 82 point 5 for 8"),
    ("bench 82.5 for 8", "bench 82 point five for 8"),
    ("bench 80x8 each side", "bench 80x8 each way"),
    ("could you take back the last one?", "could you take back last one?"),
    ("never made it to the gym yesterday", "never made it to gym yesterday"),
    ("on holiday from the 20th to the 27th", "on holiday from 20th to the 27th"),
    ("a loud pop in my shoulder and now I can't raise it", "loud pop in shoulder and now I can't raise it"),
    ("achilles on the left side is sore", "achilles on left side is sore"),
    ("my knee is killing me", "my knee's killing me"),
    ("urine has been dark like cola", "urine's been dark like cola"),
    ("today is a no from me", "tonight's a no from me"),
    ("bench 80: 8, 7", "bench 80: 8 in the first set, 7 in the second"),
    ("bench 80, 2 sets of 8", "bench 80, two lots of 8"),
    ("what's on today", "bro what's on today"),
    ("bench 80x8 and then 7", "bench 80x8 and after 7"),
    ("bench 80x8, then 7", "bench 80x8, after that 7"),
    ("bench 80 kg, I did 8", "bench 80 kg, I have done 8"),
    ("bench 80 x 8", "bench 80 into 8"),
    ("move today's workout to sunday", "mv 2day's wkout to sun"),
    ("can't today, doing it on saturday", "can't today, doing it sat"),
    ("skip dips", "skp dips"),
    ("shoulder hurts", "shldr hurts"),
    ("incline press 26x10", "incline prs 26x10"),
    ("benching 80 for 8", "benchin 80 for 8"),
    ("dips should be 9, not 8", "dips shd be 9, nt 8"),
    ("what would you do if the knee hurts", "wot wud u do if da knee hurts"),
    ("bench yesterday was 80x8", "bench ystdy wz 80x8"),
    ("leave them out today, the dips", "leave em out 2day, the dips"),
    ("can someone check my form", "can sum1 check my form"),
    ("can I swap the dips for push-ups?", "pls can I swap the dips for push-ups?"),
    ("my knee hurts", "my knee honestly hurts"),
    ("I couldn't move 90 on the bench", "I literally couldn't move 90 on the bench"),
    ("I have forgotten what comes now", "I really have forgotten what comes now"),
    ("that hurts", "that just hurts"),
    ("bench 80x8, then 85 got 6", "bench 80x8, then 85 and got 6"),
    ("squats without pain, 80x8", "pain free squats, 80x8"),
    ("plank, 32 seconds", "plank, 32 glorious seconds"),
    ("bench 80 x 8, 8, 7", "bench 80 x 8, 8, 7 bye"),
    ("bench 80 x 8, 8, 7", "bench 80 x 8, 8, 7 shower time"),
    ("bench 80x8", "bench 80x8 kg"),
    ("incline 26 in each hand for 10", "incline 26 in each fist for 10"),
    ("incline 26x10: right arm 10, left arm 9", "incline 26x10: R arm 10, L arm 9"),
    ("bench 80: 8, 7, 6, last one to failure", "bench 80: 8, 7, 6, last 1 to failure"),
    ("move today's workout to Saturday", "todays workout → saturday"),
    ("my hand tingles and my arm is weak", "my hand tingles and my arm has no strength"),
    ("my hand tingles and my arm is weak", "my hand tingles and my arm is without any force"),
    ("bench 80 kg, got 8 reps", "bench 80 kg, squeezed out an eighth rep"),
    ("dips, bodyweight, 8 today", "dips without extra weight today: 8"),
    ("can you show me what I did on the bench last week?", "list what I did on the bench last week"),
    ("how do I log drop sets?", "someone explain how I log drop sets"),
    ("bench 80 for 8. second set 60 for 9", "bench eighty for eight full stop second one sixty for nine"),
    ("bench 80x8, legs are cooked", "bench 80x8, legs r cooked"),
    ("skip dips", "skip dips, ok?"),
    ("show me my bench history", "show bench history"),
    ("bench 80x8", "I weigh 61 kg now, two less than at Christmas! bench 80x8"),
    ("bench 80x8, the rest on Saturday", "got one done before work: bench 80x8. the other three on Saturday"),
    ("push-ups 12", "push-ups 12!! never did 12 before"),
    ("bench 80x8", "bench 80x8, plus an ugly one that doesnt count"),
    ("bench 80x8, dips +10x6", "bench 80x8, all on target except dips, only got 6"),
    ("my knee hurts", "not sure if this matters but my knee hurts"),
    ("left shoulder: no pain", "left shoulder: none of the old pain"),
    ("chin-ups, bodyweight, 8", "my dip belt snapped, chin-ups with body weight, 8"),
    ("bench 80x8 with 1 in reserve", "bench 80x8, one more was still possible"),
    ("any tips for the bench?", "how do i stop my elbows flaring on bench? any tips"),
    ("bench 80 for 7", "bench one set with 80, got 7"),
    ("bench 80x8", "bench 80x8 and a half, so 8"),
    ("bench 80x8", "bench 80x8, the fella spotting said 9. it was 8"),
)


@pytest.mark.parametrize(("said", "otherwise"), ALIKE)
def test_two_ways_to_say_it_are_read_alike(said: str, otherwise: str) -> None:
    first, second = read(request(said)), read(request(otherwise))
    assert (second.sets, second.pain, second.urgent, second.wants, second.on, second.asks, second.skips) == (
        first.sets,
        first.pain,
        first.urgent,
        first.wants,
        first.on,
        first.asks,
        first.skips,
    )


@pytest.mark.parametrize(
    "text",
    [
        "it was not 80 but 82.5",
        "it wasn't 80 but 82.5",
        "wasn't 80, it was 82.5",
        "the bench was not 80 but 82.5",
    ],
)
def test_what_a_record_was_not_is_put_right(text: str) -> None:
    found = reading(text, done=(one("Bench press", "80", 8),))
    assert ([short(s) for s in found.sets], found.wants) == (
        [short(one("Bench press", "82.5", 8))],
        ("correct",),
    )


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("bench 80x8, elbows feel like broken glass, they hurt 6/10", "elbow"),
        ("my knees, they hurt", "knee"),
        ("my wrists are creaky, they really ache", "wrist"),
        ("knees feel like they are full of glass", "knee"),
    ],
)
def test_they_are_the_part_named_before(text: str, where: str) -> None:
    assert [(pain.where, pain.side) for pain in reading(text).pain] == [(where, "both")]


@pytest.mark.parametrize(
    "text", ["my parents came, they hurt nobody", "squats, they burn the candle at both ends"]
)
def test_they_can_be_somebody_else(text: str) -> None:
    assert reading(text).pain == ()


@pytest.mark.parametrize(
    ("text", "wants"),
    [
        ("what is the small f beside my set?", ("help",)),
        ("how do I switch to pounds here?", ("help",)),
        ("the bar's away for repair, so no bench", ("skip_exercise",)),
        ("bench is out of order, so leave that one off today", ("skip_exercise",)),
        ("can't train today, plumber is coming. bench yesterday was 80x8", ("skip_workout",)),
        ("at my sister's for two weeks, no exercise", ("pause",)),
        ("is clicking bad?", ("ask_coach",)),
        ("my left ankle is swollen, no idea why", ()),
    ],
)
def test_what_is_wanted(text: str, wants: tuple[str, ...]) -> None:
    assert reading(text).wants == wants


@pytest.mark.parametrize(
    "text",
    [
        "Wife wants me home by 4, so only the bench: 80x8",
        "bench 80x8. The warm-up was 40 for 12 but I suppose that doesn't count.",
        "bench 80x8, and 2:1 for us!!",
        "bench 80x8, the legs they tremble but they obey",
    ],
)
def test_a_set_beside_life(text: str) -> None:
    found = reading(text)
    assert [short(s) for s in found.sets] == [short(one("Bench press", "80", 8))]
    assert (found.wants, found.asks, found.urgent) == ((), (), False)


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("make the bench all 10", [("80", 10), ("80", 10)]),
        ("all of the bench were 82.5 not 80", [("82.5", 8), ("82.5", 7)]),
        ("Correction: bench third set was 90, the reps are right", [("90", 7)]),
    ],
)
def test_all_sets_of_an_exercise_or_only_its_load_are_put_right(
    text: str, sets: list[tuple[str, int]]
) -> None:
    found = reading(text, done=(one("Bench press", "80", 8), one("Bench press", "80", 7)))
    assert [short(s) for s in found.sets] == [short(one("Bench press", load, reps)) for load, reps in sets]
    assert found.wants == ("correct",)


@pytest.mark.parametrize(
    ("text", "exercise"), [("oops 72.5", "Bench press"), ("oops 7", "Dip"), ("oops 72.5 kg", "Bench press")]
)
def test_a_load_out_of_reason_for_the_last_set_is_of_the_one_it_fits(text: str, exercise: str) -> None:
    found = reading(text, done=(one("Bench press", "70", 6), one("Dip", "0", 8, kind="body")))
    assert [s.exercise for s in found.sets] == [exercise]
    assert found.wants == ("correct",)


@pytest.mark.parametrize(("text", "wants"), [("I'm so ill", ("pause",)), ("my hip aches so I'll say 4", ())])
def test_ill_with_an_apostrophe_is_no_illness(text: str, wants: tuple[str, ...]) -> None:
    assert reading(text).wants == wants


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("2 sets: 80x8\n80x7", [("80", 8), ("80", 7)]),
        ("bench 2 sets:\n80x8\n80x7", [("80", 8), ("80", 7)]),
        ("bench 3 sets: 80x8; 80x7; 75x8", [("80", 8), ("80", 7), ("75", 8)]),
        ("warm up:\n40x10\n60x5\nworking sets:\n80x8\n80x7", [("80", 8), ("80", 7)]),
        ("warm up 40x10; 60x5; then 80x8; 80x7", [("80", 8), ("80", 7)]),
        ("bench 80\nright 8\nleft 7", [("80", 7)]),
    ],
)
def test_lines_and_semicolons_part_sets_as_commas_do(text: str, sets: list[tuple[str, int]]) -> None:
    found = reading(text)
    assert [short(s) for s in found.sets] == [short(one("Bench press", load, reps)) for load, reps in sets]
    assert found.asks == ()


@pytest.mark.parametrize(
    "ending", [" cheers", " mate", ", thanks coach!", " tho", " :)", " if that helps", " ta bro."]
)
@pytest.mark.parametrize(
    ("text", "wants"),
    [("misclicked sorry", ("undo",)), ("today no training", ("skip_workout",)), ("another 80x8", ())],
)
def test_an_ending_changes_nothing(ending: str, text: str, wants: tuple[str, ...]) -> None:
    found = reading(text + ending)
    assert (found.wants, found.sets) == (wants, reading(text).sets)


@pytest.mark.parametrize("text", ["tell my coach", "ask the coach", "bench 80x8 (with my mate)"])
def test_somebody_spoken_of_is_no_ending(text: str) -> None:
    assert reading(text).wants == (() if "bench" in text else ("ask_coach",))


@pytest.mark.parametrize("greeting", ["hey coach, ", "hi ", "yo ", "Hello there! "])
@pytest.mark.parametrize(
    ("text", "wants"),
    [
        ("disregard that", ("undo",)),
        ("help", ("help",)),
        ("what's next?", ("show_plan",)),
        ("bench 80x8", ()),
    ],
)
def test_a_greeting_changes_nothing(greeting: str, text: str, wants: tuple[str, ...]) -> None:
    assert reading(greeting + text).wants == wants == reading(text).wants
