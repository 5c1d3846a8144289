"""A coach's programme as plain text, the way it would be written on paper: read, and written out.

The structure that a sheet means is `domain.programme`; what people are told about a sheet is worded in `bot`.
"""

from domain.sheet.reader import read_sheet
from domain.sheet.result import Fault, FaultCode, Note, NoteCode, SheetResult
from domain.sheet.writer import write_sheet

__all__ = ["Fault", "FaultCode", "Note", "NoteCode", "SheetResult", "read_sheet", "write_sheet"]
