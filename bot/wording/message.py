"""A whole message in words, from the parts that it is made of."""

from typing import assert_never

from bot.markup import italic
from bot.wording.alerts import alert_words, label
from bot.wording.coach_changes import reach_words
from bot.wording.enclosed import file_words
from bot.wording.notices import notice_words
from bot.wording.overview import digest_words
from bot.wording.pictures import programme_progress_words, progress_words, roster_progress_words
from bot.wording.questions import question_words
from bot.wording.reader import Reader
from bot.wording.safety import safety_words, urgent_words
from bot.wording.training import (
    back_to_words,
    caution_beside,
    nudge_words,
    plan_words,
    reminder_words,
    target_words,
)
from bot.wording.verdict import verdict_words
from domain.parts import (
    AlertPart,
    CameOf,
    Chosen,
    Digest,
    File,
    Notice,
    Nudge,
    Part,
    Plan,
    Question,
    Reminder,
    Safety,
    TargetPart,
    Urgent,
    VerdictPart,
)
from domain.pictures import ProgrammeProgress, Progress, RosterProgress
from domain.reach import Reach


def message_words(parts: tuple[Part, ...], reader: Reader) -> str:
    """Return a whole message, as markup. A target stands close under its verdict."""
    text = ""
    for part in parts:
        words = part_words(part, reader)
        if words:
            gap = "" if not text else "\n" if isinstance(part, TargetPart | Plan) else "\n\n"
            text += gap + words
    return text


def part_words(part: Part, reader: Reader) -> str:
    """Return the words of one part, as markup, for the person who reads."""
    match part:
        case Plan():
            return plan_words(part)
        case VerdictPart():
            return verdict_words(part) + caution_beside(part)
        case TargetPart():
            return target_words(part) + back_to_words(part)
        case Question():
            return question_words(part)
        case Safety():
            return safety_words(part, reader)
        case Urgent():
            return urgent_words()
        case AlertPart():
            return alert_words(part)
        case Reminder():
            return reminder_words(part)
        case Nudge():
            return nudge_words(part)
        case Reach():
            return reach_words(part)
        case Digest():
            return digest_words(part)
        case File():
            return file_words(part)
        case Progress():
            return progress_words(part, reader)
        case ProgrammeProgress():
            return programme_progress_words(part, reader)
        case RosterProgress():
            return roster_progress_words(part)
        case Chosen(action=action):
            return italic(f"→ {label(action)}")
        case CameOf(notice=notice):
            return notice_words(notice, reader)
        case Notice():
            return notice_words(part, reader)
        case _:
            assert_never(part)
