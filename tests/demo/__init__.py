"""The demo, and what the README shows of the whole."""
