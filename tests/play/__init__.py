"""Conversations, played as scripts through the real desk, store and delivery."""
