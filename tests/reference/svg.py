"""Parses an SVG from standard input as XML and prints what it says of itself, as JSON."""

import json
import sys
import xml.etree.ElementTree as ET

SVG = "{http://www.w3.org/2000/svg}"
svg = ET.fromstring(sys.stdin.read())
text = {name: [e.text or "" for e in svg.findall(SVG + name)] for name in ("title", "desc")}
ids = {e.get("id") for e in svg.iter() if e.get("id")}
labels = (svg.get("aria-labelledby") or "").split() + (svg.get("aria-describedby") or "").split()
outside = [
    value
    for e in svg.iter()
    for value in e.attrib.values()
    if value.startswith(("http:", "https:", "//", "data:")) or "url(http" in value
]
json.dump(
    {
        "root": svg.tag == SVG + "svg",
        "title": text["title"],
        "desc": text["desc"],
        "role": svg.get("role"),
        "labels_known": all(label in ids for label in labels),
        "outside": outside,
        "scripts": len(list(svg.iter(SVG + "script"))),
        "numbers": "NaN" not in ET.tostring(svg, "unicode") and "inf" not in str(list(svg.attrib.values())),
    },
    sys.stdout,
)
