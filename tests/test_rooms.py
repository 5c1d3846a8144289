"""Nothing imports upwards, nothing in a circle, and each library stays in its room."""

from pathlib import Path

import pytest

from tests.rooms import ROOMS, faults, read_rooms

ROOT = Path(__file__).resolve().parent.parent


def test_the_project_keeps_the_rule_of_the_rooms() -> None:
    files = read_rooms(ROOT)
    assert {path.partition("/")[0] for path in files} == set(ROOMS)
    assert faults(files) == []


@pytest.mark.parametrize(
    ("path", "source", "fault"),
    [
        ("domain/a.py", "import persistence.store", "1: domain imports upwards: persistence.store"),
        ("domain/a.py", "\nfrom bot import wording", "2: domain imports upwards: bot.wording"),
        (
            "persistence/a.py",
            "from bot.wording import say",
            "1: persistence imports upwards: bot.wording.say",
        ),
        ("bot/a.py", "import tests", "1: bot imports upwards: tests"),
        ("bot/a.py", "def f():\n    from demo import play", "2: bot imports upwards: demo.play"),
        ("demo/a.py", "import tests.botapi", "1: demo imports upwards: tests.botapi"),
        ("bot/telegram/a.py", "from ...demo import play", "1: bot imports upwards: demo.play"),
        ("domain/a.py", "import numpy as np", "1: domain does not use numpy"),
        ("domain/a.py", "if TYPE_CHECKING:\n    from rich.text import Text", "2: domain does not use rich"),
        ("domain/a.py", "import logging", "1: domain is pure and has no logging"),
        ("domain/a.py", "from random import choice", "1: domain is pure and has no random"),
        ("domain/a.py", "from datetime import date\ndate.today()", "2: domain has no today()"),
        ("domain/a.py", "x = datetime.now(UTC)", "1: domain has no now()"),
        ("domain/a.py", "print(1)", "1: domain has no print()"),
        ("domain/a.py", "with open('x') as f:\n    f.read()", "1: domain has no open()"),
        ("domain/a.py", "from sqlalchemy.orm import Session", "1: sqlalchemy belongs in persistence only"),
        ("bot/a.py", "import sqlalchemy", "1: sqlalchemy belongs in persistence only"),
        ("demo/a.py", "from psycopg import connect", "1: psycopg belongs in persistence only"),
        ("bot/a.py", "from telegram import Update", "1: telegram belongs in bot/telegram only"),
        ("bot/telegrams.py", "from telegram.ext import X", "1: telegram belongs in bot/telegram only"),
    ],
)
def test_an_import_out_of_its_room_is_found(path: str, source: str, fault: str) -> None:
    assert faults({path: source}) == [f"{path}:{fault}"]


def test_dateparser_in_a_second_file_is_found() -> None:
    files = {"domain/days.py": "import dateparser", "domain/spans.py": "from dateparser.date import X"}
    assert faults(files) == ["dateparser is in more than one file: domain/days.py, domain/spans.py"]


@pytest.mark.parametrize(
    "files",
    [
        {"domain/a.py": "from domain.b import x", "domain/b.py": "import domain.a"},
        {"domain/a.py": "from domain import b", "domain/b.py": "def f():\n    from domain.a import y"},
        {"bot/a.py": "from .b import x", "bot/b.py": "from . import c", "bot/c.py": "from bot import a"},
        {"bot/t/__init__.py": "from bot.t.a import x", "bot/t/a.py": "from bot.t import x"},
        {"domain/a.py": "import domain.a"},
    ],
)
def test_a_circle_of_imports_is_found(files: dict[str, str]) -> None:
    found = faults(files)
    assert len(found) == 1
    assert found[0].startswith("modules import each other in a circle: ")


def test_imports_downwards_and_in_their_rooms_are_in_order() -> None:
    files = {
        "domain/__init__.py": "",
        "domain/a.py": "import re\nfrom pydantic import BaseModel\nfrom rapidfuzz import fuzz",
        "domain/c.py": "reader.open(1)\nresources.files('domain').joinpath('x.toml').read_text()",
        "domain/b.py": "from domain.a import x\nfrom . import a\nimport dateparser",
        "persistence/a.py": "import sqlalchemy, alembic, logging\nfrom domain import a, b",
        "bot/telegram/__init__.py": "",
        "bot/telegram/a.py": "from telegram.ext import X\nfrom bot.desk import y",
        "bot/desk.py": "import asyncio\nfrom persistence.a import z\nx = datetime.now(UTC)",
        "demo/a.py": "import bot.desk, domain.a",
        "tests/a.py": "import sqlalchemy, telegram, demo.a, bot.telegram.a",
    }
    assert faults(files) == []
