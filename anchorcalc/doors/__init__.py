"""The doors: Python, plain words, the command, tables and pictures."""
