"""Tests of the rules of the trade: tables of cases, and laws as properties."""
