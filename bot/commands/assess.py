"""`assess`: how the exercises of everybody in a journal kept elsewhere stand, in words or as JSON lines."""

import sys
from pathlib import Path
from typing import Any

from bot.journal_file import read_journal
from bot.textfile import decode
from bot.wording.assessment import CAUTION, NO_ROWS, review_lines, standing_lines
from domain.assessment import Assessment, assess
from domain.gaining import Standing
from domain.reading.wire import line_of
from domain.review import Review

_DIGITS = 6


def assess_command(path: Path, *, as_json: bool = False) -> int:
    """Print how everybody in the journal at `path` stands; name broken lines; return the exit status."""
    try:
        text = decode(path.read_bytes())
    except OSError as error:
        print(f"kilopost: {path}: {error.strerror or error}", file=sys.stderr)
        return 1
    if text is None:
        print(f"kilopost: {path}: it is not plain text; a journal is a table with commas", file=sys.stderr)
        return 1
    journal = read_journal(text)
    for fault in journal.faults:
        print(f"{path}: {fault}", file=sys.stderr)
    if not (journal.clients or journal.faults):
        print(f"{path}: {NO_ROWS}", file=sys.stderr)
    for client, sets in journal.clients.items():
        found = assess(sets)
        print("\n".join(json_lines(client, found) if as_json else word_lines(client, found)))
    return 1 if journal.faults else 0


def json_lines(client: str, found: Assessment) -> list[str]:
    """Return a line for each exercise, and one for the review."""
    lines = [
        line_of(_standing(client, exercise, each, found.exposures[exercise]))
        for exercise, each in found.standings.items()
    ]
    most = max((each.exposures for each in found.standings.values()), default=0)
    return [*lines, line_of({"client": client, "review": _review(found.review, most)})]


def word_lines(client: str, found: Assessment) -> list[str]:
    """Return two lines for each exercise, two for the review, and the caution where something stalled."""
    pairs = [standing_lines(exercise, each) for exercise, each in found.standings.items()]
    lines = [client]
    for first, second in (*pairs, review_lines(found.review)):
        lines += [f"  {first}", f"    {second}"]
    if any(each.stalled for each in found.standings.values()):
        lines.append(f"  {CAUTION}")
    return [*lines, ""]


def _standing(client: str, exercise: str, found: Standing, exposures: int) -> dict[str, Any]:
    gain, ended = found.gain, found.ended
    confidence = None if ended is None else ended if found.stalled else 1 - ended
    return {
        "client": client,
        "exercise": exercise,
        "exposures": exposures,
        "gain_per_exposure": None if gain is None else round(gain.estimate, _DIGITS),
        "interval": None if gain is None else [round(gain.low, _DIGITS), round(gain.high, _DIGITS)],
        "stalled": found.stalled,
        "declining": found.declining,
        "since": None if found.since is None else found.since.isoformat(),
        "confidence": None if confidence is None else round(confidence, _DIGITS),
    }


def _review(found: Review | None, exposures: int) -> dict[str, Any]:
    if found is None:
        return {"risen": False, "p_value": None, "gain_per_round": None, "rounds": exposures}
    return {
        "risen": found.risen,
        "p_value": found.p_value,
        "gain_per_round": round(found.gain_per_round, _DIGITS),
        "rounds": found.rounds,
    }
