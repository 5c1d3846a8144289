"""Tests of what is served by HTTP."""
