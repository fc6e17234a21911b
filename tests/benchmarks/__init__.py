"""Measurements: what is fast enough, and how often a rule errs."""
