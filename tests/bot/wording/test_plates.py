"""How an answer about plates reads."""

from typing import Any

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import Notice

READER = Reader("Noor", "Europe/Amsterdam", "kg")


def said(load: str, unit: str, *loads: tuple[str, list[str]]) -> str:
    facts: dict[str, Any] = {
        "load": load,
        "unit": unit,
        "bar": "20",
        "bar_unit": "kg",
        "loads": [{"load": each, "plates": plates} for each, plates in loads],
    }
    return plain(message_words((Notice(topic="plates", facts=facts),), READER)).replace("\u00a0", " ").strip()


@pytest.mark.parametrize(
    ("answer", "words"),
    [
        (
            said("92.5", "kg", ("92.5", ["25", "10", "1.25"])),
            "92.5 kg: each side 25 + 10 + 1.25, on a 20 kg bar.",
        ),
        (said("20", "kg", ("20", [])), "20 kg: empty bar."),
        (
            said("91", "kg", ("90", ["25", "10"]), ("92.5", ["25", "10", "1.25"])),
            (
                "91 kg cannot be loaded with your plates on a 20 kg bar. "
                "Nearest: 90 kg (each side 25 + 10) or 92.5 kg (each side 25 + 10 + 1.25)."
            ),
        ),
        (
            said("132", "lb", ("126.77", ["15", "2.5", "1.25"]), ("132.28", ["20"])),
            (
                "132 lb cannot be loaded with your plates on a 20 kg bar. "
                "Nearest: 126.77 lb (each side 15 + 2.5 + 1.25 kg) or 132.28 lb (each side 20 kg)."
            ),
        ),
    ],
)
def test_plates_are_said_for_each_side(answer: str, words: str) -> None:
    assert answer == words
