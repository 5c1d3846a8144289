"""The edges: Telegram, the local chat, the clock that wakes people, delivery, wording and the command line."""
