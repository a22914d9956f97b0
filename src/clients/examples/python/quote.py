"""Quotes an order: quote.py ADDRESS ORDER.json. Needs Python 3.9 and no package."""

import json
import sys
import time
from decimal import Decimal
from urllib.error import HTTPError
from urllib.request import Request, urlopen


class Refused(Exception):
    """The service has refused an order; problem says why."""

    def __init__(self, problem):
        super().__init__(problem["title"])
        self.problem = problem


def quote(address, order, attempts=5):
    """Quotes an order. A call that the service could not take now is sent again, after the time that it names."""
    request = Request(address + "/v1/quotes", json.dumps(order).encode(), {"Content-Type": "application/json"})
    for attempt in range(1, attempts + 1):
        try:
            with urlopen(request, timeout=60) as answer:
                return json.load(answer)
        except HTTPError as error:
            problem = json.load(error)
            if error.code not in (429, 503) or attempt == attempts:
                raise Refused(problem) from None
            time.sleep(int(error.headers.get("Retry-After", 1)))


def main(address, path):
    with open(path, encoding="utf-8") as file:
        order = json.load(file)
    try:
        answer = quote(address, order)
    except Refused as refused:
        print(refused, file=sys.stderr)
        for violation in refused.problem["violations"]:
            print(f"{violation['pointer']}: {violation['detail']}", file=sys.stderr)
        return 1
    for fabric in answer["yardage"]:
        print(f"{fabric['fabric']}: {fabric['soldLength']} {fabric['soldUnit']}")
    if answer["cost"]:
        # Amounts are text, so that no program rounds them.
        print(Decimal(answer["cost"]["total"]), answer["cost"]["currency"])
    return 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
