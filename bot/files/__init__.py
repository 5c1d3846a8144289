"""Files that are sent: each written, off the event loop, from what stands in the store at that moment."""
