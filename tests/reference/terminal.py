"""Runs a program on a terminal of its own and prints what it wrote there.

Standard input: {"program": [...], "environment": {...}}.
"""
import json
import os
import pty
import sys

asked = json.load(sys.stdin)
written = []


pid, terminal = pty.fork()
if pid == 0:
    environment = {"PATH": os.environ["PATH"], "TERM": "xterm", **asked["environment"]}
    os.execve(asked["program"][0], asked["program"], environment)
while True:
    try:
        part = os.read(terminal, 65536)
    except OSError:
        break
    if not part:
        break
    written.append(part)
os.waitpid(pid, 0)
print(json.dumps(b"".join(written).decode()))
