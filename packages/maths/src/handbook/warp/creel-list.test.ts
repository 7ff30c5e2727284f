import fc from "fast-check";
import { describe, expect, it } from "vitest";
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
  it("is refused without stripes, for a yarn without a name, for half an end and for a warp too wide", () => {
    const wrong = (list: unknown) => () => creelList({ ...input, stripes: list as never });
    expect(wrong([])).toThrow(/list of stripes/u);
    expect(wrong(undefined)).toThrow("expected a list of stripes, received nothing");
    expect(wrong([{ yarn: "", ends: 4 }])).toThrow(/a name of 1 to 200 letters/u);
    expect(wrong([{ yarn: "ash", ends: 1.5 }])).toThrow("{ stripes[0].ends }): expected a whole number");
    expect(wrong([{ yarn: "ash", ends: 4, colour: "grey" }])).toThrow(/colour/u);
    expect(
      wrong([
        { yarn: "ash", ends: 60_000 },
        { yarn: "coal", ends: 60_000 },
      ]),
    ).toThrow(/100000 ends/u);
    expect(() => creelList({ ...input, stripes, endsPerSection: 0 })).toThrow("endsPerSection");
  });
});
