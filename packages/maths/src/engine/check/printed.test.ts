// The files of `golden` are written by hand from the sums; the tests read them and never write them.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, validInput } from "#ci/inputs.js";
import { warpLength, widthInReed, yarnMass } from "../../handbook/index.js";
import { cottonCount, inches, percentLost, yards } from "../../units/index.js";
import { QuantityError } from "../refusal.js";
import { asHtml, asLatex, asMarkdown, asMathML, asText, explain } from "../working/index.js";
import type { Remarks, Working } from "../working/index.js";
import { check, remarks } from "./index.js";

const printers = { text: asText, markdown: asMarkdown, latex: asLatex, mathml: asMathML, html: asHtml };
const napkins = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};
const narrowed = { finishedWidth: inches(18), reedToFinished: percentLost(10) };
const said = {
  "../working/golden/warp-length": explain(warpLength, napkins),
  "../working/golden/yarn-mass": explain(yarnMass, { length: yards(1610), count: cottonCount(8) }),
  "./golden/percentage-added": remarks(check(warpLength, napkins, { written: "6.94", unit: yards })),
  "./golden/other-convention": remarks(
    check(widthInReed, narrowed, { written: "19.8", unit: inches, base: "not stated" }),
  ),
};

describe.each(Object.entries(said))("%s", (name, thing) => {
  it.each(Object.entries(printers))("is printed as %s in just these words and numbers", (kind, print) => {
    const golden = readFileSync(new URL(`${name}.${kind}.txt`, import.meta.url), "utf8");
    expect(`${print(thing)}\n`).toBe(golden);
  });
});

const numbersIn = (text: string): readonly string[] => text.match(/\d+(?:\.\d+)?/gu) ?? [];

/** What a page shows of it, without its tags. */
const shown = (page: string): string => page.replace(/<[^>]*>/gu, " ").replace(/&#\d+;/gu, " ");

/** A working and what is said of an answer, from inputs that a seed gives; the same each time. */
function told(calculation: (typeof calculations)[number][1]): readonly [Working, Remarks] {
  for (const input of fc.sample(validInput(calculation), { seed: 20, numRuns: 40 })) {
    try {
      const claim = { written: "1.23", unit: null } as never;
      return [explain(calculation, input), remarks(check(calculation as never, input as never, claim))];
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
    }
  }
  throw new Error("no input gave an answer");
}

describe.each(calculations)("%s", (_name, calculation) => {
  it("is told with the same numbers in the same order in every notation, and so is what is said of an answer", () => {
    const [working, spoken] = told(calculation);
    const bare = { ...working, name: "", inputs: [], conversions: [], source: {} as never };
    const inText = numbersIn(asText(bare));
    expect(inText).not.toEqual([]);
    expect(numbersIn(asLatex(bare))).toEqual(inText);
    expect(numbersIn(shown(asMathML(bare)))).toEqual(inText);
    expect(numbersIn(shown(asHtml(bare)))).toEqual(inText);
    expect(numbersIn(shown(asMarkdown(bare).replace(/^\d+\. /gmu, "")))).toEqual(inText);
    for (const print of Object.values(printers))
      expect(numbersIn(shown(print(spoken)))).toEqual(numbersIn(asText(spoken)));
  });
});
