"""Regular expressions that are made ready as each is first looked for."""

import gc
import pkgutil
import re
from importlib import import_module

import pytest

import bot
import domain
import persistence
from domain import expressions
from domain.expressions import Expression


def test_nothing_is_made_ready_before_it_is_looked_for() -> None:
    """Keeping one costs nothing, so that even a source that is none shows only then."""
    broken = Expression("(")
    with pytest.raises(re.error):
        broken.search("(")


def test_an_expression_does_as_a_pattern_does() -> None:
    """Each way to look for it is the one of the standard library, with the same flags."""
    source, text = "(a)b|C", "ab cab Cab"
    mine, theirs = Expression(source, re.IGNORECASE), re.compile(source, re.IGNORECASE)
    for way in ("match", "fullmatch", "search"):
        assert str(getattr(mine, way)(text)) == str(getattr(theirs, way)(text))
    assert str(mine.match(text, 3)) == str(theirs.match(text, 3))
    assert str(mine.search(text, 3)) == str(theirs.search(text, 3))
    assert [found.span() for found in mine.finditer(text)] == [
        found.span() for found in theirs.finditer(text)
    ]
    assert mine.split(text) == theirs.split(text)
    assert mine.split(text, maxsplit=1) == theirs.split(text, maxsplit=1)
    assert mine.sub("-", text) == theirs.sub("-", text)
    assert mine.sub(lambda found: found[0].upper(), text, count=1) == "AB cab Cab"


def test_every_expression_of_the_program_is_one() -> None:
    """What is made ready late must not be found out late."""
    for room in (domain, persistence, bot):
        for module in pkgutil.walk_packages(room.__path__, f"{room.__name__}."):
            if not module.name.endswith("__main__") and not module.name.startswith("persistence.migrations."):
                import_module(module.name)
    gc.unfreeze()  # else what stays for good is not among all objects
    kept = [each for each in gc.get_objects() if isinstance(each, Expression) and each.pattern != "("]
    gc.freeze()
    assert len(kept) > 300
    for each in kept:
        assert each.ready == re.compile(each.pattern, each.flags)  # the same codes, groups and flags


def test_what_cannot_be_made_of_codes_is_made_as_anywhere_else(monkeypatch: pytest.MonkeyPatch) -> None:
    """What was kept may be damaged, or of another Python: the engine looks through it first."""
    for codes in (
        (b"", 0, 1, ()),
        (b"\xff\xff\xff\x7f", 32, 1, ()),
        (b"short", 32, 1, ()),
        ("no", "such", "thing"),
        None,
    ):
        monkeypatch.setattr(expressions, "worked_out", lambda *_, codes=codes: codes)
        found = Expression("(a)b").match("ab")
        assert found is not None
        assert found[1] == "a"
