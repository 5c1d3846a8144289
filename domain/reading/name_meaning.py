"""What a run of stems means: an exercise of the plan, several that fit equally, or one of the catalogue.

A whole name of the plan goes first, then its short forms, then a part of it. Finding runs is done elsewhere.
"""

from dataclasses import dataclass
from typing import Any

from domain.exercises import lookup
from domain.reading.exercise_words import (
    ALONE,
    DISTINCT_IMPLEMENTS,
    FUNCTION_WORDS,
    HARMLESS,
    IMPLEMENTS,
    LOAD_WORDS,
    WEAK,
)
from domain.reading.name_stems import Stems, catalogue_names, movements, stems_of


@dataclass(frozen=True, slots=True)
class KnownName:
    """An exercise of the plan: its name, the stems of all its names, the core of its own name."""

    name: str
    stems: tuple[frozenset[str], ...]
    core: frozenset[str]
    head: str


class Meanings:
    """What stems mean beside one plan. Built once for each plan."""

    def __init__(self, plan: tuple[str, ...]) -> None:
        self.known: list[KnownName] = []
        self._exact: dict[Stems, list[str]] = {}
        self._alias: dict[Stems, list[str]] = {}
        self._core: dict[frozenset[str], list[str]] = {}
        for name in plan:
            stems = stems_of(name)
            entry = lookup(name)
            others = [stems_of(n) for n in (entry.name, *entry.names)] if entry else []
            core = [s for s in stems if s not in WEAK] or list(stems)
            known = KnownName(
                name, tuple(frozenset(s) for s in (stems, *others)), frozenset(core), core[-1] if core else ""
            )
            self.known.append(known)
            _append(self._exact, stems, name)
            for other in others:
                _append(self._alias, other, name)
            _append(self._core, known.core, name)
            for other in others:
                _append(self._core, frozenset(s for s in other if s not in WEAK), name)
        self._cache: dict[Stems, tuple[tuple[str, ...], bool] | None] = {}

    def is_whole(self, stems: Stems) -> bool:
        """Return whether stems are a whole name of the plan."""
        return stems in self._exact

    def of(self, window: Stems) -> tuple[tuple[str, ...], bool] | None:
        """Return what a run of stems can mean, and whether it is a whole name; None where it means
        nothing."""
        if window in self._cache:
            return self._cache[window]
        if len(self._cache) > 4096:
            self._cache.clear()
        hit = self._look_up(window)
        self._cache[window] = hit
        return hit

    def _look_up(self, window: Stems) -> tuple[tuple[str, ...], bool] | None:
        if len(window) == 1 and window[0] in FUNCTION_WORDS:
            return None
        if len(window) == 1 and window[0] in IMPLEMENTS:
            alone = [
                k.name for k in self.known if window[0] in DISTINCT_IMPLEMENTS and window[0] in k.stems[0]
            ]
            return (tuple(alone), False) if len(alone) == 1 else None
        for table in (self._exact, self._alias):
            if window in table:
                return tuple(table[window] if table is self._exact else self._alias_fits(window)), True
        meant = catalogue_names().get(window)
        if meant is not None and len(window) > 1 and window[0] == "bodyweight" and stems_of(meant) == window:
            return (meant,), True
        if len(window) > 1 and window[0] == "bar":
            with_a_barbell = self._look_up(("barbell", *window[1:]))
            if with_a_barbell is not None and any(k.name in with_a_barbell[0] for k in self.known):
                return with_a_barbell
        stripped = tuple(s for s in window if s not in LOAD_WORDS)
        if not stripped:
            return None
        core = frozenset(s for s in window if s not in WEAK) or frozenset(stripped)
        if core in self._core:
            hits = dict.fromkeys(self._core[core])
            if not any(k.core == core for k in self.known):
                # Only another name of the exercise is whole: its words may fit others too.
                hits |= dict.fromkeys(k.name for k in self.known if core <= k.stems[0])
            return tuple(hits), True
        one_arm = tuple(s for s in stripped if s not in {"one", "single", "arm"}) if "arm" in stripped else ()
        if one_arm:
            known = [k for k in self.known if k.head == one_arm[-1] and set(one_arm) <= k.stems[0]]
            if len(known) == 1 and not known[0].stems[0] & {"barbell", "machine"}:
                return (known[0].name,), False
        elsewhere = catalogue_names().get(window)
        said = frozenset(stripped)
        fits = [k for k in self.known if said <= k.stems[0]]
        if not fits and len(window) == 1 and elsewhere is not None and window[0] in movements():
            # "bridges" are the catalogue's, though another name of the plank is "prone bridge".
            return (elsewhere,), True
        if not fits:
            fits = [k for k in self.known if any(said <= stems for stems in k.stems)]
        if not fits and len(core) < len(said):
            fits = [k for k in self.known if any(core <= stems for stems in k.stems)]
        by_head = [k for k in fits if k.head == stripped[-1]]
        if elsewhere is not None:
            if by_head:
                return tuple(k.name for k in by_head), False
            if fits and len(window) == 1:
                partner = ALONE.get(window[0])
                usual = [k for k in fits if partner is None or partner in k.core]
                return tuple(k.name for k in usual) or (*(k.name for k in fits), elsewhere), False
            alike = self._with_another_implement(said, elsewhere) if not fits else None
            if alike is not None:
                return (alike,), False
            if not (fits and window[-1] not in movements()):
                # "Close grip" only describes, and may describe one of the plan.
                return (elsewhere,), True
        if len(fits) > 1 and len(by_head) == 1:
            return (by_head[0].name,), False
        if fits:
            return tuple(k.name for k in fits), False
        bare = tuple(s for s in window if s not in HARMLESS)
        if bare and bare != window:
            return self._look_up(bare)
        if len(window) == 1 and window[0] in movements():
            # "row" is an exercise for certain, and none of this plan: never the one whose turn it is.
            return (), False
        return None

    def _with_another_implement(self, said: frozenset[str], elsewhere: str) -> str | None:
        """Return the one exercise of the plan that is done as one of the catalogue is, with something else,
        where that was not said: "lat raise" in a plan with "Lateral raise machine"."""
        movement = frozenset(stems_of(elsewhere)) - IMPLEMENTS
        alike = [k for k in self.known if k.stems[0] - IMPLEMENTS == movement]
        return alike[0].name if len(alike) == 1 and said & IMPLEMENTS <= alike[0].stems[0] else None

    def _alias_fits(self, window: Stems) -> list[str]:
        """Return what a short form means; a lone word that only describes ("incline") fits others, too, whose
        own name has it, and one that tells the movement ("pulldown") where the plan's name is narrower."""
        names = self._alias[window]
        if len(window) > 1 or window[0] in ALONE:
            return names
        alike = [k.name for k in self.known if k.head == window[0]]
        if alike:
            usual = any((entry := lookup(name)) is not None and entry.name == name for name in names)
            return names if usual else list(dict.fromkeys((*names, *alike)))
        return [k.name for k in self.known if k.name in names or window[0] in k.stems[0]]


def _append(table: dict[Any, list[str]], key: object, name: str) -> None:
    names = table.setdefault(key, [])
    if name not in names:
        names.append(name)
