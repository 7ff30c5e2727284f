import { nodeOf } from "./source.js";
import type { Node } from "./source.js";
import type { Plan } from "./row.js";

/** What a node reads, whatever way is taken; `while` what a search goes by. */
export function readsOf(plan: Plan, node: Node): readonly Node[] {
  const rowsOf = (scope: string): readonly Node[] => {
    const maker = plan.scopes[scope];
    return maker === undefined ? [] : [nodeOf(maker)];
  };
  switch (node.is) {
    case "key":
    case "always":
      return [];
    case "group":
    case "wish":
    case "own":
    case "field":
      return [node.of];
    case "orNone":
      return [node.of, node.none];
    case "all":
      return [node.of, ...rowsOf(node.over)];
    case "its":
      return [node.of, ...rowsOf(node.owner)];
    case "these":
      return node.ones;
    case "joined":
      return node.lists;
    case "first":
      return node.ways;
    case "choice":
      return [node.word, ...Object.values(node.ways)];
    case "figure":
      return Object.values(node.inputs);
    case "counted":
    case "part":
      return Object.values(node.given);
    case "searched":
      return plan.searches.flatMap((search) => (nodeOf(search.of) === node ? [nodeOf(search.while)] : []));
  }
}

const readers = new WeakMap<Plan, Map<Node, (node: Node) => boolean>>();

/** Whether another amount in the place of `target` can change a node: all else stays as it was worked out before. */
export function readersOf(plan: Plan, target: Node): (node: Node) => boolean {
  const ofPlan = readers.get(plan) ?? new Map<Node, (node: Node) => boolean>();
  readers.set(plan, ofPlan);
  const made = ofPlan.get(target) ?? madeReaders(plan, target);
  ofPlan.set(target, made);
  return made;
}

function madeReaders(plan: Plan, target: Node): (node: Node) => boolean {
  const known = new Map<Node, boolean>([[target, true]]);
  // A search leads back to itself, so a "no" holds only once all that is read was seen.
  const leadsThere = (node: Node, seen: Set<Node>): boolean => {
    const found = known.get(node);
    if (found !== undefined) return found;
    if (seen.has(node)) return false;
    seen.add(node);
    const leads = readsOf(plan, node).some((one) => leadsThere(one, seen));
    if (leads) known.set(node, true);
    return leads;
  };
  return (node) => {
    const seen = new Set<Node>();
    const leads = leadsThere(node, seen);
    if (!leads) for (const one of seen) known.set(one, false);
    return leads;
  };
}
