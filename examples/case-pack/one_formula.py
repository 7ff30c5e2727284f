# One formula of the case pack, worked with numbers of one's own: python3 one_formula.py path/to/case-pack.json
import json, operator, sys
from fractions import Fraction

pack = json.load(open(sys.argv[1], encoding="utf-8"))
signs = {"+": operator.add, "−": operator.sub, "×": operator.mul, "÷": operator.truediv}
inch, yard = (Fraction(*map(int, pack["units"][unit]["scale"])) for unit in ("inches", "yards"))

def work(tree, known):  # a number, a name, or a sign with what stands on both sides of it
    if isinstance(tree, str):
        return Fraction(tree) if tree[0].isdigit() else known[tree]
    sign, left, right = tree
    return signs[sign](work(left, known), work(right, known))

known = {"pieces": 8, "finishedLength": 21 * inch, "hemEachEnd": 1 * inch, "loomWaste": 30 * inch,
         "loomToFinished": Fraction(10, 100), "takeUp": Fraction(8, 100)}
for name, tree in pack["formulas"]["warpLength"]["lines"]:
    known[name] = work(tree, known)
    print(f"{name} = {float(known[name] / inch):.6g} in")
print(f"{float(known['warp'] / yard):.6g} yd")
