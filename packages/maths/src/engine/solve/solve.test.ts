import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, validInput } from "#ci/inputs.js";
import {
  contentFromRegain,
  countFromWrapping,
  crimpFromMeasures,
  endsForWidth,
  foldedCount,
  settByDiameter,
  warpLength,
  warpLengthForSizes,
} from "../../handbook/index.js";
import { EXACT_STEP } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { QuantityError } from "../refusal.js";
import { formulaStyle, parseTree, run, stepsOf, treeText } from "../formula/index.js";
import type { Declared, Line, Run } from "../formula/index.js";
import { rearrangement } from "./index.js";

const style = formulaStyle((name) => name);

function text(lines: readonly Line[]): readonly string[] {
  return lines.map(({ name, tree }) => `${name} = ${treeText(tree, style)}`);
}

function turned(calculation: { readonly declaration: Declared }, wanted: string): readonly string[] | string {
  const found = rearrangement(calculation.declaration, wanted);
  return found.ok ? text(found.lines) : found.why;
}

function worked(declared: Declared, input: unknown): Run | null {
  try {
    return run(declared, input);
  } catch (error) {
    if (error instanceof QuantityError) return null;
    throw error;
  }
}

describe("a formula turned round", () => {
  it("goes back line by line from the warp to the pieces it is long enough for", () => {
    expect(turned(warpLength, "pieces")).toEqual([
      "cutLength = finishedLength + 2 × hemEachEnd",
      "threadInCloth = warp − loomWaste",
      "onLoom = threadInCloth × (1 − takeUp)",
      "pieces = onLoom × (1 − loomToFinished) ÷ cutLength",
    ]);
  });

  it("finds a percentage, and a measure inside a bracket", () => {
    expect(turned(warpLength, "takeUp")).toContain("takeUp = 1 − onLoom ÷ threadInCloth");
    expect(turned(warpLength, "hemEachEnd")).toContain("hemEachEnd = (cutLength − finishedLength) ÷ 2");
  });

  it("squares what stood under a root", () => {
    expect(turned(settByDiameter, "count")).toContain("count = diameters ÷ constant × diameters ÷ constant");
  });

  it("gathers an input that stands there twice", () => {
    expect(turned(contentFromRegain, "regain")).toEqual(["regain = content ÷ (1 − content)"]);
    expect(turned(crimpFromMeasures, "clothLength")).toEqual(["clothLength = threadLength ÷ (1 + crimp)"]);
    expect(turned(settByDiameter, "ends")).toContain("ends = intersections × sett ÷ (diameters − sett)");
  });

  it("is refused with the reason under a rounding, for a list, for a unit, and for what is no input", () => {
    expect(turned(endsForWidth, "widthInReed")).toContain(
      "widthInReed cannot be worked out from ends: it stands under",
    );
    expect(turned(foldedCount, "counts")).toContain("it is a list");
    expect(turned(countFromWrapping, "system")).toContain("it is a choice");
    expect(turned(warpLength, "toString")).toContain("no such input");
    expect(turned(warpLengthForSizes, "pieces")).toContain("it is a list");
  });
});

describe.each(calculations)("%s turned round", (_name, { declaration }) => {
  const fields = Object.keys(declaration.inputs);

  it("gives back every input it can be turned to, in lines that read as they print", () => {
    for (const field of fields) {
      const found = rearrangement(declaration, field);
      if (!found.ok) {
        expect(found.why.length).toBeGreaterThan(40);
        continue;
      }
      const read = found.lines.map(({ name, tree }) => ({ name, tree: parseTree(treeText(tree, style)) }));
      expect(text(read)).toEqual(text(found.lines));
      expect(found.lines.at(-1)?.name).toBe(field);
      fc.assert(
        fc.property(validInput({ declaration } as never), (input) => {
          const forwards = worked(declaration, input);
          const answer = forwards?.steps.at(-1)?.value;
          if (forwards === null || answer === undefined) return;
          const { [field]: own, ...others } = Object.fromEntries(forwards.values);
          const { steps, failed } = stepsOf(
            read,
            new Map([...Object.entries(others), [found.answer, answer]]),
            EXACT_STEP,
          );
          if (failed !== null) return;
          const [back, was] = [steps.at(-1)?.value as Decimal, own as Decimal];
          expect(back.minus(was).abs().toNumber()).toBeLessThanOrEqual(1e-15 * Math.max(1, was.abs().toNumber()));
        }),
        { numRuns: 30 },
      );
    }
  });
});
