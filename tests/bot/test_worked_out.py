"""What is worked out from the sources, kept between runs: the same as made anew, and never what is stale."""

import marshal
import os
import subprocess
import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest

from bot.worked_out import MOST, code_of, load, save
from domain import expressions, own_data
from domain.reading import pattern_parts
from domain.reading.pattern_parts import Part
from domain.worked_out import Kept

ROOT = Path(__file__).resolve().parent.parent.parent
MAKER = pattern_parts.__name__


def read_squat(cache: Path, **more: str) -> str:
    """Return what a run of its own prints that keeps its compiled modules, and results, in `cache`."""
    environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    run = subprocess.run(
        [sys.executable, "-m", "bot", "read", "squat 60 x 8, then I skipped the dips, why no target?"],
        cwd=ROOT,
        env={**environment, "PYTHONPYCACHEPREFIX": str(cache), **more},
        capture_output=True,
        text=True,
        check=True,
    )
    return run.stdout


def test_a_second_run_takes_what_the_first_has_worked_out(tmp_path: Path) -> None:
    assert read_squat(tmp_path, PYTHONDONTWRITEBYTECODE="1") == read_squat(tmp_path)
    (file,) = tmp_path.rglob("*.results")
    kept = load(file)
    assert len(kept) > 100
    everything: dict[tuple[str, Any], Any] = dict(kept)
    makers = {maker for maker, _ in everything}
    assert makers == {MAKER, expressions.__name__, own_data.__name__}
    for (maker, source), result in everything.items():
        if maker == MAKER:
            text, lists = source
            made = pattern_parts._compiled(text, dict(lists))  # anew
            assert [Part._make(way) for way in result] == list(made)
        elif maker == expressions.__name__:
            pattern, flags, _ = source
            assert result == expressions.codes_of(pattern, flags)
        else:
            assert result == tomllib.loads(source)
    # Where what is kept is changed, the next run shows that it took it: no turn of phrase is found.
    before = read_squat(tmp_path)
    codes, _ = marshal.loads(file.read_bytes())  # noqa: S302 written by this test
    word = frozenset({"nobodysaysthis"})
    never = (("nobodysaysthis ", word, (word,), False, True),)
    changed = {key: never if key[0] == MAKER else result for key, result in kept.items()}
    file.write_bytes(marshal.dumps((codes, changed)))
    assert read_squat(tmp_path) != before


def test_what_other_code_has_made_is_not_taken(tmp_path: Path) -> None:
    file = tmp_path / "k.results"
    kept: Kept = {(MAKER, "squat"): (1,)}
    save(file, {}, kept)
    assert load(file) == kept
    codes, _ = marshal.loads(file.read_bytes())  # noqa: S302 written by this test
    assert codes == {MAKER: code_of(MAKER)}
    file.write_bytes(marshal.dumps(({MAKER: code_of("domain.verdict")}, kept)))
    assert load(file) == {}


@pytest.mark.parametrize("content", [b"", b"no such thing", marshal.dumps(3), marshal.dumps((1, 2))])
def test_a_file_that_cannot_be_read_is_as_none(content: bytes, tmp_path: Path) -> None:
    file = tmp_path / "k.results"
    assert load(file) == {}
    file.write_bytes(content)
    assert load(file) == {}


def test_where_nothing_can_be_written_nothing_is_kept_and_nothing_left_over(tmp_path: Path) -> None:
    in_the_way = tmp_path / "file"
    in_the_way.write_text("")
    save(in_the_way / "k.results", {}, {(MAKER, "squat"): (1,)})
    save(tmp_path / "k.results", {(MAKER, "squat"): (1,)}, {})
    assert list(tmp_path.iterdir()) == [in_the_way]


def test_what_this_run_had_no_use_for_is_let_go_once_there_is_too_much(tmp_path: Path) -> None:
    old: Kept = {(MAKER, number): (number,) for number in range(MOST)}
    new: Kept = {(MAKER, "squat"): (1,)}
    save(tmp_path / "k.results", old, new)
    assert load(tmp_path / "k.results") == new
