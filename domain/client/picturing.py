"""Pictures of how it has gone: asked for by the client, or by the coach of this client."""

from domain.actions import Show
from domain.client.draft import Draft
from domain.client.progress import programme_progress_of, progress_of
from domain.client.why import exercises_known
from domain.parts import Notice, Part
from domain.reading import Reading, exercises_named, shows, wants_picture, without_picture


def take_picture(draft: Draft, reading: Reading, text: str) -> bool:
    """Answer a wish for a picture; return whether it was one."""
    is_wish = wants_picture(text)
    if reading.sets or reading.open or not (is_wish or (shows(text) and not reading.wants)):
        return False
    names = exercises_named(without_picture(text), exercises_known(draft), draft.client.own_names)
    if not is_wish and not names:
        return False
    draft.say(drawn(draft, names))
    return True


def show_coach(draft: Draft, text: str) -> None:
    """Send the coach a picture of the exercises that `text` names of this client, or without any, of all."""
    names = exercises_named(text, exercises_known(draft), draft.client.own_names)
    draft.note_meant("exercise", names)
    draft.tell_coach(drawn(draft, names), weight="answer")


def drawn(draft: Draft, names: tuple[str, ...]) -> Part:
    """Return what is to be drawn of one exercise or of several; of the whole programme where none is."""
    found: Part | None = (
        progress_of(draft.state, names[0], draft.today)
        if len(names) == 1
        else programme_progress_of(draft.state, draft.today, names)
    )
    exercise = names[0] if len(names) == 1 else None
    facts = {"client": draft.client.name, "exercise": exercise}
    return found or Notice(topic="nothing to draw", facts=facts)


def picture_button(draft: Draft, exercise: str | None = None) -> tuple[Show, ...]:
    """Return the coach's button for the picture of an exercise, or of all; none where nothing is done yet."""
    done = {entry.set.exercise for entry in draft.state.entries}
    if not done or (exercise is not None and exercise not in done):
        return ()
    return (Show(client=draft.client.number, exercise=exercise),)
