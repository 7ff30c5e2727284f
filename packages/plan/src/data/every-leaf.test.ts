import { describe, expect, it } from "vitest";
import { isPair, isScalar, isSeq, parseDocument, visit } from "yaml";
import type { Document, Scalar } from "yaml";
import { examplePlan, examplePlans } from "#ci/example-plans.js";
import { numbersOnlySaid } from "#ci/numbers-said.js";
import { exampleText } from "#ci/example-jobs.js";
import { readJob } from "../job/read-job.js";
import { planText } from "../views/text.js";
import type { PlanData } from "./plan-data.js";
import { planOf } from "./plan-data.js";

/** What a word may be changed to; any other word is a name, and becomes one that is unknown. */
const OTHER_WORD: Readonly<Record<string, string>> = {
  once: "twice",
  twice: "once",
  left: "right",
  right: "left",
  none: "2 lb",
  wool: "silk",
  floating: "1",
  white: "blue",
  slate: "cream",
  natural: "indigo",
  oat: "cream",
  ash: "moss",
  square: "weaver's",
  "weaver's": "square",
  "overhand of both ends": "square",
  "overhand of one end": "square",
  "hang a thrum": "thread it itself",
  "in front of the reed": "behind the heddles",
  "behind the heddles": "in front of the reed",
  "behind the reed": "in front of the reed",
  "back of the loom": "front of the loom",
  "after the last": "before end 1",
  "one colour at a time": "from end 1",
  "the rest": "2",
  "as many as the warp gives": "3",
  "as many as the yarn gives": "3",
  finished: "at the loom",
  "by stripe": "by colour",
  "by group": "by colour",
  "by colour": "by stripe",
  "not measured": "1 mm",
  broken: "left out",
  "on another shaft": "one too many",
  "one too many": "on another shaft",
  "empty heddle": "broken",
};

/** One more of a number in the value, or half of it; else another word. The second is tried where the first says nothing. */
function changes(value: string, at: number): readonly string[] {
  const word = OTHER_WORD[value];
  if (word !== undefined) return [word];
  const numbers = [...value.matchAll(/\d+(?:\.\d+)?/gu)];
  const found = numbers[at % Math.max(numbers.length, 1)];
  if (found === undefined) return [`${value} too`];
  const put = (number: number) =>
    value.slice(0, found.index) + String(number) + value.slice(found.index + found[0].length);
  return [put(Number(found[0]) + 1), put(Math.ceil(Number(found[0]) / 2))];
}

interface Leaf {
  readonly path: string;
  readonly scalar: Scalar<string>;
}

/** The values of a job's text, each by its path: a step is a key, or a place in a list. */
function leavesOf(document: Document): readonly Leaf[] {
  const leaves: Leaf[] = [];
  visit(document, {
    Scalar: (key, scalar, above) => {
      if (key === "key" || typeof scalar.value !== "string") return;
      const nodes = [...above, scalar];
      const steps = above.flatMap((node, at): readonly string[] => {
        if (isPair(node) && isScalar(node.key)) return [String(node.key.value)];
        const next = nodes[at + 1];
        return isSeq(node) ? [String(node.items.indexOf(next))] : [];
      });
      leaves.push({ path: steps.join("."), scalar: scalar as Scalar<string> });
    },
  });
  return leaves;
}

/** The values alone: not where they came from, nor what else is needed. */
function valuesOf({ figures }: PlanData): string {
  return JSON.stringify(figures, (key, value: unknown) => (key === "from" || key === "needs" ? undefined : value));
}

/** Numbers in the sentences of all the plans that the data beside the sentence do not have. */
const onlySaid = new Set<string>();

type Answer = "figures" | "refused" | "sheets" | "nothing";

/** What comes of each leaf, changed alone. */
function answers(name: string, plan: PlanData): ReadonlyMap<string, Answer> {
  const document = parseDocument(exampleText(name), { schema: "failsafe" });
  const [values, text] = [valuesOf(plan), planText(plan)];
  const answerTo = (): Answer => {
    const reading = readJob(String(document));
    if (!reading.ok) return "refused";
    const changed = planOf(reading.value);
    for (const one of numbersOnlySaid(changed)) onlySaid.add(one);
    if (valuesOf(changed) !== values) return "figures";
    return planText(changed) === text ? "nothing" : "sheets";
  };
  const found = leavesOf(document).map(({ path, scalar }, at): readonly [string, Answer] => {
    const was = scalar.value;
    let answer: Answer = "nothing";
    for (const other of changes(was, at)) {
      if (answer !== "nothing") break;
      scalar.value = other;
      answer = answerTo();
    }
    scalar.value = was;
    return [path, answer];
  });
  expect(new Map(found).size).toBe(found.length);
  return new Map(found);
}

/** Values that no figure and no sheet reads, and why. */
const SAYS_NOTHING: Readonly<Record<string, string>> = {
  "9-yarn-on-hand yarns.rust.count": "on the shelf, and not used in this warp",
  "9-yarn-on-hand yarns.rust.sold": "on the shelf, and not used in this warp",
  "9-yarn-on-hand yarns.rust.onHand": "on the shelf, and not used in this warp",
};

/** Words that a sheet says as they stand, and that no number depends on. */
const WORDS: Readonly<Record<string, string>> = {
  title: "heads the sheets",
  note: "stands under it",
  "join.knot": "named where it is tied",
  "winding.step": "of towels on a length fixed beforehand: beside it, the steps are only told",
};

describe("every value of the nine jobs changed alone", () => {
  it.each(examplePlans.map(([name]) => name))("%s: another plan, other sheets, or refused", (name) => {
    const found = answers(name, examplePlan(name));
    const of = (answer: Answer) => [...found].filter(([, one]) => one === answer).map(([path]) => path);
    if (process.env["THRUM_TELL_LEAVES"] !== undefined)
      process.stdout.write(
        `${name}: ${String(of("figures").length)} figures, ${String(of("refused").length)} refused, ${String(of("sheets").length)} in words, nothing: ${of("nothing").join(", ")}\n`,
      );
    const excused = (path: string) => SAYS_NOTHING[`${name} ${path}`] !== undefined;
    expect(of("nothing").filter((path) => !excused(path))).toEqual([]);
    expect(of("sheets").filter((path) => !(path in WORDS))).toEqual([]);
  });

  it("says no number in a sentence that does not stand in its values", () => {
    expect([...onlySaid]).toEqual([]);
  });
});
