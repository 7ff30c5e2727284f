import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { yards } from "../../units/index.js";
import { creelList } from "./creel-list.js";

describe("a striped warp in sections", () => {
  const input = { endsPerSection: 20, warpLength: yards(8), cutWaste: yards("0.5") };
  // 16 ash, 8 coal, 16 ash: section 1 is 16 ash and 4 coal, section 2 is 4 coal and 16 ash.
  const stripes = [
    { yarn: "ash", ends: 16 },
    { yarn: "coal", ends: 8 },
    { yarn: "ash", ends: 19 },
  ];
  // 3 × (8 + 1/2).
  cited(
    "a spool of three sections of 8 yards, half a yard cut off each",
    byHand(commonPractice, "51/2"),
    creelList,
    [{ ...input, stripes }],
    ["spools.0.length", yards],
  );
  it("names for each section what stands in the creel, in order", () => {
    expect(creelList({ ...input, stripes }).sections).toEqual([
      {
        section: 1,
        ends: 20,
        creel: [
          { yarn: "ash", ends: 16 },
          { yarn: "coal", ends: 4 },
        ],
      },
      {
        section: 2,
        ends: 20,
        creel: [
          { yarn: "coal", ends: 4 },
          { yarn: "ash", ends: 16 },
        ],
      },
      { section: 3, ends: 3, creel: [{ yarn: "ash", ends: 3 }] },
    ]);
  });
  it("winds each spool for the sections that use it: three ash of 25.5 yd, thirteen of 17, four coal of 17", () => {
    const lengths = creelList({ ...input, stripes }).spools.map(
      ({ yarn, length }) => `${yarn} ${String(length.in(yards))}`,
    );
    const count = (what: string): number => lengths.filter((one) => one === what).length;
    expect([count("ash 25.5"), count("ash 17"), count("coal 17"), lengths.length]).toEqual([3, 13, 4, 20]);
  });
  it("counts a yarn that stands twice in one section for all its ends together", () => {
    const twice = [
      { yarn: "ash", ends: 5 },
      { yarn: "coal", ends: 10 },
      { yarn: "ash", ends: 5 },
    ];
    const { spools } = creelList({ ...input, stripes: twice });
    expect(spools.filter(({ yarn }) => yarn === "ash")).toHaveLength(10);
    expect(spools.map(({ spool }) => spool).slice(0, 3)).toEqual([1, 2, 3]);
  });
  it("loses no end, and winds in all what the ends and the cuts take", () => {
    const stripe = fc.record({ yarn: fc.constantFrom("ash", "coal", "weld"), ends: fc.integer({ min: 1, max: 50 }) });
    fc.assert(
      fc.property(
        fc.array(stripe, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 1, max: 40 }),
        (some, perSection) => {
          const { sections, spools } = creelList({ ...input, stripes: some, endsPerSection: perSection });
          const ends = some.reduce((total, one) => total + one.ends, 0);
          expect(sections.reduce((total, one) => total + one.ends, 0)).toBe(ends);
          expect(sections.slice(0, -1).every((one) => one.ends === perSection)).toBe(true);
          expect(sections.flatMap(({ creel }) => creel).reduce((total, one) => total + one.ends, 0)).toBe(ends);
          expect(spools.reduce((total, { length }) => total + length.in(yards), 0)).toBe(ends * 8.5);
          const [step] = spools.map((one) => one.step);
          expect(step?.calculation(step.input)).toEqual(spools[0]?.length);
        },
      ),
    );
  });
  it("is one section and one spool where an end stands alone, and as many sections as ends where each takes one", () => {
    const alone = creelList({ ...input, stripes: [{ yarn: "ash", ends: 1 }], endsPerSection: 1 });
    expect(alone.sections).toEqual([{ section: 1, ends: 1, creel: [{ yarn: "ash", ends: 1 }] }]);
    expect(alone.spools.map(({ sections, length }) => [sections, length.in(yards)])).toEqual([[1, 8.5]]);
    const singly = creelList({ ...input, stripes, endsPerSection: 1 });
    expect([singly.sections.length, singly.spools.map(({ sections }) => sections)]).toEqual([43, [35, 8]]);
  });
  it("takes the widest warp, of 100000 ends, and none wider", () => {
    const half = { yarn: "ash", ends: 50_000 };
    const of = (...list: readonly unknown[]): object => ({ ...input, stripes: list, endsPerSection: 50_000 });
    expect(codesOf(creelList, of(half, half))).toEqual([]);
    expect(codesOf(creelList, of(half, half, { yarn: "ash", ends: 1 }))).toEqual(["out-of-range stripes"]);
    expect(codesOf(creelList, of({ yarn: "ash", ends: 100_001 }))).toEqual(["out-of-range stripes.0.ends"]);
  });
  it("is refused without stripes, for a yarn without a name, for half an end and for a section of none", () => {
    const of = (list: unknown): readonly string[] => codesOf(creelList, { ...input, stripes: list });
    expect(of([])).toEqual(["empty stripes"]);
    expect(of(undefined)).toEqual(["missing stripes"]);
    expect(of([{ yarn: "", ends: 4 }])).toEqual(["empty stripes.0.yarn"]);
    expect(of([{ yarn: "a".repeat(201), ends: 4 }])).toEqual(["too-long stripes.0.yarn"]);
    expect(of([{ yarn: "ash", ends: 4 }, { ends: 1.5 }])).toEqual([
      "missing stripes.1.yarn",
      "not-whole stripes.1.ends",
    ]);
    expect(of([{ yarn: "ash", ends: 4, colour: "grey" }])).toEqual(["unknown-field stripes.0.colour"]);
    expect(codesOf(creelList, { ...input, stripes, endsPerSection: 0, cutWaste: yards(-1) })).toEqual([
      "out-of-range endsPerSection",
      "out-of-range cutWaste",
    ]);
    expect(codesOf(creelList, { ...input, stripes, warpLength: yards(0) })).toEqual(["out-of-range warpLength"]);
  });
});
