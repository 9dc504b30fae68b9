"""Licences of installed Python packages and of all that they ask for, as their metadata state them.

Standard input: a list of names. Prints a list of {"name", "version", "licence", "families"}: an expression
where the package gives one, and its classifiers.
"""
import json
import re
import sys
from importlib.metadata import PackageNotFoundError, metadata, requires, version

wanted = json.load(sys.stdin)
found = {}
while wanted:
    name = wanted.pop().lower()
    if name in found:
        continue
    about = metadata(name)
    found[name] = {
        "name": name,
        "version": version(name),
        "licence": about.get("License-Expression") or "",
        "families": [family for family in about.get_all("Classifier") or [] if family.startswith("License ::")],
    }
    for need in requires(name) or []:
        needed, _, condition = need.partition(";")
        needed = re.match(r"[A-Za-z0-9._-]+", needed)[0]
        # What only an extra, or another machine, asks for is not here.
        if "extra" in condition:
            continue
        try:
            version(needed)
        except PackageNotFoundError:
            if condition:
                continue
            raise
        wanted.append(needed)
print(json.dumps(list(found.values())))
