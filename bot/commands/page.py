"""`page`: the chat in a browser, as two phones on one desk."""

import asyncio
import os
from pathlib import Path

from bot.page.scenes import scenes
from bot.page.serving import has_browser, serve_page
from bot.settings import load_settings


def page_command(file: Path | None, port: int, *, browser: bool) -> int:
    """Serve the page until it is ended; return the exit status. Raises OperatorFault.

    It shows the people of the roster or script `file`, else those of the database, else the demo's. Port 0 is
    any that is free. It opens by itself where there is a browser, unless not wanted.
    """
    found = scenes("" if file is not None else load_settings().database, file)
    asyncio.run(serve_page(found, port, opens=browser and has_browser(os.environ)))
    return 0
