"""How often one client may ask."""

import math
from collections import OrderedDict
from time import monotonic

CLIENTS_AT_MOST = 10_000


class Buckets:
    """A bucket of tokens a client, filled `per_minute`; the memory they take is bounded."""

    def __init__(self, *, per_minute: int) -> None:
        self.size, self.per_second = float(per_minute), per_minute / 60.0
        self.left: OrderedDict[str, tuple[float, float]] = OrderedDict()

    def wait(self, client: str, *, now: float | None = None) -> int:
        """Take a token: 0 where there was one, else the seconds until there is.

        Examples
        --------
        >>> buckets = Buckets(per_minute=2)
        >>> [buckets.wait("a", now=0.0) for _ in range(3)], buckets.wait("b", now=0.0), buckets.wait("a", now=30.0)
        ([0, 0, 30], 0, 0)
        """
        at = monotonic() if now is None else now
        tokens, then = self.left.pop(client, (self.size, at))
        tokens = min(self.size, tokens + (at - then) * self.per_second)
        if len(self.left) >= CLIENTS_AT_MOST:
            self.left.popitem(last=False)  # the one that has not asked for longest
        if tokens < 1.0:
            self.left[client] = (tokens, at)
            return math.ceil((1.0 - tokens) / self.per_second)
        self.left[client] = (tokens - 1.0, at)
        return 0
