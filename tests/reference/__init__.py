"""Checks from outside: published values, worked examples and general-purpose libraries, each with its source."""
