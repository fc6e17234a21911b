"""A Python client generated from the document, used with its types: `python -m tests.api.python_client FOLDER URL`.

FOLDER holds the generated package `generated`; a type checker reads this file too.
"""

import sys

from generated import Client
from generated.api.ask import ask_by_body
from generated.api.questions import rode_to_let_out, swing_radius_by_body
from generated.models import AskByBodyBody, Boat, Problem, RodeToLetOutAnswer, SwingRadiusAnswer, SwingRadiusByBodyBody


def used(url: str) -> None:
    """Ask the server by query, by body and in plain words, and hold the typed answers against what they must be."""
    client = Client(base_url=url)
    answer = rode_to_let_out.sync(client=client, depth="12 ft", bow_height="5 ft", tide_rise="3 ft")
    assert isinstance(answer, RodeToLetOutAnswer), answer
    assert answer.results.rode_out.value == 140.0
    refused = rode_to_let_out.sync(client=client, depth="12")
    assert isinstance(refused, Problem), refused
    assert refused.errors[0].input_ == "depth"
    boat = Boat.from_dict({"boat_length": "8.4 m"})
    circle = swing_radius_by_body.sync(client=client, body=SwingRadiusByBodyBody(rode_out="40 m", depth="6 m", boat=boat))
    assert isinstance(circle, SwingRadiusAnswer), circle
    assert circle.results.swing_radius.si > 40.0
    reply = ask_by_body.sync(client=client, body=AskByBodyBody(text="How much rode in 12 ft of water with a bow height of 5 ft?"))
    assert isinstance(reply, RodeToLetOutAnswer), reply


if __name__ == "__main__":
    used(sys.argv[1])
    print("the generated Python client works")
