# Works out every case of Thrum's case pack in whole-number fractions: python3 check.py path/to/case-pack.json
import json, sys
from decimal import Decimal, getcontext
from fractions import Fraction
from math import ceil, floor

getcontext().prec = 60
pack = json.load(open(sys.argv[1], encoding="utf-8"))
units, formulas = pack["units"], pack["formulas"]

def step(x):  # what a root or a double leaves beside a whole number is that number
    return Fraction(round(x)) if abs(x - round(x)) < max(1, abs(x)) / Fraction(10**12) else x

ONE = {"√": lambda x: Fraction(Decimal(x.numerator).sqrt() / Decimal(x.denominator).sqrt()),
       "orNothing": lambda x: max(x, 0), "roundUp": lambda x: Fraction(ceil(step(x))), "roundDown": lambda x: Fraction(floor(step(x))),
       "nearest": lambda x: Fraction(floor(step(x + Fraction(1, 2))))}
TWO = {"+": lambda a, b: a + b, "−": lambda a, b: a - b, "×": lambda a, b: a * b, "÷": lambda a, b: a / b}

def scale(unit):
    return Fraction(*map(int, units[unit]["scale"]))

def base(value):  # in metres, grams and what follows from them
    if isinstance(value, list):
        return [base(one) for one in value]
    return Fraction(value["amount"]) * scale(value["unit"]) if isinstance(value, dict) else Fraction(str(value))

def reckoned(declared, case, kind):  # what one of the unit is that a rule of thumb names for its numbers
    named = declared.get("reckonedIn", [])
    named = [case["input"][named]["unit"]] if isinstance(named, str) else named
    return next((scale(unit) for unit in named if units[unit]["kind"] == kind), 1)

def work(tree, known):
    if isinstance(tree, str):
        return Fraction(tree) if tree[0].isdigit() else known[tree]
    op, values = tree[0], [work(part, known) for part in tree[1:]]
    if op == "Σ":
        return sum(values[0]) if isinstance(values[0], list) else values[0]
    apply, sizes = (ONE | TWO)[op], [len(v) for v in values if isinstance(v, list)]
    if not sizes:
        return apply(*values)
    return [apply(*(v[at] if isinstance(v, list) else v for v in values)) for at in range(sizes[0])]

def answer(case):
    formula, known = formulas[case["formula"]], {}
    for name, value in case["input"].items():
        if isinstance(value, dict) and "amount" not in value:  # a unit asked for: so much length, so much mass
            parts = units[value["unit"]]["parts"]
            known.update({f"{name}.{part}": n * scale(of) for part, (n, of) in parts.items()})
        elif "reckonedIn" in formula["inputs"][name]:
            known[name] = base(value) / reckoned(formula["inputs"][name], case, units[value["unit"]]["kind"])
        else:
            known[name] = base(value)
    for name, tree in formula["lines"]:
        known[name] = result = work(tree, known)
    counted = scale(case["input"][formula["resultCountsIn"]]["unit"]) if formula["resultCountsIn"] else 1
    for kind in formula["result"]["kinds"][:1]:
        counted *= reckoned(formula["result"], case, kind)
    return result * counted / (scale(case["answerIn"]) if case["answerIn"] else 1)

def converted(case):  # a direct count is an indirect one turned over
    alike = units[case["to"]]["kind"] == units[case["from"]["unit"]]["kind"]
    return (base(case["from"]) if alike else 1 / base(case["from"])) / scale(case["to"])

rows = [(case, answer(case)) for case in pack["cases"]] + [(case, converted(case)) for case in pack["conversions"]]
off = [case["title"] for case, got in rows if abs(got - Fraction(case["exact"])) > abs(got) / 10**12]
print(f"{len(rows) - len(off)} of {len(rows)} cases agree", *off, sep="\n")
sys.exit(bool(off))
