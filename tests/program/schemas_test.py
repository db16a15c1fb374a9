#!/usr/bin/env python3
"""Every schema of resources is a schema; every table, plan and layout there, every example in the docs and what the
program writes fits the one it belongs to, and what was bent on purpose does not.

  python3 schemas_test.py SOURCE_FOLDER PROGRAM
"""
import copy
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import warnings

try:
    import jsonschema
except ImportError:
    print("SKIPPED, NOT TRIED: python3-jsonschema is missing, so no file was held against its schema")
    sys.exit(77)

warnings.filterwarnings("ignore", category=DeprecationWarning)  # Debian 12 has the older way
source, program = pathlib.Path(sys.argv[1]), sys.argv[2]
resources = source / "resources"
schemas = {f.name.removesuffix(".schema.json"): json.loads(f.read_text()) for f in resources.glob("*.schema.json")}
store = {name + ".schema.json": schema for name, schema in schemas.items()}
failures, tried = [], 0


def errors(kind, value):
    schema = schemas[kind]
    resolver = jsonschema.RefResolver(schema.get("$id", ""), schema, store=store)
    checker = jsonschema.Draft202012Validator(schema, resolver=resolver)
    return [f"{'/'.join(map(str, e.absolute_path)) or 'the whole'}: {e.message[:200]}" for e in checker.iter_errors(value)]


def fits(kind, value, where):
    global tried
    tried += 1
    failures.extend(f"{where} against {kind}.schema.json: {error}" for error in errors(kind, value))


def does_not_fit(kind, value, where):
    global tried
    tried += 1
    if not errors(kind, value):
        failures.append(f"{where} fits {kind}.schema.json, and must not")


def kind_of(value):
    """By the first key, as the program tells them apart."""
    for key in value:
        if key.startswith("wrapgauge-"):
            return key.removeprefix("wrapgauge-")
    return None


for name, schema in schemas.items():
    tried += 1
    try:
        jsonschema.Draft202012Validator.check_schema(schema)
    except jsonschema.SchemaError as error:
        failures.append(f"{name}.schema.json is no schema: {error.message}")

for file in sorted(resources.glob("*.json")):
    if not file.name.endswith(".schema.json"):
        fits(file.stem, json.loads(file.read_text()), file.name)
for kind in ("plan", "layout"):
    for file in sorted((resources / (kind + "s")).glob("*.json")):
        value = json.loads(file.read_text())
        fits(kind, value, f"{kind}s/{file.name}")
        stranger = copy.deepcopy(value)
        stranger["a stranger"] = 1
        does_not_fit(kind, stranger, f"{file.name} with a stranger")

for page in sorted(source.glob("docs/*.md")) + [source / "README.md"]:
    for number, block in enumerate(re.findall(r"^```json\n(.*?)^```", page.read_text(), re.M | re.S), 1):
        where = f"example {number} of {page.name}"
        try:
            value = json.loads(block)
        except json.JSONDecodeError as error:
            failures.append(f"{where} is no JSON: {error}")
            continue
        kind = kind_of(value)
        if kind in schemas:
            fits(kind, value, where)
        else:
            failures.append(f"{where} does not say what it is")

with tempfile.TemporaryDirectory() as folder:
    plan = json.loads((resources / "plans/forearm-cuff.json").read_text())
    assert plan["wrapgauge-plan"] == 1  # a plan of version 1 still reads
    plan["layout"] = json.loads((resources / "layouts/forearm-cuff.json").read_text())
    plan["mesh"] = {"edge_mm": 20}
    plan_file = pathlib.Path(folder) / "plan.json"
    plan_file.write_text(json.dumps(plan))
    fits("plan", plan, "the demo plan with its layout inside")
    looked = subprocess.run([program, "look", plan_file], capture_output=True, text=True)
    if looked.returncode != 0:
        failures.append(f"a plan of version 1 does not read: {looked.stderr}")
    newer = dict(plan, **{"wrapgauge-plan": 2})
    does_not_fit("plan", newer, "a plan of version 2")
    plan_file.write_text(json.dumps(newer))
    refused = subprocess.run([program, "look", plan_file], capture_output=True, text=True)
    if refused.returncode != 2:
        failures.append("a plan of version 2 is not refused")
    plan_file.write_text(json.dumps(plan))
    out = pathlib.Path(folder) / "out"
    solved = subprocess.run([program, "estimate", plan_file, "--out", out, "--no-mesh-error"], capture_output=True, text=True)
    if solved.returncode not in (0, 4, 5):
        failures.append(f"the demo plan is not solved: {solved.stderr}")
    else:
        fits("summary", json.loads((out / "summary.json").read_text()), "summary.json")
        fits("results", json.loads((out / "manifest.json").read_text()), "manifest.json")
    body = pathlib.Path(folder) / "arm.stl"
    written = [(["body", "make", "forearm", "--sex", "male"], body, "body-label", body.with_name("arm.stl.label.json"))]
    for form in ("cuff", "sleeve", "graduated-sleeve", "round-pad", "quilted-pack"):
        made = pathlib.Path(folder) / (form + ".json")
        written.append((["layout", "make", form, "--body", body, "--station", "130"], made, "layout", made))
    for command, out, kind, file in written:
        run = subprocess.run([program, *command, "--out", out], capture_output=True, text=True)
        if run.returncode != 0:
            failures.append(f"{command[2]} is not made: {run.stderr}")
        else:
            fits(kind, json.loads(file.read_text()), file.name)

print(f"{tried} files, examples and schemas tried")
for failure in failures:
    print("FAILED:", failure)
sys.exit(1 if failures or tried < 35 else 0)
