"""A coach's wish to have something of a client's as a file."""

import re

from domain.coach.draft import Draft
from domain.parts import File

_AS = r"(?: as (?:a |an )?(?:csv|table|spreadsheet|file|csv file))?"
_JOURNAL = re.compile(
    r"(?:(?:send|give|show|export|download|get)(?: me)? )?(?:the |all of )?"
    rf"(?:journal (?:of|for) (?P<name>.{{1,60}}?)|(?P<owner>.{{1,60}}?)(?:'s|s'|') journal){_AS}"
)


def show(draft: Draft, bare: str) -> bool:
    """Send what is asked for in `bare`, small letters and no mark at the end; return whether it was that."""
    found = _JOURNAL.fullmatch(bare)
    named = found and draft.client_named(found["name"] or found["owner"])
    if not named:
        return False
    number, line = named
    draft.say(File(what="journal table", of=number, client=line.name))
    return True
