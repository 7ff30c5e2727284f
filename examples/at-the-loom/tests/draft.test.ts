import { readdirSync, readFileSync } from "node:fs";
import { readJob } from "@thrum/plan";
import { expect, it } from "vitest";
import { settled } from "../src/draft/draft.js";

const folder = "examples/jobs/";
const files = readdirSync(folder).filter((name) => /^\d[^.]*\.yaml$/u.test(name));

it("leaves every example as it was where nothing is answered", () => {
  expect(files).toHaveLength(9);
  for (const file of files) {
    const text = readFileSync(folder + file, "utf8");
    expect(settled({ text, typed: {} }, [])).toEqual({ text, typed: {}, faults: {} });
  }
});

it("keeps what does not read as it was typed, with its sentence, and takes it up once it reads", () => {
  const first = settled({ text: "", typed: {} }, [{ path: "loom.reed", value: "10 per" }]);
  expect(first.typed).toEqual({ "loom.reed": "10 per" });
  expect(first.faults["loom.reed"]).toContain('not "10 per"');
  expect(readJob(first.text).ok).toBe(true);
  const second = settled(first, [{ path: "loom.reed", value: "10 per inch" }]);
  expect(second).toEqual({ text: "loom: { reed: 10 per inch }\n", typed: {}, faults: {} });
});

it("reads the other answers beside one that does not read", () => {
  const { text, typed } = settled({ text: "", typed: { "loom.reed": "ten" } }, [
    { path: "warp.length", value: "5 yd" },
  ]);
  expect(typed).toEqual({ "loom.reed": "ten" });
  expect(text).toBe("warp: { length: 5 yd }\n");
});

it("makes a group of a weft in one yarn where more is answered about it", () => {
  const { text } = settled({ text: "weft: natural\n", typed: {} }, [{ path: "weft.allowance", value: "5 % added" }]);
  expect(text).toBe("weft: { stripes: natural, allowance: 5 % added }\n");
});
