#!/usr/bin/env python3
"""The tutorials of docs do what they say: their commands are run in their order, in a folder of their own, and what is
printed is what the page quotes. A line of three dots stands for lines left out. A figure may differ by one in its last
digit, or by 3 in 100, as processors add in another order; a count up to 20 may not. Every link and picture of every page is
there.

  python3 tutorials_test.py SOURCE_FOLDER PROGRAM
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

source, program = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]).resolve()
failures, commands, links = [], 0, 0

FIGURE = re.compile(r"-?\d+(?:\.\d+)?")


def alike(quoted, printed):
    """Whether two words are the same but for figures that differ a little."""
    if FIGURE.sub("#", quoted) != FIGURE.sub("#", printed):
        return False
    for wanted, found in zip(FIGURE.findall(quoted), FIGURE.findall(printed)):
        if re.fullmatch(r"1?\d|20", quoted) and wanted != found:
            return False
        last = 10.0 ** -len(wanted.partition(".")[2])
        if abs(float(wanted) - float(found)) > max(1.01 * last, 0.03 * abs(float(wanted))):
            return False
    return True


def found_at(quoted, printed, start):
    """Where the words of a quoted piece begin in what was printed, or None."""
    for at in range(start, len(printed) - len(quoted) + 1):
        if all(alike(a, b) for a, b in zip(quoted, printed[at:])):
            return at
    return None


def differs(quoted, printed):
    """The first piece of a quotation that was not printed after the one before, or None."""
    words, at = printed.split(), 0
    pieces = [piece.split() for piece in re.split(r"^\s*\.\.\.$", quoted, flags=re.M)]
    for number, piece in enumerate(pieces):
        begin = found_at(piece, words, at)
        if begin is None or (number == 0 and begin > 0):
            return " ".join(piece)
        at = begin + len(piece)
    return None if not pieces[-1] or at == len(words) else "the end: more was printed"


def run(call, folder, where, quoted, wanted):
    global commands
    commands += 1
    path = f"{program.parent}{os.pathsep}{os.environ['PATH']}"
    done = subprocess.run(["sh", "-c", call], cwd=folder, env=dict(os.environ, PATH=path), text=True,
                          stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    if done.returncode != wanted:
        failures.append(f"{where}: '{call}' ended with {done.returncode}, not {wanted}: {done.stderr[-300:]}")
    piece = differs(quoted, done.stdout + done.stderr if wanted == 2 else done.stdout)
    if piece is not None:
        failures.append(f"{where}: '{call}' does not print: {piece}\n--- printed\n{done.stdout}---")


def console(block, folder, where):
    """Lines that begin with $ are commands, '# exit code N' behind one is how it has to end."""
    for part in re.split(r"^\$ ", block, flags=re.M)[1:]:
        call, _, quoted = re.sub(r"\\\n\s*", "", part).partition("\n")
        code = re.search(r"# exit code (\d+)$", call)
        run(call, folder, where, quoted, int(code.group(1)) if code else 0)


for page in sorted(source.glob("docs/tutorial-*.md")):
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(source / "docs/tutorial", folder, dirs_exist_ok=True)
        pattern = r"(?:^`([\w.-]+)`:\n+)?^```(\w+)\n(.*?)^```$"
        for name, kind, block in re.findall(pattern, page.read_text(), re.M | re.S):
            if kind == "json" and name:
                (pathlib.Path(folder) / name).write_text(block)
            elif kind == "console":
                console(block, folder, page.name)

for page in [*sorted(source.glob("docs/*.md")), source / "README.md", source / "DEVELOPERS.md"]:
    prose = re.sub(r"```.*?```|`[^`]*`", "", page.read_text(), flags=re.S)
    for link in re.findall(r"\]\(([^)#:]+)(?:#[^)]*)?\)", prose):
        links += 1
        if not (page.parent / link).exists():
            failures.append(f"{page.name} leads to {link}, which is not there")

print(f"{commands} commands of tutorials run, {links} links followed")
for failure in failures:
    print("FAILED:", failure)
sys.exit(1 if failures or commands < 15 or links < 80 else 0)
