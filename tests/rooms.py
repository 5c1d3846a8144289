"""The rule of the rooms: who may import whom. It reads source text, and finds imports wherever they stand.

Inside a function, under `if TYPE_CHECKING` or at the top, an import is an import: a circle is one even where
Python would get away with it.
"""

import ast
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path, PurePosixPath

ROOMS = ("domain", "persistence", "bot", "demo", "tests")
"""From the ground up: a room imports from itself and from those before it."""

DOMAIN_LIBRARIES = frozenset({"pydantic", "rapidfuzz", "dateparser", "orjson"})

IMPURE = frozenset(
    {
        "asyncio",
        "concurrent",
        "ctypes",
        "http",
        "logging",
        "multiprocessing",
        "os",
        "pathlib",
        "random",
        "secrets",
        "select",
        "shutil",
        "socket",
        "sqlite3",
        "subprocess",
        "tempfile",
        "threading",
        "time",
        "urllib",
        "uuid",
    }
)
"""What of the standard library would bring a clock, a disk, a network, chance or a log into the domain."""

IMPURE_METHODS = frozenset({"now", "today", "utcnow", "write_bytes", "write_text"})
IMPURE_FUNCTIONS = frozenset({"input", "open", "print"})

HOMES = {
    "sqlalchemy": "persistence",
    "alembic": "persistence",
    "psycopg": "persistence",
    "sqlite3": "persistence",
    "telegram": "bot/telegram",
    "uvicorn": "bot/web",
}
"""Libraries with a home, outside of which only tests may use them."""


@dataclass(frozen=True, slots=True)
class Import:
    """An import of `target`, a dotted name, in the file `path`."""

    path: str
    line: int
    target: str

    @property
    def root(self) -> str:
        """The package that is imported from."""
        return self.target.partition(".")[0]


def read_rooms(root: Path) -> dict[str, str]:
    """Return the source of every module of the rooms under `root`, by its path from there."""
    files = (path for room in ROOMS for path in sorted((root / room).rglob("*.py")))
    return {path.relative_to(root).as_posix(): path.read_text("utf-8") for path in files}


def faults(files: Mapping[str, str]) -> list[str]:
    """Return where `files`, source by path, break the rule of the rooms, one line each."""
    found = [each for path, source in files.items() for each in imports(path, source)]
    return [
        *(f"{each.path}:{each.line}: {fault}" for each in found if (fault := fault_of(each))),
        *(f"{path}:{line}: domain has no {name}()" for path, line, name in impure_calls(files)),
        *too_many_homes(found, "dateparser"),
        *circles(files, found),
    ]


@cache
def imports(path: str, source: str) -> tuple[Import, ...]:
    """Return every import in `source`; of `from a import b` the target is `a.b`."""
    return tuple(_imports(path, source))


def _imports(path: str, source: str) -> Iterator[Import]:
    package = PurePosixPath(path).parent.parts
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            for name in node.names:
                yield Import(path, node.lineno, name.name)
        elif isinstance(node, ast.ImportFrom):
            above = package[: len(package) - node.level + 1] if node.level else ()
            for name in node.names:
                yield Import(path, node.lineno, ".".join([*above, *filter(None, [node.module]), name.name]))


def fault_of(each: Import) -> str | None:
    """Return what is wrong with one import by itself."""
    room = each.path.partition("/")[0]
    if each.root in ROOMS and ROOMS.index(each.root) > ROOMS.index(room):
        return f"{room} imports upwards: {each.target}"
    home = HOMES.get(each.root)
    if home is not None and room != "tests" and not each.path.startswith(f"{home}/"):
        return f"{each.root} belongs in {home} only"
    if room == "domain" and each.root not in ROOMS:
        if each.root in IMPURE:
            return f"domain is pure and has no {each.root}"
        if each.root not in sys.stdlib_module_names | DOMAIN_LIBRARIES:
            return f"domain does not use {each.root}"
    return None


def impure_calls(files: Mapping[str, str]) -> Iterator[tuple[str, int, str]]:
    """Yield path, line and name of each call in the domain that reads a clock, a file or a terminal."""
    for path, source in files.items():
        if path.startswith("domain/"):
            for node in ast.walk(ast.parse(source)):
                match node:
                    case ast.Call(func=ast.Attribute(attr=name)) if name in IMPURE_METHODS:
                        yield path, node.lineno, name
                    case ast.Call(func=ast.Name(id=name)) if name in IMPURE_FUNCTIONS:
                        yield path, node.lineno, name


def too_many_homes(found: list[Import], library: str) -> list[str]:
    """Return a fault where more than one file of the domain imports `library`."""
    homes = sorted({each.path for each in found if each.root == library and each.path.startswith("domain/")})
    return [f"{library} is in more than one file: {', '.join(homes)}"] if len(homes) > 1 else []


def circles(files: Mapping[str, str], found: list[Import]) -> list[str]:
    """Return the first circle of modules that import each other, as one fault."""
    modules = {module_name(path): path for path in files}
    graph: dict[str, set[str]] = {module: set() for module in modules}
    for each in found:
        target = each.target if each.target in modules else each.target.rpartition(".")[0]
        if target in modules:
            graph[module_name(each.path)].add(target)
    try:
        TopologicalSorter(graph).prepare()
    except CycleError as circle:
        return [f"modules import each other in a circle: {' <- '.join(circle.args[1])}"]
    return []


def module_name(path: str) -> str:
    """Return the dotted name of the module in the file `path`; a package is named by its folder."""
    parts = PurePosixPath(path).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
