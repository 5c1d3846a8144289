"""The bar under which a command does long work: how much of how much is done, and how long it still takes.

It stands on standard error, so that what a command prints can be sent on.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeRemainingColumn


@contextmanager
def bar(of: str) -> Iterator[Callable[[int, int], None]]:
    """Show a bar meanwhile; `of` is what is counted. It is moved by how many are done, of how many."""
    columns = (TextColumn(of), BarColumn(), MofNCompleteColumn(), TimeRemainingColumn())
    with Progress(*columns, console=Console(stderr=True)) as progress:
        task = progress.add_task("", total=None)

        def move(done: int, total: int) -> None:
            progress.update(task, completed=done, total=total)

        yield move
