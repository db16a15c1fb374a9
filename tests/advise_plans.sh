#!/bin/sh
# Counts how many of 30 plans get advice, and whether what is advised ends as an estimate
# with exit code 0. By hand, some 20 min of processor time: tests/advise_plans.sh PROGRAM FOLDER
# The plans are the two of the demo with other pressures or volumes, girths, closures, places and times, on
# meshes of 12 and 7 mm; its table stands in docs/09-advise.md.
set -eu
program=$1
folder=$2
here=$(cd "$(dirname "$0")/.." && pwd)
mkdir -p "$folder"
python3 - "$here" "$folder" <<'PYTHON'
import copy, json, pathlib, sys
here, folder = map(pathlib.Path, sys.argv[1:])
def read(kind, name): return json.loads((here / "resources" / kind / (name + ".json")).read_text())
cuff, sleeve = read("plans", "forearm-cuff"), read("plans", "calf-sleeve")
cuff["layout"], sleeve["layout"] = read("layouts", "forearm-cuff"), read("layouts", "calf-sleeve")
plans = []
def add(base, words, edge, change):
    plan = copy.deepcopy(base)
    plan["mesh"], plan["solver"]["steps"] = {"edge_mm": edge}, 2
    plan["name"] = words
    change(plan)
    plans.append(plan)
def fill(plan, *values):
    for inlet, value in zip(plan["inflation"], values):
        inlet["pressure_kpa" if "pressure_kpa" in inlet else "volume_ml"] = value
def girth(plan, mm):
    plan["body"]["parameters"] = dict(plan["body"].get("parameters", {}), girth_forearm=mm, girth_elbow=mm - 15)
def closure(plan, stretch):
    plan["layout"]["closure"] = {"from_x": plan["layout"]["closure"].get("from_x", 0), "stretch": stretch}
def session(plan, **values): plan["session"].update(values)
def place(plan, **values): plan["wear"]["anchor"].update(values)
for edge, left, right in [(12, 3, 1.5), (12, 2.5, 1.5), (12, 2.2, 1), (12, 4, 1), (7, 2.4, 0.8), (12, 1, 2.5)]:
    add(cuff, f"cuff at {left} and {right} kPa, mesh {edge} mm", edge, lambda p: fill(p, left, right))
for mm in (255, 265, 285, 295):
    add(cuff, f"cuff at 2.4 and 1.2 kPa, forearm girth {mm} mm", 12, lambda p: (fill(p, 2.4, 1.2), girth(p, mm)))
for stretch in (-0.04, -0.01, 0.01, 0.03):
    add(cuff, f"cuff at 1.9 and 0.9 kPa, closure stretch {100 * stretch:.0f} %", 12,
        lambda p: (fill(p, 1.9, 0.9), closure(p, stretch)))
for station in (180, 200):
    add(cuff, f"cuff at 2.2 and 1.1 kPa, station {station} mm", 12, lambda p: (fill(p, 2.2, 1.1), place(p, station_mm=station)))
add(cuff, "cuff at 1.5 and 0.8 kPa, session of 20 min", 12, lambda p: (fill(p, 1.5, 0.8), session(p, minutes=20)))
add(cuff, "cuff at 1.5 and 0.8 kPa, holds of 90 s", 12, lambda p: (fill(p, 1.5, 0.8), session(p, hold_s=90)))
for ml in (55, 60, 65, 70, 80):
    add(sleeve, f"sleeve with {ml} mL", 12, lambda p: fill(p, ml))
add(sleeve, "sleeve with 58 mL, mesh 7 mm", 7, lambda p: fill(p, 58))
for stretch in (0.01, 0.02, 0.03):
    add(sleeve, f"sleeve with 50 mL, closure stretch {100 * stretch:.0f} %", 12, lambda p: (fill(p, 50), closure(p, stretch)))
for station in (245, 265):
    add(sleeve, f"sleeve with 58 mL, station {station} mm", 12, lambda p: (fill(p, 58), place(p, station_mm=station)))
add(sleeve, "sleeve with 45 mL, session of 4 h", 12, lambda p: session(p, minutes=240))
for number, plan in enumerate(plans, 1):
    (folder / f"plan-{number:02}.json").write_text(json.dumps(plan))
PYTHON
above=0 advised=0 held=0
for plan in "$folder"/plan-??.json; do
  set_to=${plan%.json}-advised.json
  rm -f "$set_to"
  code=0
  "$program" advise "$plan" --json --write "$set_to" >"${plan%.json}.advice" 2>"${plan%.json}.err" || code=$?
  end=-
  if [ "$code" -eq 4 ]; then
    above=$((above + 1))
    if [ -f "$set_to" ]; then
      advised=$((advised + 1))
      end=0
      "$program" estimate "$set_to" --out "$folder/estimate" --no-mesh-error >"${plan%.json}.estimate" 2>&1 || end=$?
      [ "$end" -eq 0 ] && held=$((held + 1))
    fi
  fi
  python3 - "$plan" "$code" "$end" <<'PYTHON'
import json, pathlib, sys
plan, code, end = sys.argv[1:]
name = json.loads(pathlib.Path(plan).read_text())["name"]
try:
    advice = json.loads(pathlib.Path(plan[:-5] + ".advice").read_text())
    first = [c["words"] for c in advice["changes"] if c["fate"] == "advised"]
    share = f"{100 * advice['as_planned']['share_of_limit']:.0f} %"
except ValueError:
    first, share = [], "-"
print(f"| {name} | {share} | {len(first)} | {first[0] if first else '-'} | {end} |", flush=True)
PYTHON
done
echo "$above plans above their limits; $advised with a change advised; $held of them end as an estimate with exit code 0"
