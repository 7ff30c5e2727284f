import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  commonPractice,
  cupOnTheBus2018,
  vogl2001,
  warpingPlan2015,
  woodhouseKilgour1921,
} from "../../sources/index.js";
import { endsPerInch, inches, yards } from "../../units/index.js";
import { creelList } from "./creel-list.js";
import { endsPerSection } from "./ends-per-section.js";
import { sectionsInWarp } from "./sections-in-warp.js";
import { splitOverBeams } from "./split-over-beams.js";
import { spoolLength } from "./spool-length.js";

const worked = (exact: string): Citation => ({
  source: commonPractice,
  at: "worked by hand",
  status: "common practice, no source",
  prints: "",
  exact,
});

describe("ends in a section", () => {
  const rows: readonly (readonly [title: string, Citation, sett: string, width: number])[] = [
    ["30 to the inch, sections of an inch", published(vogl2001, "whole page", "30", "30"), "30", 1],
    ["30 to the inch, sections of two inches", published(vogl2001, "whole page", "60", "60"), "30", 2],
    ["20 to the inch, sections of two inches", published(cupOnTheBus2018, "whole post", "40", "40"), "20", 2],
    ["12 1/2 to the inch, sections of an inch: half an end is none", worked("12"), "12.5", 1],
  ];
  for (const [title, citation, sett, width] of rows) {
    cited(title, citation, endsPerSection, [{ sett: endsPerInch(sett), sectionWidth: inches(width) }]);
  }
});

describe("sections in a warp", () => {
  const rows: readonly (readonly [title: string, Citation, ends: number, perSection: number])[] = [
    ["440 ends in bouts of 40", published(cupOnTheBus2018, "whole post", "11", "11"), 440, 40],
    ["500 ends in sections of 56", published(woodhouseKilgour1921, "ch. XIII", "", "9"), 500, 56],
    ["113 ends in sections of 56: one end takes a third", worked("3"), 113, 56],
  ];
  for (const [title, citation, ends, perSection] of rows) {
    cited(title, citation, sectionsInWarp, [{ ends, endsPerSection: perSection }]);
  }
});

describe("length of a spool", () => {
  const rows: readonly (readonly [title: string, Citation, sections: number])[] = [
    ["20 sections of 25 yards and half a yard cut off", published(vogl2001, "whole page", "510", "510"), 20],
    ["10 sections of 25 yards and half a yard cut off", published(vogl2001, "whole page", "255", "255"), 10],
  ];
  for (const [title, citation, sections] of rows) {
    cited(title, citation, spoolLength, [{ sections, warpLength: yards(25), cutWaste: yards("0.5") }], yards);
  }
});

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
    expect(wrong(undefined)).toThrow(QuantityError);
    expect(wrong([{ yarn: "", ends: 4 }])).toThrow(/a name of 1 to 200 letters/u);
    expect(wrong([{ yarn: "ash", ends: 1.5 }])).toThrow(QuantityError);
    expect(wrong([{ yarn: "ash", ends: 4, colour: "grey" }])).toThrow(/colour/u);
    expect(
      wrong([
        { yarn: "ash", ends: 60_000 },
        { yarn: "coal", ends: 60_000 },
      ]),
    ).toThrow(/100000 ends/u);
    expect(() => creelList({ ...input, stripes, endsPerSection: 0 })).toThrow(QuantityError);
  });
});

describe("a warp over several beams", () => {
  cited(
    "4320 ends on seven beams",
    published(warpingPlan2015, "example 1", "6 × 617 and 1 × 618", "617,617,617,617,617,617,618"),
    splitOverBeams,
    [{ ends: 4320, mostPerBeam: 640 }],
    "endsOnEach",
  );
  cited(
    "four beams of 1080",
    published(warpingPlan2015, "example 1", "4320", "1080,1080,1080,1080"),
    splitOverBeams,
    [{ ends: 4320, mostPerBeam: 1080 }],
    "endsOnEach",
  );

  it("takes as few beams as hold it, and shares out what is over one end to a beam", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 900 }), (ends, mostPerBeam) => {
        const { beams, endsOnEach } = splitOverBeams({ ends, mostPerBeam });
        expect(endsOnEach.reduce((total, one) => total + one, 0)).toBe(ends);
        expect(endsOnEach).toHaveLength(beams);
        expect(Math.max(...endsOnEach)).toBeLessThanOrEqual(mostPerBeam);
        expect(Math.max(...endsOnEach) - Math.min(...endsOnEach)).toBeLessThanOrEqual(1);
        expect((beams - 1) * mostPerBeam).toBeLessThan(ends);
      }),
    );
  });

  it("is refused for no ends and for beams that hold none", () => {
    expect(() => splitOverBeams({ ends: 0, mostPerBeam: 10 })).toThrow(QuantityError);
    expect(() => splitOverBeams({ ends: 10, mostPerBeam: 0 })).toThrow(QuantityError);
  });
});
