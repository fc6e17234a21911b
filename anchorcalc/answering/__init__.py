"""From what was given to an answer: the gate, the ends of a range, the answer and its texts."""
