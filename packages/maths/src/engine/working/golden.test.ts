import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { diametersByConstant, warpLength, widthInReedFromFinished } from "../../handbook/index.js";
import { inches, percentLost, yards, yardsPerPound } from "../../units/index.js";
import { check } from "../../check/index.js";
import { asHtml, asLatex, asMarkdown, asMathML, asText, explain } from "./index.js";

const width = { finishedWidth: inches(18), reedToFinished: percentLost(10) };
// 18 ÷ 0.9 = 20; √26896 = 164 and 0.95 × 164 = 155.8; 250 in = 6.94 yd, see check.test.ts; 18 × 1.1 = 19.8.
const things = {
  "width-in-reed": explain(widthInReedFromFinished, width),
  "diameters-by-constant": explain(diametersByConstant, { constant: 0.95, count: yardsPerPound(26896) }),
  "wrong-warp-length": check(warpLength, napkins, { written: "6.94", unit: yards }),
  "width-by-adding": check(widthInReedFromFinished, width, { written: "19.8", unit: inches, base: "not stated" }),
};
const printers = { txt: asText, md: asMarkdown, tex: asLatex, mml: asMathML, html: asHtml };

/** A file written by hand, one row of a table a line for the reader of it. */
function golden(name: string): string {
  const text = readFileSync(new URL(`golden/${name}`, import.meta.url), "utf8").trimEnd();
  return text.replace(/\n(?=<mtr>|<\/mtable>|<tr>|<\/tbody>)/gu, "");
}

describe.each(Object.entries(things))("%s", (name, thing) => {
  it.each(Object.entries(printers))("is printed as the file written by hand has it: .%s", (format, print) => {
    expect(print(thing)).toBe(golden(`${name}.${format}`));
  });
});
