"""The REST layer: HTTP only, no arithmetic."""
