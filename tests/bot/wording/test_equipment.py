"""Equipment that was told of is said back as it was understood."""

import pytest

from bot.markup import plain
from bot.wording.equipment import equipment_words
from bot.wording.reader import Reader
from domain.equipment import Equipment, default_equipment
from domain.equipment_words import told


@pytest.mark.parametrize(
    ("said", "back"),
    [
        ("my bar is 15", "Noted: a bar of 15 kg."),
        (
            "I have two 20s, four 10s and two 5s",
            "Noted: plates of 20 (1 pair), 10 (2 pairs) and 5 (1 pair) kg.",
        ),
        ("no 20s", "Noted: plates of 25, 15, 10, 5, 2.5 and 1.25 kg."),
        ("dumbbells from 4 to 30 in 2s", "Noted: dumbbells from 4 to 30 in steps of 2 kg."),
        ("my dumbbells are 5, 10 and 20", "Noted: dumbbells of 5, 10 and 20 kg."),
        (
            "the stack jumps 7 kg with a 2.5 kg magnet",
            "Noted: the stack from 7 up in steps of 7 kg, with 2.5 to add.",
        ),
        ("my bands are 5, 8 and 12", "Noted: bands of 5, 8 and 12 kg."),
        ("my bar is 10. no 20s", "Noted: a bar of 10 kg; plates of 25, 15, 10, 5, 2.5 and 1.25 kg."),
    ],
)
def test_what_was_understood_is_said_back(said: str, back: str) -> None:
    before = default_equipment("kg")
    after = told(said, before)
    assert after is not None
    changed = [of for of in Equipment.model_fields if getattr(after, of) != getattr(before, of)]
    facts = {"equipment": after.model_dump(mode="json"), "changed": changed, "instead": []}
    words = plain(equipment_words(facts, Reader("Noor", "Europe/Amsterdam", "kg"))).replace("\u00a0", " ")
    assert words == f"{back} What I give you to aim for can be loaded with that."


def test_what_is_missing_is_said_back() -> None:
    facts = {
        "equipment": {"unit": "kg", "lacking": ["barbell", "bench"]},
        "changed": ["lacking"],
        "instead": [],
    }
    words = equipment_words(facts, Reader("Noor", "Europe/Amsterdam", "kg"))
    assert words.endswith(" You have no barbell or bench.")


def test_what_is_known_already_is_said_to_be() -> None:
    facts = {"equipment": default_equipment("kg").model_dump(mode="json"), "changed": [], "instead": []}
    assert equipment_words(facts, Reader("Noor", "Europe/Amsterdam", "kg")) == "That is as I have it already."


def test_what_it_changes_in_the_workouts_is_said() -> None:
    facts = {
        "equipment": {"unit": "kg", "lacking": ["dumbbells"]},
        "changed": ["lacking"],
        "instead": [["Hammer curl", "Cable curl"]],
        "had": ["bench"],
        "back": ["Bench press"],
    }
    words = equipment_words(facts, Reader("Noor", "Europe/Amsterdam", "kg"))
    assert words == (
        "Noted. You have bench again. You have no dumbbells. Cable curl takes the place of Hammer curl. "
        "Bench press is back in your workouts."
    )
