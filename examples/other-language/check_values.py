"""A port checks itself: python3 check_values.py ../../docs/check-values.json"""
import json, math, re, sys

data = json.load(open(sys.argv[1], encoding="utf-8"))

def size(unit):  # "lb/1000 ft2" divides two; "100 gal" is a hundred of one
    if unit in data["units"]:
        return data["units"][unit]["size"], data["units"][unit].get("zero", 0)
    if "/" in unit:
        top, bottom = unit.rsplit("/", 1)
        return size(top)[0] / size(bottom)[0], 0
    many, one = re.match(r"([\d.]+) (.+)$", unit).groups()
    return float(many) * size(one)[0], 0

def si(q):
    a, zero = size(q["unit"])
    return q["value"] * a + zero

# The port: each formula in base units, from the arguments as the file has them.
port = {
    "productForActive": lambda a: si(a["active"]) / si(a["content"]),
    "fanWidth": lambda a: 2 * si(a["height"]) * math.tan(math.radians(si(a["angle"]) / 2)),
    "productRate": lambda target, bag: si(target) * 100 / bag["analysis"]["percent"][target["of"]],
    "effectiveFieldCapacity": lambda a: si(a["swath"]) * si(a["speed"]) * si(a.get("efficiency", {"value": 1, "unit": "1"})),
    "applicationVolume": lambda a: si(a["flow"]) / (si(a["speed"]) * si(a["width"])),
    "rectangleArea": lambda a: si(a["length"]) * si(a["width"]),
    "courseTime": lambda a: si(a["course"]) / si(a["speed"]),
    "runLength": lambda a: si(a["area"]) / si(a["swath"]),
    "turfUse": lambda a: si(a["reference"]) * a["coefficient"],
}

passed, off, not_here = 0, [], 0
for check in data["checks"]:
    for f in check["figures"]:
        if f["function"] not in port or f["at"]:
            not_here += 1
            continue
        unit, zero = size(f["unit"])
        got = (port[f["function"]](*f["arguments"]) - zero) / unit
        right = f.get("right", f["printed"])
        low = right - (0 if "rounding" in f else f["tolerance"])
        if low - 1e-9 <= got <= right + f["tolerance"] + 1e-9:
            passed += 1
        else:
            off.append((check["id"], f["asked"], right, got))

print(f"{passed} figures agree, {len(off)} are off, {not_here} are of formulas that this port does not have")
for line in off:
    print(*line)
sys.exit(1 if off else 0)
