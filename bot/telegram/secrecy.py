"""Keeps the token out of every log, whoever writes it and however deep in a traceback it stands.

The Bot API has the token in the address of each request, and the HTTP client logs addresses; the library even
puts the token into the words of an error.
"""

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any, Final

SHOWN: Final = "[token]"

_NOISY: Final = ("httpx", "httpcore")


@contextmanager
def hidden_in_logs(token: str) -> Iterator[None]:
    """While this lasts, what is logged anywhere in the process shows a mark in the token's place.

    The HTTP client's own lines, one for each request, are kept to warnings.
    """
    secret = token.partition(":")[2] or token
    make_record = logging.getLogRecordFactory()
    levels = {name: logging.getLogger(name).level for name in _NOISY}

    def make_clean_record(*args: Any, **kwargs: Any) -> logging.LogRecord:
        record = make_record(*args, **kwargs)
        return _cleaned(record, secret) if secret else record

    logging.setLogRecordFactory(make_clean_record)
    for name in _NOISY:
        logging.getLogger(name).setLevel(logging.WARNING)
    try:
        yield
    finally:
        logging.setLogRecordFactory(make_record)
        for name, level in levels.items():
            logging.getLogger(name).setLevel(level)


def _cleaned(record: logging.LogRecord, secret: str) -> logging.LogRecord:
    message = record.getMessage()
    if secret in message:
        record.msg, record.args = message.replace(secret, SHOWN), None
    if record.exc_info:
        traceback = logging.Formatter().formatException(record.exc_info)
        if secret in traceback:
            record.exc_info, record.exc_text = None, traceback.replace(secret, SHOWN)
    return record
