import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  bell1895,
  bergdala,
  brinton1919,
  brooks1892,
  oddWeavings,
  taylor1909,
  ullgarnet2010,
  wolfensberger1921,
} from "../../sources/index.js";
import {
  boltonReed,
  centimetres,
  dentsPerInch,
  dentsPerTenCentimetres,
  inches,
  scotchReed,
  stockportReed,
} from "../../units/index.js";
import { dentsForWidth } from "./dents-for-width.js";
import { dentsInParts } from "./dents-in-parts.js";
import { dentsInReed } from "./dents-in-reed.js";
import { endsInReed } from "./ends-in-reed.js";
import { reedFromDents } from "./reed-from-dents.js";
import { roomInReed } from "./room-in-reed.js";

describe("dents for a width", () => {
  cited("38 inches of an 1100 Scotch reed", published(brooks1892, "p. 96 of the copy", "1130", "1130"), dentsForWidth, [
    { reed: scotchReed(1100), widthInReed: inches(38) },
  ]);
  cited(
    "a Brussels width of 27 inches, 350 splits on 37",
    published(bell1895, "p. 278, ch. XI", "256", "256"),
    dentsForWidth,
    [{ reed: scotchReed(350), widthInReed: inches(27) }],
  );
  cited(
    "satin of 46 inches at 66 to the inch, 1 3/4 % added",
    published(wolfensberger1921, "p. 84, disposition 3", "3090", "3090"),
    dentsForWidth,
    [{ reed: dentsPerInch(66), widthInReed: inches("46.805") }],
  );
  cited(
    "the same satin as it shall come out",
    published(wolfensberger1921, "p. 84, disposition 3", "3036", "3036"),
    dentsForWidth,
    [{ reed: dentsPerInch(66), widthInReed: inches(46) }],
  );
  cited(
    "armure of 18 1/2 inches at 52 to the inch, 2 % added",
    published(wolfensberger1921, "p. 92, disposition 5", "982", "982"),
    dentsForWidth,
    [{ reed: dentsPerInch(52), widthInReed: inches("18.87") }],
  );
  cited(
    "pekin stripe of 20 1/4 inches at 68 to the inch, 1 1/2 % added",
    published(
      wolfensberger1921,
      "p. 96, disposition 6",
      "1400",
      "1398",
      "adds 23 dents where 1 1/2 % of 1377 is 20.7, to close the stripe",
    ),
    dentsForWidth,
    [{ reed: dentsPerInch(68), widthInReed: inches("20.55375") }],
  );

  it("are enough, and without the last are not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 4000 }), (reed, sixteenths) => {
        const dents = dentsForWidth({ reed: dentsPerInch(reed), widthInReed: inches(sixteenths / 16) });
        expect(dents * 16).toBeGreaterThanOrEqual(reed * sixteenths);
        expect((dents - 1) * 16).toBeLessThan(reed * sixteenths);
      }),
    );
  });
});

describe("dents in a reed", () => {
  cited("24 1/4 inches of a 40 Stockport reed", published(brooks1892, "p. 92 of the copy", "485", "485"), dentsInReed, [
    { reed: stockportReed(40), reedLength: inches("24.25") },
  ]);
  cited("70 centimetres of a 30/10 reed", published(ullgarnet2010, "whole post", "210", "210"), dentsInReed, [
    { reed: dentsPerTenCentimetres(30), reedLength: centimetres(70) },
  ]);
  cited("37 inches of a 40 porter reed", published(brooks1892, "p. 147, ch. IX", "800", "800"), dentsInReed, [
    { reed: scotchReed(800), reedLength: inches(37) },
  ]);
  cited(
    "part of a dent is none: 12 inches of 1100 Scotch",
    { source: brooks1892, at: "p. 96 of the copy", status: "read", prints: "", exact: "356" },
    dentsInReed,
    [{ reed: scotchReed(1100), reedLength: inches(12) }],
  );

  it("are counted whole: 10 inches of a 12.5-dent reed hold 125, a hair less holds 124", () => {
    const reed = dentsPerInch("12.5");
    expect(dentsInReed({ reed, reedLength: inches(10) })).toBe(125);
    expect(dentsInReed({ reed, reedLength: inches("9.999") })).toBe(124);
  });
});

describe("ends in a reed", () => {
  cited(
    "38 inches of an 1100 Scotch reed at two",
    published(brooks1892, "p. 96 of the copy", "2260", "2260"),
    endsInReed,
    [{ reed: scotchReed(1100), widthInReed: inches(38), endsPerDent: 2 }],
  );
  cited(
    "37 inches of a 2000 Scotch reed at two",
    published(taylor1909, "p. 244 of the copy", "4000", "4000"),
    endsInReed,
    [{ reed: scotchReed(2000), widthInReed: inches(37), endsPerDent: 2 }],
  );
  cited(
    "39 inches of a 36 Bolton reed at two",
    published(
      brooks1892,
      "p. 96 of the copy",
      "2238",
      "2316",
      "misprint: 36 × 39 × 1.6495 is 2315.9; 2238 fits none of the figures given",
    ),
    endsInReed,
    [{ reed: boltonReed(36), widthInReed: inches(39), endsPerDent: 2 }],
  );
  cited(
    "27 inches of 350 splits on 37, at two",
    { source: bell1895, at: "p. 278, ch. XI", status: "read", prints: "", exact: "512" },
    endsInReed,
    [{ reed: scotchReed(350), widthInReed: inches(27), endsPerDent: 2 }],
  );
  cited(
    "30 inches of a 70 Stockport reed at two",
    { source: taylor1909, at: "p. 245 of the copy", status: "read", prints: "", exact: "2100" },
    endsInReed,
    [{ reed: stockportReed(70), widthInReed: inches(30), endsPerDent: 2 }],
  );

  it("fill every dent", () => {
    expect(endsInReed({ reed: dentsPerInch(10), widthInReed: inches("20.31"), endsPerDent: 3 })).toBe(612);
  });
});

describe("the number of a reed from dents counted", () => {
  cited(
    "1296 dents on 104 cm",
    published(oddWeavings, "old wooden reeds", "125", "1620/13"),
    reedFromDents,
    [{ dents: 1296, length: centimetres(104) }],
    dentsPerTenCentimetres,
  );
  cited(
    "120 dents on 15 cm",
    published(bergdala, "p. 6 of the book", "80", "80"),
    reedFromDents,
    [{ dents: 120, length: centimetres(15) }],
    dentsPerTenCentimetres,
  );
  cited(
    "120 dents on 15 cm, to the inch",
    published(bergdala, "sizes of reeds", "20", "20.32"),
    reedFromDents,
    [{ dents: 120, length: centimetres(15) }],
    dentsPerInch,
  );
  cited(
    "544 dents of ingrain carpet on 36 inches",
    published(brinton1919, "ingrain chapter", "15", "136/9"),
    reedFromDents,
    [{ dents: 544, length: inches(36) }],
    dentsPerInch,
  );
  cited(
    "189 bobbins on three quarters of a yard",
    published(brinton1919, "spool Axminster chapter", "7", "7"),
    reedFromDents,
    [{ dents: 189, length: inches(27) }],
    dentsPerInch,
  );
});

describe("dents of a reed marked in parts", () => {
  cited("thirteen score", published(oddWeavings, "old wooden reeds", "260", "260"), dentsInParts, [
    { parts: 13, dentsInPart: 20 },
  ]);
  cited("26 parts of 30", published(oddWeavings, "old wooden reeds", "780", "780"), dentsInParts, [
    { parts: 26, dentsInPart: 30 },
  ]);
});

describe("room in a reed", () => {
  const reed = dentsPerInch(10);

  it("puts 203 dents in the middle of 250: 23 empty at the left, 24 at the right", () => {
    const room = roomInReed({ reed, reedLength: inches(25), dents: 203 });
    expect(room).toMatchObject({ verdict: "fits", dentsInReed: 250, dentsLeft: 47, emptyAtLeft: 23, emptyAtRight: 24 });
    expect(room.says).toBe(
      "The warp begins in dent 24 from the left and leaves 24 empty at the right: one more, as the warp cannot stand quite in the middle.",
    );
  });

  it("fits to the last dent, and is short by what is over", () => {
    expect(roomInReed({ reed, reedLength: inches(25), dents: 250 })).toMatchObject({ verdict: "fits", dentsLeft: 0 });
    expect(roomInReed({ reed, reedLength: inches(25), dents: 250 }).says).toBe(
      "The warp begins in dent 1 from the left and leaves 0 empty at the right.",
    );
    const short = roomInReed({ reed, reedLength: inches(25), dents: 251 });
    expect(short).toMatchObject({ verdict: "does not fit", dentsLeft: -1, emptyAtLeft: 0, emptyAtRight: 0 });
    expect(short.says).toBe("The reed is 1 dent too short for this warp.");
    expect(roomInReed({ reed, reedLength: inches(25), dents: 260 }).says).toContain("10 dents too short");
  });

  it("leaves every dent somewhere", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (dents) => {
        const {
          verdict,
          dentsInReed: all,
          emptyAtLeft,
          emptyAtRight,
        } = roomInReed({ reed, reedLength: inches(40), dents });
        expect(verdict).toBe("fits");
        expect(emptyAtLeft + dents + emptyAtRight).toBe(all);
        expect(emptyAtRight - emptyAtLeft).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("opens into the dents of the reed, and refuses no dents", () => {
    const [step] = roomInReed({ reed, reedLength: inches(25), dents: 203 }).steps;
    expect(step?.calculation(step.input)).toBe(250);
    expect(() => roomInReed({ reed, reedLength: inches(25), dents: 0 })).toThrow(QuantityError);
  });
});
