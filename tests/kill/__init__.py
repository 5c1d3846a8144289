"""The proof that nothing is lost: the real bot's process, killed at random moments under traffic.

`python -m tests.kill --kills 100` is the long form; the suite runs a short one. Both print what they found.
"""
