"""The version, declared once."""

VERSION = "0.1.0"
