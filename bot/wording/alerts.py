"""Words for a coach's alerts and overview, and the labels of buttons."""

from collections import Counter
from datetime import date
from typing import Any, assert_never

from pydantic import TypeAdapter

from bot.markup import bold, escape, italic
from bot.wording.eagerness import eager_words
from bot.wording.reader import day_words, listed, set_words
from bot.wording.safety import place_words
from bot.wording.stalls import stall_words
from bot.wording.why import EXPLANATION, explanation_words
from domain.actions import Action, Answer, Release, Remedy, Show, Treat, Words, Write
from domain.parts import AlertPart, ClientLine, Digest
from domain.sets import TrainingSet

_SET = TypeAdapter(TrainingSet)

REMEDIES: dict[Remedy, str] = {
    "lighten": "Load down, build back",
    "swap": "Use the alternative",
    "rest more": "One rest day more",
    "next programme": "Next programme",
    "keep on": "Leave it for now",
    "lift hold": "Put it back",
    "keep held": "Keep it aside",
    "let train": "Let training go on",
    "seen": "Seen",
}


def label(action: Action) -> str:
    """Return the words on a button."""
    match action:
        case Answer(text=text) | Words(text=text):
            return text
        case Write(name=name, of=of):
            return f"{of[:1].upper()}{of[1:]}: write to {name}" if of else f"Write to {name}"
        case Treat(remedy=remedy, workouts=workouts, of=of):
            words = f"Leave it for {workouts} workouts" if workouts else REMEDIES[remedy]
            return f"{of[:1].upper()}{of[1:]}: {words.lower()}" if of else words
        case Release():
            return "Let training begin"
        case Show(exercise=exercise):
            return "Larger picture" if exercise else "Picture of all exercises"
        case _:
            assert_never(action)


def alert_words(part: AlertPart) -> str:
    """Say a matter to the coach, with its evidence."""
    client, evidence = bold(part.client), part.evidence
    of = bold(part.exercise) if part.exercise else ""
    match part.reason:
        case "stall":
            return stall_words(part)
        case "review":
            return review_words(part)
        case "pain":
            return pain_words(part)
        case "urgent":
            return (
                f"{bold('Urgent')}: {client} wrote: {quoted(evidence)}\n"
                "The bot said to stop and to call the local emergency number, and asks for no training until "
                "you let it go on. Please get in touch now."
            )
        case "missed":
            return f"{client} has {missed_words(evidence)}; {bold(str(evidence.get('workout')))} is next."
        case "question":
            about = f" about {of}" if of else ""
            return (
                f"{client} asks{about}: {quoted(evidence)}{last_sets(evidence)}{told_words(evidence)}\n"
                f"Answer with: tell {escape(part.client)}: …"
            )
        case "unreachable":
            return f"{client} can no longer be reached: the chat is blocked or gone."
        case _:
            assert_never(part.reason)


def missed_words(evidence: dict[str, Any]) -> str:
    """Say how often in a row there was no training: missed, put off, or both."""
    missed, put_off = int(evidence.get("in_a_row", 0)), int(evidence.get("put_off", 0))
    if not put_off:
        return f"missed {missed} workouts in a row"
    moved = f"put training off on {put_off} {'day' if put_off == 1 else 'days'}"
    return (
        f"{moved} and missed {missed} since the last workout" if missed else f"{moved} since the last workout"
    )


def quoted(evidence: dict[str, Any]) -> str:
    """Return the client's own words, cut where they are long."""
    said = str(evidence.get("said", ""))
    return f"«{italic(said if len(said) <= 600 else said[:600] + ' …')}»"


def last_sets(evidence: dict[str, Any]) -> str:
    """Return the client's last sets, for a question."""
    sets = [_SET.validate_python(each) for each in evidence.get("last", [])]
    if not sets:
        return ""
    return "\nLast sets: " + "; ".join(f"{escape(each.exercise)} {set_words(each)}" for each in sets)


def told_words(evidence: dict[str, Any]) -> str:
    """Return what the client was told of the exercise asked about, with the reasons."""
    if not evidence.get("explanation"):
        return ""
    return f"\n{explanation_words(EXPLANATION.validate_python(evidence['explanation']), is_coach=True)}"


def review_words(part: AlertPart) -> str:
    """Say what the look back over some rounds found."""
    evidence = part.evidence
    rounds, gain = evidence.get("rounds"), float(evidence.get("gain_per_round", 0)) * 100
    found = "strength has risen" if evidence.get("risen") else "strength has not clearly risen"
    text = (
        f"Review of {bold(part.client)} after {rounds} rounds: {found}, "
        f"{gain:+.1f}% a round over all exercises together."
    )
    breaks = [f"{evidence['weeks_away']} weeks away"] if evidence.get("weeks_away") else []
    breaks += ["an illness"] if evidence.get("was_ill") else []
    if breaks:
        text += f" That is with {listed(breaks)} in between."
    if not evidence.get("risen") and evidence.get("switch_to"):
        text += f"\nThe sheet then goes to {bold(str(evidence['switch_to']))}."
        if not evidence.get("can_switch"):
            text += " I do not have that sheet yet."
    return text


def pain_words(part: AlertPart) -> str:
    """Say where it hurts, what was set aside, and what else loads the place."""
    evidence = part.evidence
    pain = evidence.get("pain", {})
    place = place_words(str(pain.get("where", "other")), pain.get("side"))
    score = f", {pain['score']} out of 10" if pain.get("score") is not None else ""
    held = evidence.get("held", [])
    if evidence.get("fine"):
        text = f"{bold(part.client)} writes that it hurts no longer: {quoted(evidence)}"
    elif pain.get("where", "other") == "other":
        text = f"{bold(part.client)} has pain{score}: {quoted(evidence)}"
    else:
        text = f"{bold(part.client)} has pain: {place}{score}. {quoted(evidence)}"
    if held:
        text += f"\nSet aside until you put it back: {escape(listed(held))}."
    if evidence.get("stalled"):
        text += "\nIt had stalled as well; that matter is closed in favour of this one."
    if evidence.get("also"):
        text += f"\nLoads the same place: {escape(listed(evidence['also']))}."
    return text + (
        "\nA qualified professional (a doctor or a physiotherapist) should see it before it is loaded again."
    )


def digest_words(part: Digest) -> str:
    """Say who needs the coach first, then who trains when; a look back says what there is to be done."""
    if part.since is not None:
        return "\n".join(week_words(part, part.since))
    if not part.clients:
        return "No clients yet. Say «invite NAME to PROGRAMME» to bring one in."
    lines = needing_words(part.clients)
    if not lines and len(part.clients) > 1:
        lines.append("Nobody needs you right now.")
    if lines:
        lines.append(bold("Training"))
    lines.extend(client_words(line, part.today) for line in sorted(part.clients, key=_when))
    return "\n".join(lines)


def needing_words(clients: tuple[ClientLine, ...]) -> list[str]:
    """Say who needs the coach and why; nothing where nobody does."""
    waiting = ((line.name, matters(line)) for line in clients)
    lines = [f"{escape(name)}: {escape(listed(what))}" for name, what in waiting if what]
    return [bold("Needs you"), *lines] if lines else []


def week_words(part: Digest, since: date) -> list[str]:
    """Say what there is to be done after the days from `since` on: who waits, who did more than asked."""
    lines = [f"Since {day_words(since)}:", *needing_words(part.clients)]
    eager = [line for line in part.clients if line.eager]
    if eager:
        lines.append(bold("Did more than asked"))
        lines.extend(f"{escape(line.name)}\n{eager_words(line.eager)}" for line in eager)
    return lines


def _when(line: ClientLine) -> tuple[bool, date, str]:
    return (line.due_on is None, line.due_on or date.max, line.name)


def client_words(line: ClientLine, today: date) -> str:
    """Say one client's next and last workout."""
    if line.joining:
        coming = "still answering the first questions"
    elif line.left:
        coming = "has left"
    elif line.paused:
        coming = "paused, ill" if line.ill_on else "paused"
    elif line.due_on is None:
        coming = "nothing planned"
    elif line.due_on < today:
        coming = f"due since {day_words(line.due_on)}"
    else:
        coming = f"trains {day_words(line.due_on, today)}"
    if line.ill_on and not line.paused:
        coming += " (was ill, begins lighter)"
    last = f", last {day_words(line.last_workout, today)}" if line.last_workout else ""
    held = f"; aside: {escape(listed(line.held))}" if line.held else ""
    programme = f" ({escape(line.programme)})" if line.programme else ""
    return f"{escape(line.name)}{programme}: {coming}{last}{held}"


def matters(line: ClientLine) -> list[str]:
    """Say what of a client waits for the coach, open alerts of one matter once: "2 questions"."""
    counts = Counter(line.open_alerts)
    release = ["your word that training may begin"] if line.to_release else []
    return release + [
        f"{count} questions" if reason == "question" and count > 1 else matter(reason, exercise)
        for (reason, exercise), count in counts.items()
    ]


def matter(reason: str, exercise: str | None) -> str:
    """Say an open alert in a word or two."""
    if reason == "stall" and exercise is None:
        return "stall of several exercises"
    named = {"missed": "missed workouts", "unreachable": "cannot be reached"}.get(reason, reason)
    return f"{named} ({exercise})" if exercise else named
