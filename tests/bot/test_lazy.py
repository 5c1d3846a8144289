"""What is heavy is loaded when it is first needed, so that starting is quick and an idle bot small."""

import subprocess
import sys

import pytest

HEAVY = ("matplotlib", "numpy", "PIL", "fpdf", "dateparser", "alembic")


@pytest.mark.parametrize(
    ("module", "heavy"),
    [
        ("bot.commands.serve", (*HEAVY, "pygments", "uvicorn", "starlette", "prometheus_client")),
        ("bot.commands.chat", (*HEAVY, "pydantic_settings", "typer")),
        ("bot.commands.page", HEAVY),
        ("bot.commands.read", (*HEAVY, "sqlalchemy", "pydantic", "typer")),
    ],
)
def test_a_command_starts_without_what_is_heavy(module: str, heavy: tuple[str, ...]) -> None:
    # As the command line loads them: else each takes twice as long.
    code = "import gc, sys; gc.disable(); from bot.worked_out import keep_between_runs; keep_between_runs()\n"
    code += f"import {module}; print(*[name for name in {heavy!r} if name in sys.modules])"
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stdout.split() == []


def test_one_message_is_read_without_what_takes_options_apart() -> None:
    code = "import sys; sys.argv[1:] = ['read', '80x8']\nfrom bot.__main__ import main\ntry:\n    main()\n"
    code += "finally:\n    print(*{'typer', 'pydantic'} & sys.modules.keys(), file=sys.stderr)"
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stderr.split() == []
    assert "× 8" in ran.stdout
