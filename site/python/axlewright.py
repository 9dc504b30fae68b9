"""The physics of Axlewright for Python: plain dictionaries in, plain dictionaries out.

    from axlewright import answer
    limits = answer("traction", {"vehicle": {"base": "corrie"}, "surface": {"kind": "snow"}})["limits"]

One file of the standard library alone: put it beside your notebook. It talks to the program `axlewright`,
which is found by the variable AXLEWRIGHT_PROGRAM or on the PATH. The program is started once and answers
every question after that, in some tens of microseconds for a closed form. Values are SI; an input may
be a text with a unit ("1850 kg"). What is refused raises `Refused`, which names field, value and what
is allowed.
"""

import atexit
import json
import os
import shutil
import subprocess
import threading

__all__ = ["Refused", "answer", "answers"]


class Refused(ValueError):
    """A question that has no answer. `field`, `value` and `allowed` say why."""

    def __init__(self, problem):
        super().__init__(problem["sentence"])
        self.field = problem["field"]
        self.value = problem["value"]
        self.allowed = problem["allowed"]


def answer(topic, scenario=None, working=False):
    """The answer of a topic to a scenario, as nested dictionaries.

    `scenario` is nested dictionaries, as in a scenario file; without one the topic's example is answered.
    With `working` the answer has the equations, step by step, under "working".
    """
    return _checked(_program().ask(topic, scenario, working))


def answers(topic, scenarios):
    """The answers to many scenarios, one after another; a refused one is None."""
    for scenario in scenarios:
        got = _program().ask(topic, scenario, False)
        yield None if "problem" in got else got


def _checked(got):
    if "problem" in got:
        raise Refused(got["problem"])
    return got


class _Program:
    def __init__(self):
        path = os.environ.get("AXLEWRIGHT_PROGRAM") or shutil.which("axlewright")
        if path is None:
            raise FileNotFoundError(
                "the program axlewright is not on the PATH; AXLEWRIGHT_PROGRAM may name it"
            )
        self.lock = threading.Lock()
        self.process = subprocess.Popen(
            [path, "answers"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            encoding="utf-8",
        )
        atexit.register(self.end)

    def ask(self, topic, scenario, working):
        question = {"topic": topic, "scenario": scenario or {}, "working": working}
        # A number that is not finite is no JSON; the program could not say which field it was.
        line = json.dumps(question, allow_nan=False)
        with self.lock:
            self.process.stdin.write(line + "\n")
            self.process.stdin.flush()
            got = self.process.stdout.readline()
        if not got:
            raise RuntimeError("the program axlewright has ended")
        return json.loads(got)

    def end(self):
        self.process.stdin.close()
        self.process.wait()
        self.process.stdout.close()


_started = None
_starting = threading.Lock()


def _program():
    global _started
    with _starting:
        if _started is None or _started.process.poll() is not None:
            _started = _Program()
        return _started
