"""Words for pain, joint trouble and warning signs.

They never name a condition, never say that anything is harmless, and always send to somebody qualified.
"""

from bot.markup import bold, escape
from bot.wording.reader import Reader, listed
from domain.parts import Safety

SEE_SOMEBODY = (
    "Please have it looked at by a qualified professional (a doctor or a physiotherapist) "
    "before you load it again."
)

COACH_CAUTION = (
    "Ask about pain or joint trouble first. A joint that hurts is a matter for a qualified professional "
    "(a doctor or a physiotherapist) before it is loaded again."
)


def urgent_words() -> str:
    """Say what to do at once, and nothing else."""
    return (
        f"{bold('Stop now.')} What you describe can be a sign of something serious.\n"
        f"{bold('Call your local emergency number now')}, and tell someone near you, "
        "so that you are not alone.\n"
        "I am a program: I cannot tell what it is, and I cannot call anyone for you. "
        "Your coach gets your message too, but do not wait for an answer."
    )


def safety_words(part: Safety, reader: Reader) -> str:
    """Say to leave what hurts and whom to see; to a coach, the same caution as advice."""
    if reader.is_coach:
        return COACH_CAUTION
    if part.where is None:
        named = [part.exercise, *part.also] if part.exercise else []
        of, leave = (
            (bold(listed(named)) if named else "it"),
            "the exercise" if len(named) < 2 else "that exercise",
        )
        return f"Is there any pain or joint trouble with {of}? If there is, leave {leave}. " + SEE_SOMEBODY
    place = place_words(part.where, part.side)
    aside = part.held or ((part.exercise,) if part.exercise else ())
    held = (
        f"I have set {bold(listed(aside))} aside: leave {'it' if len(aside) == 1 else 'them'}, "
        "and do not try to see how it feels."
        if aside
        else "Leave whatever brings it on."
    )
    also = (
        f"\n{escape(listed(part.also))} may load the same place: leave what you feel there."
        if part.also
        else ""
    )
    hurts = "it hurts" if part.where == "other" else f"your {place} hurts"
    return (
        f"Sorry to hear that {hurts}. {held}{also}\n{SEE_SOMEBODY} "
        "If it is severe, came suddenly or gets worse, call your local emergency services. "
        "Your coach hears of it now."
    )


def place_words(where: str, side: str | None) -> str:
    """Say a place of the body."""
    named = {"other": "body"}.get(where, where)
    match side:
        case "both":
            return f"{escape(named)} on both sides"
        case "left" | "right":
            return f"{side} {escape(named)}"
        case _:
            return escape(named)
