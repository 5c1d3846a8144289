"""The tests, laid out as the rooms are."""
