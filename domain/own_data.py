"""The tables of the trade that stand in files beside the modules, as TOML."""

import tomllib
from importlib.resources import files
from typing import Any

from domain.worked_out import worked_out


def own_data(name: str) -> dict[str, Any]:
    """Return what stands in the file of that name, to be read only."""
    text = files("domain").joinpath(name).read_text(encoding="utf-8")
    return worked_out(__name__, text, lambda: tomllib.loads(text))
