// One mistake has one code and one sentence, whichever package refuses it.
import * as maths from "@thrum/maths";
import * as plan from "@thrum/plan";
import * as stripes from "@thrum/stripes";
import { describe, expect, it } from "vitest";

const { attempt, endsPerInch, faultsText, reedWidth } = maths;
const napkin = stripes.sequence([
  { colour: "natural", ends: 24 },
  { colour: "indigo", ends: 40 },
]);
const sett = endsPerInch(20);
const OF_EACH = {
  maths: (given: object) => attempt(reedWidth, { ends: 8, sett, ...given }),
  stripes: (given: object) => attempt(stripes.repeat, { sequence: napkin, times: 2, ...given }),
  plan: (given: object) => plan.checkedJob({ groups: 24, ...given }),
};
const FIELD = { maths: "ends", stripes: "times", plan: "groups" };
const PACKAGES = ["maths", "stripes", "plan"] as const;

/** The codes with which each package refuses the same thing in the place of a whole number. */
function codesFor(value: unknown): readonly string[] {
  return PACKAGES.map((name) => {
    const read = OF_EACH[name]({ [FIELD[name]]: value });
    return read.ok ? "read" : read.faults[0].code;
  });
}

describe("one mistake", () => {
  it.each<[string, unknown, string]>([
    ["text for a number", "many", "wrong-kind"],
    ["a number in quotes", "3", "wrong-kind"],
    ["no number", Number.NaN, "not-a-number"],
    ["a number without end", Number.POSITIVE_INFINITY, "not-a-number"],
    ["a part of one", 2.5, "not-whole"],
    ["less than there can be", -3, "out-of-range"],
    ["more than a double counts", 2 ** 60, "out-of-range"],
    ["a group", {}, "wrong-kind"],
    ["a list", [3], "wrong-kind"],
    ["yes", true, "wrong-kind"],
    ["null", null, "missing"],
  ])("has one code: %s", (_what, value, code) => {
    expect(codesFor(value)).toEqual([code, code, code]);
  });

  it("has one code where it is text that is to be read as a number", () => {
    expect(plan.readJob("groups: many")).toMatchObject({ ok: false, faults: [{ code: "not-a-number" }] });
    expect(attempt(maths.inches, "many")).toMatchObject({ ok: false, faults: [{ code: "not-a-number" }] });
  });

  it("has one code: a field that is none", () => {
    for (const name of PACKAGES) {
      const read = OF_EACH[name]({ colour: 3 });
      expect(read.ok ? [] : read.faults.map(({ code, path }) => [code, ...path])).toEqual([
        ["unknown-field", "colour"],
      ]);
    }
  });

  it("has one code: text longer than any, nothing to read, no text at all", () => {
    const long = "1 natural, ".repeat(100_000);
    const list = (text: unknown): unknown =>
      stripes.attempt(stripes.sequenceFromList, { text, legend: { natural: 1 } });
    const length = (text: unknown): unknown => attempt(maths.lengthFrom, text, [maths.inches]);
    for (const read of [length, list, plan.readJob, plan.readStripes, plan.readProgress, plan.readFigures])
      expect(read(long)).toMatchObject({ ok: false, faults: [{ code: "too-long" }] });
    for (const read of [list, plan.readJob, plan.readStripes, plan.readProgress, plan.readFigures]) {
      expect(read(undefined)).toMatchObject({ ok: false, faults: [{ code: "missing" }] });
      expect(read(3)).toMatchObject({ ok: false, faults: [{ code: "wrong-kind" }] });
    }
  });
});

describe("the sentence of a fault", () => {
  it("is the same from the one printer as in the message of any error", () => {
    for (const f of Object.values(stripes).filter(
      (one) => typeof one === "function" && one !== stripes.StripeError && one !== stripes.attempt,
    )) {
      for (const given of [null, {}, { "no. 2": 3 }]) {
        const read = stripes.attempt(f as (input: never) => unknown, given);
        try {
          (f as (input: unknown) => unknown)(given);
        } catch (error) {
          expect(read.ok ? "" : faultsText(read.faults)).toBe((error as Error).message);
        }
      }
    }
  });
});
