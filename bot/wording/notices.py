"""Words for everything that is only to be known: one entry for each topic of `domain.parts.Topic`."""

from bot.wording.client_notices import CLIENT_WORDS
from bot.wording.coach_notices import COACH_WORDS
from bot.wording.coach_programmes import COACH_PROGRAMME_WORDS
from bot.wording.coaching import COACHING_WORDS
from bot.wording.looked_up import LOOKED_UP_WORDS
from bot.wording.notice_forms import Words
from bot.wording.old_journal import JOURNAL_WORDS
from bot.wording.reader import Reader
from domain.parts import AlertPart, CameOf, Digest, Notice, Part
from domain.pictures import RosterProgress
from domain.topics import Topic

WORDS: dict[Topic, Words] = (
    CLIENT_WORDS | LOOKED_UP_WORDS | COACH_WORDS | COACH_PROGRAMME_WORDS | COACHING_WORDS | JOURNAL_WORDS
)


def notice_words(part: Notice, reader: Reader) -> str:
    """Return the words of a notice, as markup."""
    words = WORDS[part.topic]
    return words if isinstance(words, str) else words(part.facts, reader)


def is_for_coach(part: Part) -> bool:
    """Return whether a part is only ever said to a coach."""
    if isinstance(part, CameOf):
        return True
    if isinstance(part, Notice):
        said_to_coaches = COACH_WORDS, COACHING_WORDS, COACH_PROGRAMME_WORDS, JOURNAL_WORDS
        return any(part.topic in words for words in said_to_coaches)
    return isinstance(part, AlertPart | Digest | RosterProgress)
