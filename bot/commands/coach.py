"""`coach`: bring in a coach."""

from bot.commands.load import bring_in
from bot.roster import read_roster


def coach_command(name: str, zone: str, unit: str) -> int:
    """Bring in a coach of that name; return the exit status. Raises OperatorFault."""
    bring_in(
        read_roster({"coaches": [{"name": name, "zone": zone, "unit": unit}], "sheets": [], "clients": []})
    )
    return 0
