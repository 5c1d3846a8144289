"""Tests of the page that need no browser."""
