"""Asking what listens on this machine, in plain HTTP."""

import ssl
from typing import Any

import httpx

NOBODY = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
"""Trusts no certificate. Loading those that are trusted elsewhere takes longer than most tests that ask."""


def client(**more: Any) -> httpx.AsyncClient:
    """Return a client of httpx, with `more` of its own settings."""
    return httpx.AsyncClient(verify=NOBODY, **more)
