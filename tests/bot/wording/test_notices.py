"""Every notice can be said."""

from typing import Any, get_args

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.notices import WORDS
from bot.wording.reader import Reader
from domain.parts import Notice
from domain.topics import Topic

READER = Reader("Noor", "Europe/Amsterdam", "kg")

A_SET = {
    "exercise": "Row",
    "load": "80",
    "unit": "kg",
    "load_kind": "total",
    "reps": 8,
    "seconds": None,
    "on": "2026-03-02",
}

FACTS: dict[str, Any] = {
    "about": ["what", "stored", "seen", "leave"],
    "lacking": ["barbell"],
    "said": "1 and 3",
    "which": ["signs", "joints"],
    "answers": {"trouble": "No trouble", "lately": "Slept badly"},
    "aside": [["Row", "knee"]],
    "at": "07:00",
    "before": "Ines",
    "count": 2,
    "invitations": [{"name": "Ines", "as_coach": True, "until": "2026-03-16"}],
    "left": [],
    "most": 1000,
    "noted": [{"client": "Noor", "notes": [{"on": "2026-03-02", "text": "Likes mornings", "place": 1}]}],
    "to": "Ines",
    "bar": "20",
    "bar_unit": "kg",
    "begin": "08:00",
    "client": "Noor",
    "coach": "Mara",
    "code": "abc",
    "days": 14,
    "changed": ["lacking"],
    "end": "20:00",
    "equipment": {"unit": "kg", "lacking": ["barbell"]},
    "exercise": "Row",
    "exercises": ["Row", "Dip"],
    "explanation": {"exercise": "Row", "held": ["knee", "left"]},
    "fault": "too large",
    "faults": [],
    "instead": "Dip",
    "last": [A_SET],
    "load": "91",
    "loads": [{"load": "90", "plates": ["25", "10"]}, {"load": "92.5", "plates": ["25", "10", "1.25"]}],
    "local": "18:40",
    "mass": "72",
    "matters": [
        {
            "rule": "great jump",
            "exercise": "Row",
            "workout": "Pull",
            "on": "2026-03-02",
            "at": "2026-03-02T17:00:00Z",
            "facts": {"percent": 18.8},
        }
    ],
    "name": "Noor",
    "names": ["Noor", "Piet"],
    "next": "Legs",
    "on": "2026-03-05",
    "programme": "Harbour Base",
    "others": ["Plank"],
    "ramps": [[A_SET], [A_SET]],
    "reason": "stall",
    "remedy": "lighten",
    "risen": True,
    "rounds": 4,
    "rows": [{"on": "2026-03-02", "set": A_SET, "sets": 1}],
    "sets": [A_SET],
    "since": "2026-03-02",
    "stand": [A_SET],
    "says": "what it means",
    "term": "superset",
    "text": "hello",
    "to_find": ["Dip"],
    "understood": False,
    "unit": "kg",
    "until": "2026-03-14",
    "what": "photo",
    "where": "knee",
    "without_beat": 3,
    "workout": "Pull",
    "instead_of": "Legs",
    "workouts": 4,
    "zone": "Europe/Lisbon",
}
"""A value for every fact that any notice uses."""


def test_every_topic_has_words_and_no_words_are_left_over() -> None:
    assert set(WORDS) == set(get_args(Topic))


TIME = {"on": "2026-03-02", "exercise": "Row", "set": A_SET, "sets": 1, "result": "beat"}

OTHER_FACTS: dict[str, dict[str, Any]] = {
    "feels odd": {"hurts": "my shoulder hurts"},
    "journal unreadable": {"name": "old.csv", "fault": "nobody", "shown": "Piet"},
    "journal days": {"name": "old.csv", "shown": "3/4/2026"},
    "journal name": {"name": "old.csv", "shown": "Flinger", "many": 1, "left": 2},
    "journal looked at": {
        "name": "old.csv",
        "takes": True,
        "sets": 1,
        "workouts": 1,
        "first": "2026-03-02",
        "last": "2026-03-05",
        "exercises": 2,
        "there": 3,
        "left_out": 1,
        "unit": "kg",
        "renamed": [["RDL", "Romanian deadlift"]],
        "renamed_count": 4,
        "new": ["Flinger"],
        "new_count": 1,
        "passed_over": ["RPE"],
        "faults": [{"row": 3, "what": "date", "shown": "soon"}, {"row": 4, "what": "no date", "shown": ""}],
        "fault_count": 5,
        "fault_kinds": {"date": 4, "no date": 1},
    },
    "journal begun": {"sets": 5000},
    "journal coming": {"sets": 5000, "taken": 1250},
    "journals coming": {"sent": 12, "total": 40},
    "journal taken": {"name": "old.csv", "sets": 5000},
    "journal taken out": {"name": "old.csv", "sets": 1},
    "next day": {"days": 3},
    "comes later": {"first": "Push", "first_on": "2026-03-05"},
    "put back": {"plans": True, "mass": "71.5"},
    "days ahead": {
        "days": [{"workout": "Legs", "on": "2026-03-05"}],
        "since": "2026-03-02",
        "until": "2026-03-09",
    },
    "early": {"due": "2026-03-05", "today": "2026-03-03", "rest_days": 2, "rest_until": "2026-03-05"},
    "best": {"rows": [{"exercise": "Row", "set": A_SET}]},
    "last workout": {"rows": [{"exercise": "Row", "sets": [A_SET, A_SET]}]},
    "workouts counted": {"count": 12, "lately": 4, "sets": 60, "until": None},
    "missed counted": {"count": 1, "rows": [{"workout": "Pull", "on": "2026-03-02"}]},
    "days told": {
        "first": "2026-03-02",
        "last": "2026-03-02",
        "workouts": [{"on": "2026-03-02", "workout": "Pull", "rows": [{"exercise": "Row", "sets": [A_SET]}]}],
    },
    "beaten": {"beaten": ["Row"], "not_beaten": [], "first": ["Dip"]},
    "equipment kept": {"instead": [["Hammer curl", "Cable curl"]]},
    "zone later": {"place": "Tokyo"},
    "ever": {"load": "80", "first": None, "best": A_SET, "times": 0},
    "cues": {"rows": [{"exercise": "Row", "cues": ["chest tall"]}]},
    "strength so far": {"found": "risen", "gain": 0.012, "low": 0.004, "high": 0.02, "rounds": 6},
    "undone": {"changes": [{"what": "swap", "exercise": "Row", "instead": "Dip", "before": None}]},
    "which exercise of client": {"slot": "exercise", "found": [], "known": ["Row"]},
    "too much rest": {"most": 14},
    "sets of client": {"rows": [TIME], "aimed": None},
    "card": {
        "remind_at": "08:00",
        "workouts": [{"on": "2026-03-02", "workout": "Pull", "state": "done", "rows": [TIME]}],
    },
    "from coach": {"answers": "Go heavier?"},
    "talk": {"rows": [{"on": "2026-03-02", "name": "Mara", "text": "Well done."}]},
    "digest kept": {"every": "day"},
    "nothing aside": {"aside": ["Row"]},
    "followed up": {"result": "worked", "then": A_SET, "now": A_SET, "best": A_SET},
    "remedies": {"rows": [{"remedy": "lighten", "taken": 2, "worked": 1, "did_not": 0, "early": 1}]},
}


@pytest.mark.parametrize("topic", get_args(Topic))
def test_a_notice_says_something_without_empty_places(topic: Topic) -> None:
    said = plain(message_words((Notice(topic=topic, facts=FACTS | OTHER_FACTS.get(topic, {})),), READER))
    assert len(said) > 5
    assert "None" not in said
    assert "{" not in said
    assert all("  " not in line.strip() for line in said.splitlines())
