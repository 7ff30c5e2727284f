// A megabyte in any field of a claim, a working or a problem: refused by one of our own errors, in linear time.
import {
  attempt,
  check,
  classJob,
  endsPerInch,
  faultText,
  firstWrongLine,
  inches,
  jobSum,
  problem,
  reedWidth,
  settFromEnds,
} from "@thrum/maths";
import { checkFigure, reconcile } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { examplePlan } from "../support/example-plans.js";
import { leastTime } from "../support/processor-time.js";

const input = { ends: 300, sett: endsPerInch(15) };
const wanted = { like: input, unit: inches, decimals: 1 };
const sum = jobSum("width", reedWidth, wanted);
const made = classJob([sum], 1).sums[0];
const like = { ends: 300, width: inches(20) };
const later = jobSum("sett", settFromEnds, { like, unit: endsPerInch, decimals: 1, takes: [["width", "width"]] });
const judged = classJob([sum, later], 1).sums[1];
const hall = examplePlan("2-hall-napkins");
const needed = ["figures", "warp", "needed"];

/** Every text field of what a class or a reader of patterns hands over; what is no text is given one all the same. */
const fields: Readonly<Record<string, (text: string) => unknown>> = {
  "a claim": (text) => check(reedWidth, input, { written: text, unit: inches }),
  "the locale of a claim": (text) => check(reedWidth, input, { written: "20", unit: inches, locale: text }),
  "the locale of an answer": (text) => made?.judge("20", { locale: text }),
  "a line": (text) => firstWrongLine(reedWidth, input, { width: text }),
  "the name of a line": (text) => firstWrongLine(reedWidth, input, { [text]: "20" }),
  "a kept input": (text) => problem(reedWidth, { ...wanted, keep: [text as never], seed: 1 }),
  "a number to draw like": (text) =>
    problem(reedWidth, { ...wanted, like: { ...input, ends: text as never }, seed: 1 }),
  "the seed": (text) => problem(reedWidth, { ...wanted, seed: text as never }),
  "the unit of a problem": (text) => problem(reedWidth, { ...wanted, unit: text as never, seed: 1 }),
  "where a sum takes from": (text) => classJob([jobSum("a", reedWidth, { ...wanted, takes: [["ends", text]] })], 1),
  "an answer to a sum": (text) => made?.judge(text),
  "an earlier answer": (text) => judged?.judge("99", { answers: { width: text } }),
  "an answer to a figure": (text) => checkFigure(hall, needed, { written: text, unit: inches }),
  "the place of a figure": (text) => checkFigure(hall, [text], { written: "20", unit: inches }),
  "a printed figure": (text) => reconcile([{ figure: "ends", printed: text, unit: "count" }]),
  "the name of a printed figure": (text) => reconcile([{ figure: text as never, printed: "2", unit: "count" }]),
  "the unit of a printed figure": (text) => reconcile([{ figure: "ends", printed: "2", unit: text as never }]),
};

/** The refusal; nothing where the text was read; whatever else is thrown is a fault. */
function refusal(read: (text: string) => unknown, text: string): string {
  const tried = attempt(read, text);
  return tried.ok ? "" : tried.faults.map((fault) => faultText(fault)).join("\n");
}

describe.each(Object.entries(fields))("%s", (name, read) => {
  it.each(["9", " ", "x", "1/", "1 ft ", "-", ",", "½", "."])("of a megabyte of %j", (piece) => {
    const textOf = (size: number): string => piece.repeat(Math.ceil(size / piece.length));
    const [short, long] = [textOf(50_000), textOf(1_000_000)];
    const said = refusal(read, long);
    expect(said.length).toBeLessThan(2500);
    if (!["a kept input", "an earlier answer"].includes(name)) expect(said).toMatch(/\w/u);
    const [few, many] = [leastTime(() => refusal(read, short), 3), leastTime(() => refusal(read, long), 3)];
    expect(many).toBeLessThan(Math.max(30 * few, 60));
  });
});
