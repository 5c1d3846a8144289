"""All the words that people see. Values come in, words go out; no rule depends on what is written here."""
