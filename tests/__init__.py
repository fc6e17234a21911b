"""Tests of anchorcalc."""
