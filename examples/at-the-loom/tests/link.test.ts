import { readFileSync } from "node:fs";
import { deflateSync } from "fflate";
import { expect, it } from "vitest";
import { jobOfLink, linkOf } from "../src/draft/link.js";

const napkins = readFileSync("examples/jobs/2-hall-napkins.yaml", "utf8");
const packed = (bytes: Uint8Array): string => `#j1.${Buffer.from(deflateSync(bytes)).toString("base64url")}`;

it("carries the napkins there and back", () => {
  expect(jobOfLink(linkOf(napkins) ?? "")).toBe(napkins);
});

it("refuses a link of 8,001 characters, and makes none", () => {
  expect(jobOfLink(`#j1.${"A".repeat(8001)}`)).toBeNull();
  const noise = Array.from({ length: 9000 }, (_, at) => Math.round(1e6 * Math.sin(at)).toString(36)).join(" ");
  expect(linkOf(noise)).toBeNull();
});

it("stops a bomb at 256 kB", () => {
  const bomb = packed(new Uint8Array(4 * 1024 * 1024));
  expect(bomb.length).toBeLessThan(8000);
  expect(jobOfLink(bomb)).toBeNull();
  expect(jobOfLink(packed(new Uint8Array(200 * 1024).fill(97)))).toHaveLength(200 * 1024);
});

it("takes no text for a job that is none", () => {
  expect(jobOfLink("#j1.")).toBeNull();
  expect(jobOfLink("#j1.<script>")).toBeNull();
});
