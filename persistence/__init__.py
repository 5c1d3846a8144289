"""The tables, their migrations, and two verbs: load one person's state, save one outcome."""
