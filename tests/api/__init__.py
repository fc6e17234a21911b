"""The REST layer, in process and on a real server."""
