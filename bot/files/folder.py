"""A folder into which the pictures and files of a played or local chat go."""

import tempfile
from pathlib import Path

from bot.channel import Attachment


class Folder:
    """Keeps attachments, numbered in the order in which they came."""

    def __init__(self, path: Path | None = None) -> None:
        """Keep them at `path`; without one, in a fresh folder among the system's temporary ones."""
        self._path = path
        self._kept = 0

    def keep(self, attachment: Attachment) -> Path:
        """Write an attachment; return where it is. Raises OSError."""
        if self._path is None:
            self._path = Path(tempfile.mkdtemp(prefix="kilopost-"))
        self._path.mkdir(parents=True, exist_ok=True)
        self._kept += 1
        kept = self._path / f"{self._kept:03}-{attachment.name}"
        kept.write_bytes(attachment.content)
        return kept
