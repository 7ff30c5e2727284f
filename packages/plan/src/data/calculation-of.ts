import { isCalculation } from "@thrum/maths";
import type { AnyCalculation } from "@thrum/maths";
import type { Node } from "../core/source.js";
import type { Found } from "./at-path.js";

/** The formulas a figure may go by, one for each way. */
function calculationsIn(node: Node): readonly unknown[] {
  if (node.is === "figure") return [node.calculation];
  if (node.is === "first") return node.ways.flatMap(calculationsIn);
  return node.is === "choice" ? Object.values(node.ways).flatMap(calculationsIn) : [];
}

/** The formula of a figure by the name in its data, found in the list itself. */
export function calculationOf({ listed, data }: Found): AnyCalculation {
  const found = calculationsIn(listed.node).find(
    (one) => isCalculation(one) && one.declaration.name === data.calculation,
  );
  if (isCalculation(found)) return found;
  throw new RangeError(`${listed.name} has no way called ${String(data.calculation)}`);
}
