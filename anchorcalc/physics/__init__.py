"""The physics under every answer: SI numbers or numpy arrays in, the same out, and nothing imported but numpy."""
