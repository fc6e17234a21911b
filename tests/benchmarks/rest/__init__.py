"""How fast the REST layer answers, beside a bare echo on the same server."""
