"""The edges: Telegram, the local chat, the clock that wakes people, delivery, wording, the commands."""
