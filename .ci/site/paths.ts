// The ways of five readers through the site, from home to what each came for, as a hand would walk them.
import { expect } from "vitest";
import type { Page } from "playwright-core";

/** Follows a link, or presses a button, of the text. */
const follow = async (page: Page, text: string | RegExp): Promise<void> => {
  await page.locator("main").getByRole("link", { name: text }).first().click();
};
const press = (page: Page, name: string): Promise<void> => page.getByRole("button", { name }).click();

/** The numbers of eight napkins, typed into the page of the length of a warp. */
async function typeNapkins(page: Page): Promise<void> {
  await page.getByLabel("pieces", { exact: true }).waitFor();
  const inInches = { "finished length": "21 in", "hem each end": "1 in", "loom waste": "30 in" };
  for (const [label, typed] of Object.entries({ pieces: "8", ...inInches, "loom to finished": "10", "take-up": "8" }))
    await page.getByLabel(label, { exact: true }).fill(typed);
  await page.getByLabel("unit of the answer").selectOption("yards");
  await expect.poll(() => page.locator("output").innerText()).toContain("7.00617 yd");
}

/** Where a file lies that a link offers. */
async function fileOf(page: Page, text: string): Promise<string> {
  const link = page.locator("main").getByRole("link", { name: text }).first();
  const address = new URL((await link.getAttribute("href")) ?? "", page.url());
  const answer = await page.request.get(address.href);
  expect(answer.status(), text).toBe(200);
  return answer.text();
}

export const paths: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  "a weaver finds the length of her warp": async (page) => {
    await follow(page, "Find a sum");
    await follow(page, "Warp length");
    await typeNapkins(page);
  },
  "a spreadsheet user takes the formula of her cells": async (page) => {
    await follow(page, "each sum as a cell formula");
    await follow(page, "formula page");
    await follow(page, "Warp length");
    await typeNapkins(page);
    await press(page, "the cell formula");
    const uses = page.locator(".uses");
    await expect.poll(() => uses.innerText()).toContain("=(A2*(B2+2*C2)/(1-D2/100)/(1-E2/100)+F2)/36");
    expect(await uses.innerText()).toContain("B2: finished length in in");
  },
  "a teacher sets a sum, and a learner has hers judged": async (page) => {
    await follow(page, "set a sum whose answer is hidden");
    await follow(page, "warp length");
    await typeNapkins(page);
    await page.evaluate("navigator.clipboard.writeText = async (text) => { globalThis.sent = text }");
    await press(page, "the link without its answer");
    await expect.poll(() => page.evaluate<string | undefined>("globalThis.sent")).toContain("ask=1");
    await page.goto(await page.evaluate<string>("globalThis.sent"), { waitUntil: "networkidle" });
    await expect.poll(() => page.locator(".result").innerText()).toContain("= ?");
    await page.getByLabel("Check my answer", { exact: true }).fill("6.9");
    await press(page, "Judge it");
    await expect.poll(() => page.locator(".says").innerText()).toContain("not the answer");
  },
  "a notebook user takes a notebook and what starts it": async (page) => {
    await follow(page, "whole columns at once");
    await page.getByText("deno jupyter --install").waitFor();
    expect(await fileOf(page, "take the notebook")).toContain('"cells"');
    expect(await fileOf(page, "the case pack")).toContain('"formulas"');
  },
  "an app developer finds the install line, a first sum and a form": async (page) => {
    await follow(page, "Use the library");
    await page.getByText("npm install @thrum/maths").waitFor();
    await page.getByText("warpLength(napkins).in(yards)").waitFor();
    await follow(page, "App developers");
    await page.getByRole("heading", { name: "A form for any formula" }).waitFor();
    expect(await page.locator("main").innerText()).toContain("inputEntries");
  },
  "a hand checker goes from a printed number to its book": async (page) => {
    await follow(page, "from a printed sum to the book");
    await follow(page, "every published case");
    await page.getByRole("searchbox").fill("17.64");
    const rows = page.locator("main tbody tr:visible");
    await expect.poll(() => rows.count()).toBeLessThan(5);
    expect(await rows.first().innerText()).toContain("How to Calculate Take-Up and Shrinkage");
    await follow(page, /^warp length$/u);
    await expect.poll(() => page.locator("h1").innerText()).toMatch(/^Warp length/u);
    expect(await page.locator("main").innerText()).toContain("17.64");
  },
};
