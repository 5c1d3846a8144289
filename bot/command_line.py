"""The commands with their options. Each imports what it needs when it is asked for."""

from pathlib import Path
from typing import Annotated, Literal

import typer

app = typer.Typer(
    name="kilopost",
    help="The chat bot between a strength coach and the clients who train elsewhere.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)


@app.command()
def read(
    text: Annotated[str | None, typer.Argument(help="One message, to see what is understood.")] = None,
    *,
    jsonl: Annotated[bool, typer.Option("--jsonl", help="Requests on standard input, readings out.")] = False,
    unit: Annotated[str, typer.Option(help="The usual unit: kg or lb.")] = "kg",
) -> None:
    """Read a client's message, or a stream of requests, and say what was understood."""
    from bot.commands.read import read_command

    raise typer.Exit(read_command(text, jsonl=jsonl, unit=unit))


@app.command()
def sheet(file: Annotated[Path, typer.Argument(help="A coach's programme as a plain text file.")]) -> None:
    """Read a coach's sheet, and print what was understood or what is wrong with it."""
    from bot.commands.sheet import sheet_command

    raise typer.Exit(sheet_command(file))


@app.command()
def assess(
    file: Annotated[Path, typer.Argument(help="A table: client,date,exercise,load,unit,reps,seconds.")],
    *,
    json: Annotated[bool, typer.Option("--json", help="Print JSON lines.")] = False,
) -> None:
    """Tell from a journal kept elsewhere which exercises gain, which have stalled, since when, how surely."""
    from bot.commands.assess import assess_command

    raise typer.Exit(assess_command(file, as_json=json))


@app.command()
def play(
    file: Annotated[Path, typer.Argument(help="A script of JSON lines.")],
    *,
    json: Annotated[bool, typer.Option("--json", help="Print JSON lines.")] = False,
    database: Annotated[str | None, typer.Option(help="A database URL, in place of a fresh file.")] = None,
    files: Annotated[Path | None, typer.Option(help="The folder for pictures and files.")] = None,
) -> None:
    """Play a script of what people do, in virtual time, and print what the bot says."""
    from bot.commands.play import play_command

    raise typer.Exit(play_command(file, as_json=json, database=database, files=files))


@app.command()
def load(roster: Annotated[Path, typer.Argument(help="Coaches, sheets and clients as JSON.")]) -> None:
    """Put the people of a roster into the database."""
    from bot.commands.load import load_command

    raise typer.Exit(load_command(roster))


@app.command(name="import")
def import_journal(
    file: Annotated[Path, typer.Argument(help="An old journal: CSV, or JSON as this bot sends it.")],
    *,
    client: Annotated[str, typer.Option(help="Whose journal it is.")],
    dry_run: Annotated[bool, typer.Option(help="Only show what would be taken.")] = False,
    keep_names: Annotated[bool, typer.Option(help="Take exercises that are not known as they are.")] = False,
    month_first: Annotated[
        bool | None, typer.Option("--month-first/--day-first", help="What 03/04/2026 means in it.")
    ] = None,
    report: Annotated[
        Path | None, typer.Option(help="Where to write what is made of each row, as CSV.")
    ] = None,
) -> None:
    """Take an old journal in, or show what would be taken."""
    from bot.commands.bring_journal import Wanted, import_command

    wanted = Wanted(client, dry_run, keep_names, month_first, report)
    raise typer.Exit(import_command(file, wanted))


@app.command()
def export(
    folder: Annotated[Path, typer.Argument(help="Where to write the files.")],
    *,
    client: Annotated[list[str] | None, typer.Option(help="Whose journal; all where missing.")] = None,
    form: Annotated[Literal["csv", "json", "pdf"], typer.Option("--as", help="What to write.")] = "csv",
) -> None:
    """Write the journals of clients into a folder, a file each."""
    from bot.commands.export import export_command

    raise typer.Exit(export_command(folder, tuple(client or ()), form))


@app.command()
def chat(
    name: Annotated[str | None, typer.Option("--as", help="Who you are; a client where missing.")] = None,
    *,
    roster: Annotated[Path | None, typer.Option(help="People to try it with; nothing is kept.")] = None,
    files: Annotated[Path | None, typer.Option(help="The folder for pictures and files.")] = None,
) -> None:
    """Chat with the bot in this terminal, as a client or the coach: no token, no network."""
    from bot.commands.chat import chat_command

    raise typer.Exit(chat_command(name, roster, files))


@app.command()
def page(
    *,
    scene: Annotated[
        Path | None, typer.Option(help="A roster or a script, in place of the people of the database.")
    ] = None,
    port: Annotated[int, typer.Option(min=0, max=65535, help="Where to listen; 0 is any that is free.")] = 0,
    browser: Annotated[bool, typer.Option(help="Open it in a browser, if there is one.")] = True,
) -> None:
    """Show the chat in a browser on this machine: two phones on one desk, and a clock to move."""
    from bot.commands.page import page_command

    raise typer.Exit(page_command(scene, port, browser=browser))


@app.command()
def serve() -> None:
    """Run the bot on Telegram, with the settings from the environment."""
    from bot.commands.serve import serve_command

    raise typer.Exit(serve_command())


@app.command()
def check() -> None:
    """Look at the whole set-up, and say what to mend."""
    from bot.commands.check import check_command

    raise typer.Exit(check_command())


@app.command()
def backup(file: Annotated[Path, typer.Argument(help="Where to write it; not there yet.")]) -> None:
    """Write all of the database into one file, while the bot goes on."""
    from bot.commands.backup import backup_command

    raise typer.Exit(backup_command(file))


@app.command()
def restore(file: Annotated[Path, typer.Argument(help="A backup.")]) -> None:
    """Put a backup into the database of the settings, which has to be empty."""
    from bot.commands.backup import restore_command

    raise typer.Exit(restore_command(file))


@app.command()
def copy(to: Annotated[str, typer.Argument(help="The URL of an empty database.")]) -> None:
    """Copy all of the database into another one: to move from SQLite to PostgreSQL, or back."""
    from bot.commands.backup import copy_command

    raise typer.Exit(copy_command(to))


@app.command()
def coach(
    name: Annotated[str, typer.Argument(help="The coach's name.")],
    *,
    zone: Annotated[str, typer.Option(help="Where the coach lives, as an IANA zone.")] = "UTC",
    unit: Annotated[str, typer.Option(help="The coach's unit: kg or lb.")] = "kg",
) -> None:
    """Bring in a coach: prints the code with which the coach opens the chat."""
    from bot.commands.coach import coach_command

    raise typer.Exit(coach_command(name, zone, unit))
