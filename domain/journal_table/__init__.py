"""A client's journal as a table in a text file, one row a set, and back."""
