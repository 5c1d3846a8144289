"""Turns of phrase that are a whole message are known from the first message after a start on."""

import subprocess
import sys

FIRST = """
from domain.how_to import how_to_asked
from domain.later_words import later_of
from domain.looked_up_words import look_ups

for asks, said in (
    (later_of, "not now"),
    (look_ups, "how many workouts?"),
    (how_to_asked, "how do I write bodyweight?"),
):
    print(bool(asks(said)), bool(asks(said)))
"""


def test_the_first_message_after_a_start_is_known_as_the_second_is() -> None:
    found = subprocess.run([sys.executable, "-c", FIRST], capture_output=True, text=True, check=True)
    assert found.stdout.split() == ["True"] * 6
