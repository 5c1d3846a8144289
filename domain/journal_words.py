"""How somebody says that a journal is to be sent as a file, and in which form. Whole messages only."""

import re
from dataclasses import dataclass

from domain.expressions import Expression
from domain.parts import FileKind

_PLEASE = (
    r"(?:please |pls )?(?:(?:can|could|may|will|would) (?:you|i|we)(?: please)? |i want to |i want |i need |"
    r"i'd like to |i'd like |let me )?"
)
_ASKS = r"(?:(?:send|give|show|see|have|export|download|get|make|print out|print|prepare|want|need)(?: me)? )"
_FORMS: dict[str, FileKind] = {
    "pdf": "journal pages",
    "a pdf": "journal pages",
    "pdf file": "journal pages",
    "a pdf file": "journal pages",
    "pages": "journal pages",
    "to print": "journal pages",
    "for printing": "journal pages",
    "on paper": "journal pages",
    "printable": "journal pages",
    "json": "journal data",
    "a json": "journal data",
    "json file": "journal data",
    "a json file": "journal data",
    "csv": "journal table",
    "a csv": "journal table",
    "csv file": "journal table",
    "a csv file": "journal table",
    "table": "journal table",
    "a table": "journal table",
    "spreadsheet": "journal table",
    "a spreadsheet": "journal table",
    "excel": "journal table",
    "excel file": "journal table",
}
_FORM = "|".join(sorted((re.escape(each) for each in _FORMS), key=len, reverse=True))
_FORM_TOLD = rf",? (?:(?:as|in|into) )?(?:an? )?(?P<form>{_FORM})(?: form| format)?"
_AS = rf"(?:{_FORM_TOLD}|,? as (?:a )?file)?"
_BEFORE = rf"(?:(?P<before>{_FORM})(?: of| with| for)? )?"
_ALL = r"(?:all of |all |everything (?:about|of|on|for|you have (?:about|on|of)|there is (?:about|on)) )"
_THE = r"(?:the |a |an )?"
_JOURNAL = (
    r"(?:(?:whole |full |entire |complete |training |workout |old )*"
    r"(?:journals?|logbooks?|logs?|diary|diaries|records))"
)
_DATA: FileKind = "journal data"
_TAIL = r"(?:,? please| now| thanks| thank you)*"
_OWN = r"(?:'s|s'|')"

EVERYONE = frozenset(
    {"everyone", "everybody", "all", "all of them", "all clients", "all my clients", "all of my clients"}
) | frozenset({"my clients", "every client", "everything", "the whole roster", "my roster", "them all"})
"""Names that are nobody's, but mean all clients."""

_OF_ALL = Expression(
    rf"{_PLEASE}{_ASKS}?{_BEFORE}(?:all|every)(?: of)?(?: the| my)?(?: clients['’]?)? {_JOURNAL}{_AS}{_TAIL}"
)

_OF_CLIENT: tuple[tuple[Expression, FileKind | None], ...] = tuple(
    (Expression(f"{_PLEASE}{way}{_TAIL}"), form)
    for way, form in (
        (rf"{_ASKS}?{_THE}{_BEFORE}{_THE}{_JOURNAL} (?:of|for|from) (?P<name>.{{1,60}}?){_AS}", None),
        (rf"{_ASKS}?{_THE}{_BEFORE}(?P<name>.{{1,60}}?){_OWN} {_JOURNAL}{_AS}", None),
        (rf"{_ASKS}?{_ALL}(?P<name>.{{1,60}}?){_FORM_TOLD}", None),
        (rf"(?:send|export|download|get|give)(?: me)? {_ALL}(?P<name>.{{1,60}}?)(?: as (?:a )?file)?", _DATA),
        (rf"(?:export|download|print out|print) (?P<name>.{{1,60}}?){_AS}", None),
    )
)
"""Each way to ask, and the form that it means where none is named."""

_OWN_JOURNAL = tuple(
    Expression(f"{_PLEASE}{way}{_TAIL}")
    for way in (
        rf"{_ASKS}{_BEFORE}(?:a copy of |all of )?(?:my|the|our) {_JOURNAL}{_AS}",
        rf"(?:my|the) (?:{_JOURNAL}|history|workouts|sets),? (?:as|in|into) (?:an? )?(?P<form>{_FORM})",
        rf"{_ASKS}(?:me )?(?:my|the) (?:history|workouts|sets) (?:as|in|into) (?:an? )?(?P<form>{_FORM})",
    )
)


@dataclass(frozen=True, slots=True)
class JournalAsked:
    """That a journal is wanted as a file: whose, as typed (empty: one's own), and in which form, if said."""

    name: str
    form: FileKind | None


def of_client(bare: str) -> JournalAsked | None:
    """Return whose journal a coach wants, in small letters without a mark at the end; None for none."""
    if (all_of_them := _OF_ALL.fullmatch(bare)) is not None:
        return JournalAsked("everyone", _form(all_of_them))
    for way, meant in _OF_CLIENT:
        found = way.fullmatch(bare)
        if found is not None:
            return JournalAsked(re.sub(rf"{_OWN}$", "", found["name"]), _form(found) or meant)
    return None


def of_own(text: str) -> JournalAsked | None:
    """Return how somebody wants the own journal; None where the message wants something else."""
    bare = " ".join(text.split()).casefold().replace("’", "'").rstrip("?!. ")
    for way in _OWN_JOURNAL:
        found = way.fullmatch(bare)
        if found is not None:
            return JournalAsked("", _form(found))
    return None


def _form(found: re.Match[str]) -> FileKind | None:
    parts = found.groupdict()
    said = parts.get("form") or parts.get("before")
    return None if said is None else _FORMS[said]
