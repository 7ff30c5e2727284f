import fc from "fast-check";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { calculations, validInput } from "#ci/inputs.js";
import { describeWith } from "#ci/program.js";
import { warpLength } from "../../handbook/index.js";
import { inches, percentLost, yards } from "../../units/index.js";
import { QuantityError } from "../refusal.js";
import { asMathML, explain } from "../working/index.js";
import { check, remarks } from "./index.js";

const napkins = {
  pieces: 8,
  finishedLength: inches(21),
  hemEachEnd: inches(1),
  loomToFinished: percentLost(10),
  takeUp: percentLost(8),
  loomWaste: inches(30),
};

/** What MathML Core allows within each element that we write. */
const CONTENT = JSON.stringify({
  math: ["mtable"],
  mtable: ["mtr"],
  mtr: ["mtd"],
  mtd: ["mn", "mo", "mtext"],
  mn: [],
  mo: [],
  mtext: [],
});

/** Faults of a piece of MathML, found by the parser of the browser itself. */
const FAULTS = `(text) => {
  const page = new DOMParser().parseFromString(text, "application/xml");
  if (page.querySelector("parsererror")) return [page.documentElement.textContent];
  const content = ${CONTENT};
  return [...page.querySelectorAll("*")].flatMap((one) => {
    if (one.namespaceURI !== "http://www.w3.org/1998/Math/MathML" || !(one.localName in content)) return [one.localName];
    return [...one.children].filter((child) => !content[one.localName].includes(child.localName)).map((child) => one.localName + " > " + child.localName);
  });
}`;

function exampleOf([name, calculation]: (typeof calculations)[number]): string {
  for (const input of fc.sample(validInput(calculation), { seed: 20, numRuns: 40 })) {
    try {
      return asMathML(explain(calculation, input));
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
    }
  }
  throw new Error(`no input of ${name} gave an answer`);
}

describeWith("Chromium", (executablePath) => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
    page = await browser.newPage();
  }, 60_000);
  afterAll(() => browser.close());

  it("takes the MathML of every working and of a verdict as well-formed, of known elements in their places", async () => {
    const verdict = remarks(check(warpLength, napkins, { written: "6.94", unit: yards }));
    for (const text of [...calculations.map(exampleOf), asMathML(verdict)]) {
      expect(await page.evaluate<string[]>(`(${FAULTS})(${JSON.stringify(text)})`), text).toEqual([]);
    }
    expect(await page.evaluate<string[]>(`(${FAULTS})("<math><mrow/>")`)).not.toEqual([]);
  });

  it("gives a screen reader each line in the order it is read, numbers as numbers and signs as signs", async () => {
    await page.setContent(asMathML(explain(warpLength, napkins)));
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send("Accessibility.getFullAXTree");
    const seen = nodes.filter(({ ignored }) => !ignored);
    const roles = new Set(seen.map(({ role }) => String(role?.value)));
    for (const role of [
      "MathMLMath",
      "MathMLTable",
      "MathMLTableRow",
      "MathMLNumber",
      "MathMLOperator",
      "MathMLText",
    ]) {
      expect(roles).toContain(role);
    }
    const read = seen.filter(({ role }) => role?.value === "StaticText").map(({ name }) => String(name?.value).trim());
    expect(read.slice(0, 15).join(" ")).toBe("cut length = finished length + 2 × hem each end = 21 in + 2 × 1 in");
    expect(read.join(" ")).toContain(
      "on loom = pieces × cut length ÷ ( 1 − loom to finished ) = 8 × 23 in ÷ ( 1 − 10 % ) ≈ 204.444 in",
    );
  });
});
