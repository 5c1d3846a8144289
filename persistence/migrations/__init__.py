"""The steps that build the tables, one file a step, from an empty database to the present."""

HEAD = "0011"
"""The latest step. A start on a database that stands here already need not load Alembic at all."""
