"""Tables: one question for every row."""
