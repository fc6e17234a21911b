"""From plain words to a question and its inputs; no sums."""
