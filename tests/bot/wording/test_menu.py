"""The chat's menu holds commands that are understood, within the Bot API's limits."""

import re

import pytest

from bot.wording.menu import MENU
from domain.client.commands import COMMANDS
from tests.domain.client.people import Life, at, kinds


@pytest.mark.parametrize(("name", "description"), MENU)
def test_each_command_is_one_that_clients_know(name: str, description: str) -> None:
    assert f"/{name}" in COMMANDS
    # The limits: https://core.telegram.org/bots/api#botcommand
    assert re.fullmatch(r"[a-z0-9_]{1,32}", name)
    assert 1 <= len(description) <= 256


def test_a_command_is_the_same_as_its_words() -> None:
    for command, words in COMMANDS.items():
        assert kinds(Life().says(command, at(2))) == kinds(Life().says(words, at(2)))
