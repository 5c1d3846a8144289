"""A small Bot API server of the tests' own, on loopback HTTP.

It speaks the protocol of https://core.telegram.org/bots/api as far as the bot needs it. Where the description
there is silent (what is forgotten on which offset, who gets the 409, the exact words of an error), it follows
the published source of the real server (github.com/tdlib/telegram-bot-api, Client.cpp) and of the library
beneath it (github.com/tdlib/td).

`server.BotApi` is the way in. It runs in a thread, so that the bot may run in the same process or in another.
"""
