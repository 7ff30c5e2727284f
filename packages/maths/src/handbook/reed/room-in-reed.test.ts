import { describe, expect, it } from "vitest";
import { dentsPerInch, inches } from "../../units/index.js";
import { roomInReed } from "./room-in-reed.js";

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
  it("opens into the dents of the reed, and refuses no dents", () => {
    const [step] = roomInReed({ reed, reedLength: inches(25), dents: 203 }).steps;
    expect(step?.calculation(step.input)).toBe(250);
    expect(() => roomInReed({ reed, reedLength: inches(25), dents: 0 })).toThrow("dents");
  });
});
