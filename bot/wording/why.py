"""The answer to "why?": the verdict and the target of an exercise, each with its reason in one line."""

from typing import Any

from bot.markup import bold
from bot.wording.reader import Reader, set_words
from bot.wording.reasons import held_because, target_because, verdict_because
from bot.wording.verdict import deciding_place, where_words
from domain.explanation import Aimed, Explanation, When
from domain.target import Target
from domain.values import value_of
from domain.verdict import Verdict

WHEN: dict[When, str] = {"next set": "Next set", "next time": "Next time", "this time": "Today"}


def why_words(facts: dict[str, Any], reader: Reader) -> str:
    """Say the explanation that a notice carries."""
    return explanation_words(value_of(Explanation, facts["explanation"]), is_coach=reader.is_coach)


def explanation_words(explanation: Explanation, *, is_coach: bool = False) -> str:
    """Say why the last verdict and the target are what they are, a line each."""
    head = bold(explanation.exercise)
    if explanation.held is not None:
        return f"{head}: {held_because(*explanation.held, is_coach=is_coach)}."
    lines = [head]
    if explanation.verdict is not None:
        lines.append(judged_words(explanation.verdict, eased=explanation.eased))
    if explanation.aimed is not None:
        lines.append(aimed_words(explanation.aimed))
    return "\n".join(lines)


def judged_words(verdict: Verdict, *, eased: bool = False) -> str:
    """Say a verdict with its reason."""
    decides = deciding_place(verdict.in_order, verdict.set, verdict.before)
    which = f"set {decides} decides, " if decides > 1 else ""
    against = f" against {set_words(verdict.before)}" if verdict.before is not None else ""
    because = verdict_because(verdict.result, verdict.set, verdict.before, verdict.reason)
    best = ", and the best ever" if verdict.personal_best else ""
    purpose = ", and lighter on purpose" if eased and verdict.result in ("below", "not comparable") else ""
    where = where_words(verdict.in_order)
    return f"{which}{set_words(verdict.set)}{against}: {because}{best}{purpose}." + (
        f" {where}" if where else ""
    )


def aimed_words(aimed: Aimed) -> str:
    """Say what to aim for with its reason, or why there is nothing to aim for."""
    target = aimed.target
    aim = f" {set_words(target.as_set())}" if isinstance(target, Target) else ""
    return f"{WHEN[aimed.when]}{aim}: {target_because(aimed)}."
