"""Tests of the edges."""
