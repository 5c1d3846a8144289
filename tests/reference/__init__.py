"""Checks from outside: published values, worked examples, general-purpose libraries, each with its source."""
