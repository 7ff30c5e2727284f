import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, dentsPerInch, endsPerInch, inches } from "../../units/index.js";
import { roomInReed } from "./room-in-reed.js";

describe("room in a reed", () => {
  const reed = dentsPerInch(10);
  // 10 × 25 = 250 dents, 250 − 203 = 47 of them left, and 47 ÷ 2 = 23 with one over.
  cited(
    "dents left empty at the left of 203, in 25 inches of a 10-dent reed",
    byHand(commonPractice, "23"),
    roomInReed,
    [{ reed, reedLength: inches(25), dents: 203 }],
    "emptyAtLeft",
  );
  it("is all of the reed: what is empty at both sides and the warp, the right with one more or none", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 900 }), (length, dents) => {
        const room = roomInReed({ reed, reedLength: inches(length), dents });
        expect(room.dentsLeft).toBe(10 * length - dents);
        expect(room.verdict).toBe(dents <= 10 * length ? "fits" : "does not fit");
        const { emptyAtLeft, emptyAtRight } = room;
        expect(emptyAtLeft + emptyAtRight).toBe(Math.max(0, 10 * length - dents));
        expect([0, 1]).toContain(emptyAtRight - emptyAtLeft);
        const metric = roomInReed({ reed, reedLength: centimetres(`${String(length * 254)}e-2`), dents });
        expect(metric.emptyAtLeft).toBe(emptyAtLeft);
      }),
    );
  });
  it("puts 203 dents in the middle of 250: 23 empty at the left, 24 at the right", () => {
    const room = roomInReed({ reed, reedLength: inches(25), dents: 203 });
    expect(room).toMatchObject({ verdict: "fits", dentsInReed: 250, dentsLeft: 47, emptyAtLeft: 23, emptyAtRight: 24 });
    expect(room.says).toBe(
      "The warp begins in dent 24 from the left and leaves 24 empty at the right: one more, as the warp cannot stand quite in the middle.",
    );
  });
  it("fits to the last dent, and is short by what is over", () => {
    // One dent of ten leaves nine: four and five.
    expect(roomInReed({ reed, reedLength: inches(1), dents: 1 })).toMatchObject({ emptyAtLeft: 4, emptyAtRight: 5 });
    expect(roomInReed({ reed, reedLength: inches(25), dents: 250 })).toMatchObject({ verdict: "fits", dentsLeft: 0 });
    expect(roomInReed({ reed, reedLength: inches(25), dents: 250 }).says).toBe(
      "The warp begins in dent 1 from the left and leaves 0 empty at the right.",
    );
    const short = roomInReed({ reed, reedLength: inches(25), dents: 251 });
    expect(short).toMatchObject({ verdict: "does not fit", dentsLeft: -1, emptyAtLeft: 0, emptyAtRight: 0 });
    expect(short.says).toBe("The reed is 1 dent too short for this warp.");
    expect(roomInReed({ reed, reedLength: inches(25), dents: 260 }).says).toContain("10 dents too short");
  });
  it("opens into the dents of the reed", () => {
    const [step] = roomInReed({ reed, reedLength: inches(25), dents: 203 }).steps;
    expect(step?.calculation(step.input)).toBe(250);
  });
  it("is refused for a warp of no dents, a reed of no length, and a sett for the reed", () => {
    const sound = { reed, reedLength: inches(25), dents: 203 };
    expect(codesOf(roomInReed, { ...sound, dents: 0 })).toEqual(["out-of-range dents"]);
    expect(codesOf(roomInReed, { ...sound, reedLength: inches(0) })).toEqual(["out-of-range reedLength"]);
    expect(codesOf(roomInReed, { ...sound, reed: endsPerInch(10) })).toEqual(["wrong-kind reed"]);
  });
});
