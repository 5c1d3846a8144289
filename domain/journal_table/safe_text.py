"""Text in a table's cell, such that no spreadsheet takes it for a formula, and such that it comes back.

A cell that begins as a formula does is written with an apostrophe before it, which makes a spreadsheet take
it as text. Which characters begin a formula: OWASP, "CSV Injection",
https://owasp.org/www-community/attacks/CSV_Injection, the full-width forms included.
"""

from domain.expressions import Expression

_FORMULA = "=+\\-@\t\r\n＝＋－＠"  # noqa: RUF001 the full-width forms are meant
_TO_WRITE = Expression(rf"'*[{_FORMULA}]")
_WRITTEN = Expression(rf"'+[{_FORMULA}]")


def guarded(text: str) -> str:
    """Return what is written for `text`."""
    return f"'{text}" if _TO_WRITE.match(text) else text


def unguarded(cell: str) -> str:
    """Return the text that was written as `cell`."""
    return cell[1:] if _WRITTEN.match(cell) else cell
