"""Tests of the edge to Telegram, through the real client and a Bot API server of our own."""
