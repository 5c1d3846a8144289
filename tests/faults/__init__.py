"""The proof that nothing is lost where all around the bot fails: the platform, the database, the clock.

`python -m tests.faults --rounds 20` is the long form, on SQLite and then on PostgreSQL; the suite runs a
short one. Both print what they found.
"""
