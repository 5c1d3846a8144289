"""The checkout as a whole: what lies in it, what it may not say, what is installed for it."""

import ast
import re
import sys
import tomllib
from collections.abc import Iterator
from functools import cache
from importlib.metadata import packages_distributions, requires, version
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from tests.rooms import ROOMS, imports, read_rooms

ROOT = Path(__file__).resolve().parent.parent
PYPROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))

TEXTS = {".jsonl", ".json", ".md", ".py", ".toml", ".txt", ".yml", ""}
OWN = Path(__file__).relative_to(ROOT)

LONGEST = 400

CHECKS = {"raises", "warns", "fail", "timeout"}
"""Calls that fail a test, besides assert: pytest's, and asyncio's for what must happen in time."""


def own_files() -> Iterator[Path]:
    """Yield the project's own text files, by their path from the root."""
    folders = [ROOT / name for name in (*ROOMS, ".ci", ".setup")]
    paths = [*ROOT.glob("*.*"), *(path for folder in folders for path in folder.rglob("*"))]
    for path in paths:
        is_ours = path.name != ".git" and "__pycache__" not in path.parts
        if is_ours and path.is_file() and path.suffix in TEXTS:
            yield path.relative_to(ROOT)


@cache
def own_texts() -> dict[Path, str]:
    """Return what stands in all of them but this one."""
    return {path: (ROOT / path).read_text("utf-8") for path in own_files() if path != OWN}


def test_the_top_level_holds_the_rooms_and_three_files_only() -> None:
    entries = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")} - {"__pycache__"}
    assert entries <= {*ROOMS, "README.md", "DEVELOPERS.md", "pyproject.toml"}
    assert entries >= {*ROOMS, "README.md", "pyproject.toml"}


@pytest.mark.parametrize(
    ("what", "pattern"),
    [
        ("a path of somebody's machine", r"(?<![\w.}])/(work|root|tmp|home|Users)/\w"),
        ("the host of a package registry", r"pypi\.org|pythonhosted|registry\.npmjs|deb\.debian"),
        ("work left over", r"\b(TODO|FIXME|XXX|HACK)\b"),
    ],
)
def test_the_files_do_not_hold(what: str, pattern: str) -> None:
    found = [
        f"{path}:{number}: {what}: {line.strip()}"
        for path, text in own_texts().items()
        if re.search(pattern, text)  # the whole at once, which is many times as fast as line by line
        for number, line in enumerate(text.splitlines(), start=1)
        if re.search(pattern, line)
    ]
    assert found == []


def test_no_module_has_more_jobs_than_fit_on_a_few_pages() -> None:
    files = {path: source.count("\n") for path, source in read_rooms(ROOT).items()}
    too_long = {
        path: lines for path, lines in files.items() if lines > LONGEST and not path.startswith("tests/")
    }
    assert too_long == {}


def asserts(function: ast.AST, helpers: set[str]) -> bool:
    """Return whether a function checks something itself, or calls a helper that does."""
    return any(
        isinstance(node, ast.Assert) or (isinstance(node, ast.Call) and called(node) in {*CHECKS, *helpers})
        for node in ast.walk(function)
    )


def called(node: ast.Call) -> str:
    """Return the last part of the name that is called, empty where it has none."""
    match node.func:
        case ast.Name(id=name) | ast.Attribute(attr=name):
            return name
        case _:
            return ""


def functions(tree: ast.AST) -> Iterator[ast.FunctionDef | ast.AsyncFunctionDef]:
    return (node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef))


def test_every_test_asserts_something() -> None:
    trees = {
        path: ast.parse(source) for path, source in read_rooms(ROOT).items() if path.startswith("tests/")
    }
    helpers = {
        each.name
        for tree in trees.values()
        for each in functions(tree)
        if not each.name.startswith("test_") and asserts(each, set())
    }
    tests = [
        (f"{path}:{each.lineno}: {each.name}", each)
        for path, tree in trees.items()
        if Path(path).name.startswith("test_")
        for each in functions(tree)
        if each.name.startswith("test_")
    ]
    assert len(tests) > len(trees)
    assert [name for name, each in tests if not asserts(each, helpers)] == []


def test_a_test_that_asserts_nothing_is_found() -> None:
    assert not asserts(ast.parse("def test_it():\n    result = run()\n    print(result)"), {"check"})
    assert asserts(ast.parse("def test_it():\n    check(run())"), {"check"})
    assert asserts(ast.parse("def test_it():\n    with pytest.raises(ValueError):\n        run()"), set())


def test_all_that_is_installed_for_the_project_is_pinned() -> None:
    lines = (ROOT / ".setup" / "constraints.txt").read_text("utf-8").splitlines()
    pins = dict(line.split("==") for line in lines if not line.startswith("#"))
    pinned = {str(canonicalize_name(name)): release for name, release in pins.items()}
    needed = needed_distributions("kilopost[test]", *PYPROJECT["build-system"]["requires"]) - {"kilopost"}
    assert {name: version(name) for name in needed} == pinned


def needed_distributions(*wanted: str) -> set[str]:
    """Return the names of the distributions that the requirements bring in here, themselves included."""
    names: set[str] = set()
    seen: set[str] = set()
    waiting = list(wanted)
    while waiting:
        text = waiting.pop()
        if text in seen:
            continue
        seen.add(text)
        one = Requirement(text)
        names.add(canonicalize_name(one.name))
        for each in requires(one.name) or ():
            marker = Requirement(each).marker
            if marker is None or any(marker.evaluate({"extra": extra}) for extra in ("", *one.extras)):
                waiting.append(each)
    return names


def test_each_room_imports_only_what_its_command_installs() -> None:
    owners = packages_distributions()
    run = {canonicalize_name(Requirement(each).name) for each in PYPROJECT["project"]["dependencies"]}
    test = {
        canonicalize_name(Requirement(each).name)
        for each in PYPROJECT["project"]["optional-dependencies"]["test"]
    }
    undeclared = [
        f"{each.path}:{each.line}: {each.root}"
        for path, source in read_rooms(ROOT).items()
        for each in imports(path, source)
        if each.root not in {*ROOMS, *sys.stdlib_module_names}
        and not {canonicalize_name(name) for name in owners.get(each.root, ())}
        & (run | test if path.startswith("tests/") else run)
    ]
    assert undeclared == []
