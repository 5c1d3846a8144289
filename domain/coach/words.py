"""What a coach's words come to: looked up, passed on, or made a decision on clients.

What is asked for is read by `understanding.py`; here it is done. Whatever concerns a client goes by
`Draft.order`.
"""

import re
from collections.abc import Callable
from datetime import timedelta
from typing import get_args

from domain.actions import Words, Write
from domain.authority import has_client
from domain.coach.assigning import assign, undo_for_all, update
from domain.coach.bare import take_bare
from domain.coach.changing import change
from domain.coach.digest_time import take_digest
from domain.coach.draft import Draft
from domain.coach.handing_over import ask_to_hand_over, coach_named, keep, take_offer
from domain.coach.hours import take_hours
from domain.coach.inviting import show_invitations, take_invitation
from domain.coach.notes import forget_notes, forget_that_note, note, show_notes
from domain.coach.overviews import OVERVIEWS, clients_on, overview, which_worked, who_is_on
from domain.coach.own_settings import take_own_setting
from domain.coach.people_phrases import PLACES
from domain.coach.programmes import ask_programme, programme_named, programme_names
from domain.coach.rule import take_rule
from domain.coach.showing import show
from domain.coach.spreading import spread
from domain.coach.taken_for import note_meant, note_meant_beyond
from domain.coach.training_too import take_own_training
from domain.coach.understanding import Asked, asked, named_in, nearly_named
from domain.coach.which_client import ask_who, take_who
from domain.coach.writing import begin_writing_to, pass_on
from domain.coach_requests import PeopleKind
from domain.courtesies import is_courtesy
from domain.expressions import Expression
from domain.incoming import (
    CardWanted,
    Released,
    SetsWanted,
    TalkWanted,
    Told,
    WhyWanted,
)
from domain.topics import Topic
from domain.understood import CoachTakenFor, TakenFor
from domain.wishes import BackWish, LeaveOutWish, ReminderWish, RestWish, SwapWish, Wish

NO_NAMES = frozenset({"the", "a", "an", "any", "some", "my", "our", "your", "me", "i", "i'm", "am"})
"""Words that stand in no name of anybody."""

SPOKEN_OF_FOR = timedelta(hours=1)
"""For how long "her" and "them" are whom and what the coach spoke of last. The house's own choice."""

THEM = frozenset({"it", "them", "that", "those", "this", "these"})

ARTICLES = frozenset({"the", "her", "his", "their", "any", "more", "doing"})

ASKED_OF_WHOM = frozenset({"swap", "leave out", "back", "rest more", "reminder", "assign", "release"})
"""What is asked about where it is said without a client."""

PRONOUNS = frozenset({"her", "him", "his", "hers", "them", "their", "me", "my", "she", "he", "they"})
"""Whoever says one of these has somebody in mind who is not to be guessed, or trains, too."""

LONGEST_WITHOUT_NAME = 10
"""Longer words without a client's name are no request. The house's own choice."""

HESITATIONS = Expression(
    r"(?<![\w'])(?:u+h*m+|u+h+|e+rm+|hm+|er|ah|like i said|you know|rn|asap|lol)(?![\w'])[ ,.…]*",
    re.IGNORECASE,
)
"""What somebody says who thinks aloud or types in haste; it is left out where the rest is understood then."""

_GREETINGS = frozenset({"hello", "hi", "hey", "/start"})
_WHY = Expression(r"(?:.{0,12}\b)?(?:why|whys|how come|explain)\b", re.IGNORECASE)


def is_for_a_client(draft: Draft, text: str) -> bool:
    """Return whether a text says outright that it is to be passed on, whatever it goes on with."""
    request = asked(text, draft.names)
    return request is not None and request.kind in {"tell", "note"}


def obey(draft: Draft, text: str) -> None:
    """Do what a coach asks for; say what can be asked where it was not understood."""
    said = " ".join(text.split()).rstrip("?!. ")
    bare = said.casefold().replace("’", "'").removesuffix("please").rstrip(", ")
    if take_who(draft, text, obey):
        draft.take_for("an answer")
        return
    request = asked(text, draft.names, spoken_of(draft), own_number(draft))
    known = request if request is not None and request.unknown is None else None
    if take_offer(draft, text):
        draft.take_for("an answer to an offer")
    elif known is not None and known.kind == "note":
        note_meant(draft, known)
        if clients := meant(draft, known, text):
            note(draft, clients, known.pieces["text"])
    elif known is not None and known.kind == "tell":
        note_meant(draft, known)
        tell(draft, known, text)
    elif (taken_for := take_told(draft, said, bare, request, known)) is not None:
        draft.take_for(taken_for)
    elif known is not None:
        note_meant(draft, known)
        do(draft, known, text)
    elif pass_on(draft, text):
        draft.take_for("tell")
    elif request is not None and request.unknown is not None and is_a_name(request.unknown, text):
        draft.take_for("nobody known")
        unknown_client(draft, request.unknown)
    elif take_bare(draft, text, do) or ask_of_whom(draft, said):
        pass
    elif (plain_words := HESITATIONS.sub(blank, text)) != text and plain_words.strip():
        obey(draft, plain_words)
    else:
        not_understood(draft, text, bare)


def take_told(
    draft: Draft, said: str, bare: str, request: Asked | None, known: Asked | None
) -> TakenFor | CoachTakenFor | None:
    """Do what is told in turns of its own; return what that was, None where nothing of the kind is."""
    is_of_people = request is not None and request.kind in get_args(PeopleKind)
    is_of_talk = known is not None and known.kind == "talk"
    turns: tuple[tuple[TakenFor | CoachTakenFor, Callable[[], bool]], ...] = (
        ("the coach's hours", lambda: take_hours(draft, bare)),
        ("when the digest comes", lambda: take_digest(draft, bare)),
        ("a rule for stalls", lambda: take_rule(draft, bare)),
        ("a picture or a journal", lambda: not is_of_people and not is_of_talk and show(draft, bare)),
        ("own training", lambda: take_own_training(draft, bare)),
        ("a setting", lambda: take_own_setting(draft, bare)),
        ("an invitation", lambda: take_invitation(draft, said)),
    )
    return next((what for what, takes in turns if takes()), None)


def blank(found: re.Match[str]) -> str:
    """Return as many blanks as letters were found, so that the others keep their places."""
    return " " * len(found[0])


def do(draft: Draft, request: Asked, text: str) -> None:
    """Do what was asked for and understood."""
    if request.kind in OVERVIEWS:
        overview(draft, OVERVIEWS[request.kind], request.pieces.get("day", ""))
        return
    match request.kind:
        case "remedies":
            which_worked(draft)
        case "programmes":
            draft.notice("programmes", names=programme_names(draft))
        case "help":
            draft.notice("coach help")
        case "undo":
            undo(draft)
        case "who is on":
            who_is_on(draft, request.pieces["programme"])
        case "why":
            why(draft, request, text)
        case "update":
            update(draft, request.pieces.get("programme"))
        case "card" if request.everyone:
            overview(draft)
        case "invitations":
            show_invitations(draft)
        case "forget that note":
            forget_that_note(draft)
        case "notes" if not request.of:
            show_notes(draft, tuple(number for number, _ in draft.names))
        case _:
            clients = meant(draft, request, text)
            if clients:
                of_clients(draft, request, clients)


def meant(draft: Draft, request: Asked, text: str) -> tuple[int, ...]:
    """Return the clients that a request is of; where a name fits several, ask which, and return none."""
    for fits, span in zip(request.of, request.spans, strict=True):
        if len(fits) > 1:
            ask_who(draft, text, span, fits)
            return ()
    if request.everyone:
        return tuple(number for number, _ in draft.names if number not in request.without)
    return tuple(dict.fromkeys(fits[0] for fits in request.of))


def of_clients(draft: Draft, request: Asked, clients: tuple[int, ...]) -> None:
    """Make a request of clients an order for each of them."""
    coach, pieces = draft.number, request.pieces
    wish: Wish | None = None
    match request.kind:
        case "card":
            draft.order_all(clients, CardWanted(coach=coach))
        case "sets":
            draft.order_all(clients, SetsWanted(coach=coach, text=request.rest))
        case "days":
            say_whose(draft, "client's own days", clients[0])
        case "of the sheet":
            say_whose(draft, "of the sheet", clients[0])
        case "of erasing":
            say_whose(draft, "client's own leaving", clients[0])
        case "talk":
            draft.order_all(clients, TalkWanted(coach=coach))
        case "release":
            draft.order_all(clients, Released(coach=coach))
        case "notes":
            show_notes(draft, clients)
        case "forget note":
            place = PLACES.get(pieces.get("which", "").casefold())
            if request.number is not None:
                place = int(request.number)
            forget_notes(draft, clients, place, is_all="every" in pieces)
        case "hand over" if coach_named(draft, pieces["coach"]) is None and programme_named(
            draft, pieces["coach"]
        ):
            assign(draft, clients, pieces["coach"])
        case "hand over":
            ask_to_hand_over(draft, clients, pieces["coach"])
        case "keep":
            for client in clients:
                keep(draft, client)
        case "assign" if programme_named(draft, pieces["programme"]) is None and coach_named(
            draft, pieces["programme"]
        ):
            ask_to_hand_over(draft, clients, pieces["programme"])
        case "assign":
            assign(draft, clients, pieces["programme"])
        case "back" if programme_named(draft, pieces["exercise"]) is not None:
            assign(draft, clients, pieces["exercise"])
        case "back":
            wish = BackWish(exercise=spoken_exercise(draft, pieces["exercise"]))
        case "leave out":
            wish = LeaveOutWish(exercise=spoken_exercise(draft, pieces["exercise"]))
        case "swap":
            wish = SwapWish(exercise=spoken_exercise(draft, pieces["exercise"]), instead=pieces["instead"])
        case "reminder":
            wish = ReminderWish(clock=pieces["clock"])
        case "rest more":
            days = int(request.number or 1)
            if 1 <= days <= MOST_REST:
                wish = RestWish(days=days)
            else:
                draft.notice("too much rest", days=days, most=MOST_REST)
    if wish is not None:
        change(draft, clients, wish)


MOST_REST = 14
"""More rest days than this are a pause, and no rest day more. The house's own choice."""


def own_number(draft: Draft) -> int | None:
    """Return the coach's own number where she trains by an own sheet: then she is a client of hers, too."""
    return draft.number if has_client(draft.state, draft.number) else None


def spoken_of(draft: Draft) -> int | None:
    """Return the client spoken of just now, if there was one."""
    spoken = draft.memory.spoken
    is_recent = spoken is not None and draft.at - spoken.at <= SPOKEN_OF_FOR
    return (
        spoken.client if spoken is not None and is_recent and has_client(draft.state, spoken.client) else None
    )


def spoken_exercise(draft: Draft, words: str) -> str:
    """Return an exercise as it was named: where it is only "them", as it was named last."""
    spoken = draft.memory.spoken
    is_them = words.casefold() in THEM and spoken is not None and draft.at - spoken.at <= SPOKEN_OF_FOR
    if is_them and spoken is not None and spoken.exercise:
        return spoken.exercise
    first, _, others = words.partition(" ")
    return others if others and first.casefold() in ARTICLES else words


def tell(draft: Draft, request: Asked, text: str) -> None:
    """Pass the coach's words on, to one client or to several."""
    clients = meant(draft, request, text)
    if request.everyone and "programme" in request.pieces:
        chosen = programme_named(draft, request.pieces["programme"])
        if chosen is None:
            about = {"text": request.pieces["text"]}
            ask_programme(draft, "tell", about, named=request.pieces["programme"])
            return
        clients = clients_on(draft, chosen)
    words = request.pieces["text"]
    if not clients:
        if request.everyone:
            draft.notice("nobody to tell")
    elif not words:
        begin_writing_to(draft, clients)
    else:
        pass_words(draft, clients, words)


def pass_words(draft: Draft, clients: tuple[int, ...], words: str) -> None:
    """Pass words on, to one client or to several."""
    if len(clients) > 1:
        spread(draft, clients, words)
    else:
        draft.order_all(clients, Told(coach=draft.number, text=words))


def say_whose(draft: Draft, topic: Topic, client: int) -> None:
    """Say why something is not the coach's to change in words, and what can be done about it."""
    name = draft.name_of(client)
    draft.spoke_of(client)
    draft.notice(topic, client=name)
    if topic == "client's own days":
        draft.offer(Words(text=f"Give {name} one more rest day"))
    draft.offer(Write(client=client, alert=0, name=name))


def is_a_name(unknown: str, text: str) -> bool:
    """Return whether what stands in a name's place can be one: no thing with its article."""
    words = {each.casefold() for each in unknown.split()}
    return words.isdisjoint(NO_NAMES) and not is_courtesy(text)


def ask_of_whom(draft: Draft, said: str) -> bool:
    """Ask of which client something is wanted that names none; return whether it would be a change then.

    A coach who trains, too, may mean the own training.
    """
    words = said.casefold().split()
    is_own = draft.state.is_client or not PRONOUNS.isdisjoint(words)
    if is_own or not draft.names or len(words) > LONGEST_WITHOUT_NAME:
        return False
    for text in (f"{said} for ", f"{said} "):
        request = asked(f"{text}{draft.names[0][1]}", draft.names)
        if request is not None and request.kind in ASKED_OF_WHOM and request.unknown is None and request.of:
            clients = tuple(number for number, _ in draft.names)
            if len(clients) == 1:
                note_meant_beyond(draft, request)
                do(draft, request, f"{text}{draft.names[0][1]}")
            else:
                draft.take_for(request.kind)
                ask_who(draft, text, (len(text), len(text)), clients)
            return True
    return False


def why(draft: Draft, request: Asked, text: str) -> None:
    """Ask for the reasons of a client's verdict and target, where it is clear whose.

    A bare "why?" can be about nobody else than the only client, or the one spoken of just now.
    """
    spoken, only = spoken_of(draft), draft.names[0][0] if len(draft.names) == 1 else None
    clients = meant(draft, request, text) if request.of else ()
    if not request.of and len(text.split()) <= 2 and (spoken or only) is not None:
        clients = (spoken or only or 0,)
    if clients:
        words = " ".join(_WHY.sub("", request.rest, count=1).split()).strip(" ?!.")
        draft.order_all(clients, WhyWanted(coach=draft.number, text=words))
    elif not request.of:
        not_understood(draft, text, text.casefold())


def undo(draft: Draft) -> None:
    """Take back the last change, for all clients for whom it was made; or the last note, if later."""
    last, noted_in = draft.memory.last_change, draft.memory.noted_in
    if noted_in is not None and (last is None or last.message < noted_in):
        forget_that_note(draft)
        return
    if last is None:
        draft.notice("nothing to undo", client=None)
        return
    undo_for_all(draft, last.clients, last.message)


def not_understood(draft: Draft, text: str, bare: str) -> None:
    """Say what can be asked; of a client who is named, what can be done about that one."""
    if is_courtesy(text) and bare not in _GREETINGS:
        draft.take_for("a courtesy")
        draft.notice("heard")
        return
    draft.take_for("nothing known")
    named = [fits for fits in named_in(text, draft.names) if len(fits) == 1] or nearly_named(
        text, draft.names
    )
    if len(named) == 1:
        name = draft.name_of(named[0][0])
        draft.notice("coach unsure", client=name)
        draft.offer(Words(text=f"How is {name}?"), Words(text="Help"))
    else:
        draft.notice("coach lost")
        draft.offer(Words(text="Who needs me?"), Words(text="Help"))


def unknown_client(draft: Draft, name: str) -> None:
    """Say which clients there are."""
    draft.notice("unknown client", name=name, names=[line.name for _, line in draft.state.clients])
