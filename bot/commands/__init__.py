"""The command line: one module for each command, imported only when it is asked for."""
