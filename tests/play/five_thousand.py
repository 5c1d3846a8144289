"""An old journal of 5,000 rows as a played script, generated: looked at, asked about, taken, compared with,
undone; while another client trains.

`python -m tests.play.five_thousand` writes the chat anew; read the difference before you commit it.
"""

import json
import tempfile
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from tests.play.golden import SCRIPTS, chat_of

CHAT = Path(__file__).parent / "five_thousand.txt"
ROWS = 5_000
FIRST = date(2021, 3, 1)
LIFTS = (
    ("Seated Row (Cable)", 50),
    ("RDL", 60),
    ("Hammer Curl", 12),
    ("Goblet Squat", 24),
    ("Prone flinger", 80),
)
BROKEN = {700: "soon", 701: "31/02/2022", 702: "", 1_400: "2031-01-01"}
"""Rows whose day cannot be, by their place."""


def table() -> str:
    """Return the journal: ten sets every three days, loads that rise by little, and some broken rows."""
    rows = ["Date;Exercise;Weight (kg);Reps;How it felt"]
    for at in range(ROWS):
        name, load = LIFTS[at // 2 % 5]
        day = (FIRST + timedelta(days=at // 10 * 3)).strftime("%d/%m/%Y")
        weight = f"{load + at // 500 * 2.5:g}".replace(".", ",")
        rows.append(f"{BROKEN.get(at, day)};{name};{weight};{8 + at // 10 % 4 - at % 2};")
    rows[3_000] = rows[3_000].replace(";", ";;", 1)
    return "\n".join(rows) + "\n"


def steps() -> list[dict[str, Any]]:
    """Return what people do."""
    roster = json.loads((SCRIPTS / "noor.json").read_text(encoding="utf-8"))
    piet = {**roster["clients"][0], "name": "Piet"}
    setup = {**roster, "sheets": [str(SCRIPTS / each) for each in roster["sheets"]]}

    def mara(at: str, **deed: str) -> dict[str, Any]:
        return {"at": f"2026-03-01T{at}:00+01:00", "who": "Mara", **deed}

    return [
        {"setup": {**setup, "clients": [*roster["clients"], piet]}},
        mara("12:00", sends="old.csv"),
        mara("12:02", says="Noor"),
        mara("12:03", presses="Keep «Prone flinger»"),
        mara("12:05", presses="Take it in"),
        {"at": "2026-03-01T12:05:00+01:00", "who": "Piet", "says": "rows 50x9"},
        {"at": "2026-03-02T07:30:00+01:00", "who": "Mara", "says": "how is Noor doing?"},
        {"at": "2026-03-02T08:00:00+01:00"},
        {"at": "2026-03-02T18:00:00+01:00", "who": "Noor", "says": "rows 72.5x10"},
        {"at": "2026-03-02T18:01:00+01:00", "who": "Noor", "says": "undo"},
        {"at": "2026-03-02T18:02:00+01:00", "who": "Noor", "says": "rows 72.5 x 11"},
        {"at": "2026-03-02T19:00:00+01:00", "who": "Mara", "sends": "old.csv"},
        {"at": "2026-03-02T19:01:00+01:00", "who": "Mara", "presses": "Noor"},
        {"at": "2026-03-02T19:02:00+01:00", "who": "Mara", "says": "undo"},
        {"at": "2026-03-02T19:03:00+01:00", "who": "Noor", "says": "history of rows"},
    ]


def chat_of_five_thousand() -> str:
    """Return the chat that the script prints."""
    with tempfile.TemporaryDirectory() as folder:
        script = Path(folder) / "five_thousand.jsonl"
        script.write_text("\n".join(map(json.dumps, steps())), encoding="utf-8")
        (Path(folder) / "old.csv").write_text(table(), encoding="utf-8")
        return chat_of(script)


if __name__ == "__main__":
    CHAT.write_text(chat_of_five_thousand(), encoding="utf-8")
