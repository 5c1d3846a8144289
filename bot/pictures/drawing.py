"""What of a message can be drawn, under which name, and its PNG.

matplotlib is imported as the first is drawn.
"""

from bot.wording.enclosed import file_name
from domain.parts import Part
from domain.pictures import ProgrammeProgress, Progress, RosterProgress

Drawable = Progress | ProgrammeProgress | RosterProgress


def drawable(parts: tuple[Part, ...]) -> Drawable | None:
    """Return what of a message is drawn; several exercises in one picture, and None where nothing is."""
    found = [part for part in parts if isinstance(part, Drawable)]
    exercises = tuple(part for part in found if isinstance(part, Progress))
    if len(exercises) > 1:
        return ProgrammeProgress(client=exercises[0].client, programme=None, exercises=exercises)
    return found[0] if found else None


def picture_name(part: Drawable) -> str:
    """Return the name of a picture."""
    match part:
        case Progress():
            return file_name(part.client, part.exercise, ending="png")
        case ProgrammeProgress():
            return file_name(part.client, part.programme or "exercises", ending="png")
        case RosterProgress():
            return file_name("clients", "at", "a", "glance", ending="png")


def draw(part: Drawable) -> bytes:
    """Return the picture as a PNG."""
    from bot.pictures import canvas, programme, progress, roster  # noqa: PLC0415 half a second and 100 MB

    with canvas.drawing:
        match part:
            case Progress():
                picture = progress.draw_progress(part)
            case ProgrammeProgress():
                picture = programme.draw_programme(part)
            case RosterProgress():
                picture = roster.draw_roster(part)
        return picture.sheet.png()
