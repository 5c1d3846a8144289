"""The chat in a browser on this machine: two phones on one desk, and a clock that is moved by hand."""
