"""Which programme is meant: a name or a button answers, and what was wanted with it is done."""

from datetime import timedelta

from domain.coach.assigning import assign_to, on_older
from domain.coach.draft import Draft
from domain.coach.inviting import invite_to
from domain.coach.overviews import clients_on
from domain.coach.programmes import NEVER_MIND, Wanted, programme_named
from domain.coach.training_too import train
from domain.coach.words import pass_words
from domain.coach.writing import begin_writing_to
from domain.coach.yes_no import is_no
from domain.memory import Waiting
from domain.state import StoredProgramme

ANSWERED_WITHIN = timedelta(hours=12)
"""For how long a programme's name is the answer. The house's own choice."""


def answer_programme(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the name of a programme as the answer to which is meant; return False where it is none."""
    if waiting.slot != "which programme" or draft.at - waiting.asked_at > ANSWERED_WITHIN:
        return False
    chosen = programme_named(draft, text)
    refuses = chosen is None and is_no(text, NEVER_MIND)
    if chosen is None and not refuses:
        return False
    draft.remember(waiting=None)
    if chosen is None:
        draft.notice("heard")
    else:
        go_on(draft, waiting, chosen)
    return True


def go_on(draft: Draft, waiting: Waiting, chosen: StoredProgramme) -> None:
    """Do what was wanted with a programme."""
    about = waiting.about
    wanted: Wanted = about["wanted"]
    own = tuple(each for each in about.get("clients", ()) if each in dict(draft.names))
    match wanted:
        case "invite":
            invite_to(draft, str(about["name"]), chosen)
        case "assign":
            assign_to(draft, own, chosen)
        case "train":
            if not draft.state.is_client:
                train(draft, chosen)
        case "update":
            older = on_older(draft, chosen)
            if older:
                assign_to(draft, older, chosen)
            else:
                draft.notice("nobody on older", programme=chosen.programme.name)
        case "tell":
            clients = clients_on(draft, chosen)
            if not clients:
                draft.notice("nobody to tell")
            elif about["text"]:
                pass_words(draft, clients, str(about["text"]))
            else:
                begin_writing_to(draft, clients)
