import { expect, it } from "vitest";
import { attempt, currency, equal, inches } from "../index.js";
import { revive, unitEntries } from "./index.js";

it("makes a quantity of every unit again, and leaves anything else as it is", () => {
  for (const { unit } of unitEntries()) {
    const made = unit("7.25");
    const again = JSON.parse(JSON.stringify({ kept: [made] }), revive) as { kept: [typeof made] };
    expect(again.kept[0].in(unit), unit.name).toBe(7.25);
    expect(equal(again.kept[0], made), unit.name).toBe(true);
  }
  const price = currency("GBP")("12.5");
  expect(equal(JSON.parse(JSON.stringify(price), revive) as typeof price, price)).toBe(true);
  const other = { note: "hem", ends: 3, none: null, list: [true, { unit: "x", value: 3 }] };
  expect(JSON.parse(JSON.stringify(other), revive)).toEqual(other);
});

it("refuses a unit there is none of", () => {
  const wrong = JSON.stringify(inches(21)).replace("inches", "spans");
  const read = attempt(JSON.parse, wrong, revive);
  expect(read).toMatchObject({ ok: false, faults: [{ code: "unknown-unit", function: "revive" }] });
  if (!read.ok) expect(read.faults[0].params.candidates).toContain("inches");
});
