"""Pictures of progress, drawn with matplotlib in a style of the house's own."""
