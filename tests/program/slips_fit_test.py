#!/usr/bin/env python3
"""Every slip of tests/slips still fits the code: what it takes out stands in its file, at one place.

A slip that no longer fits proves nothing of the rule it breaks. Whether each is caught: tests/slips/run.sh.
"""
import pathlib
import sys

source = pathlib.Path(sys.argv[1])


def hunks(patch):
    """(file, lines before, lines after) of each hunk."""
    file, old, new = None, [], []
    for line in patch.read_text().splitlines():
        if line.startswith(("+++ ", "--- ", "@@")):
            if old or new:
                yield file, old, new
            old, new = [], []
            if line.startswith("+++ b/"):
                file = line[len("+++ b/"):].split("\t")[0]
        elif line.startswith("#") and file is None:
            continue
        else:
            if not line.startswith("+"):
                old.append(line[1:])
            if not line.startswith("-"):
                new.append(line[1:])
    if old or new:
        yield file, old, new


def places(text, lines):
    return sum(text[k:k + len(lines)] == lines for k in range(len(text) - len(lines) + 1))


wrong = []
patches = sorted(source.glob("tests/slips/*.patch"))
for patch in patches:
    for file, old, new in hunks(patch):
        there = (source / file).read_text().splitlines() if (source / file).is_file() else []
        if places(there, old) != 1:
            wrong.append(f"{patch.name}: what it changes stands {places(there, old)} times in {file}")
        if old == new:
            wrong.append(f"{patch.name}: changes nothing")
if not patches:
    wrong.append("there are no slips")
print("\n".join(wrong) or f"all {len(patches)} slips fit")
sys.exit(1 if wrong else 0)
