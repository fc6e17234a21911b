"""Units: what may be written, what is shown, and the door to pint."""
