"""The edge to Telegram: what comes in, what goes out, and keeping the token out of sight.

The library python-telegram-bot serves as client, types and parser only. Its own polling moves on before an
update is safe, so the loop is ours (`polling`).
"""

import os
import sys

# The library's own way to ask for its coming behaviour: a wait given by the server is then a timedelta, and
# no warning comes with each "too many requests". It is read at the time of use, so here is early enough.
os.environ.setdefault("PTB_TIMEDELTA", "true")

# The library's HTTP client brings a command line of its own, and with it three libraries where others have
# installed them: 3 MB for nothing. Python takes None for a module that is not there.
sys.modules.setdefault("httpx._main", None)  # type: ignore[arg-type]  # typeshed knows modules only
