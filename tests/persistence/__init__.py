"""Checks of the store, each on a real SQLite file and on a real PostgreSQL."""
