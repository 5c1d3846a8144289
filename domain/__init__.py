"""Every rule of the trade, as pure functions and frozen values.

No clock, no database, no chat, no randomness and no logging lives here: time comes in as an argument, and
what is decided goes out as a value.
"""
