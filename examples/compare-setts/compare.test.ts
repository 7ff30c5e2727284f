import { spawnSync } from "node:child_process";
import { expect, it } from "vitest";

it("prints the rules side by side with the spread, and a working", () => {
  const run = spawnSync(process.execPath, ["compare.mjs"], { cwd: "examples/compare-setts", encoding: "utf8" });
  expect({ status: run.status, stderr: run.stderr }).toEqual({ status: 0, stderr: "" });
  const lines = run.stdout.split("\n");
  // 0.9 × √3360 × 4 ÷ 6 = 34.78; 2^0.39 × √800 = 37.06; 0.95 × √3360 × 4 ÷ (4 + 2 × 0.732) = 40.31.
  expect(lines[2]).toMatch(/^ {2}34\.8 {2}ends and intersections, constant 0\.9 by faena \(read/u);
  expect(run.stdout).toContain("  37.1  Brierley (read");
  expect(run.stdout).toContain("  40.3  curvature, constant 0.95 by Taylor (from memory");
  expect(run.stdout).toContain("     —  jam of Peirce: it is worked out for cotton in plain weave");
  // 40.31 ÷ 34.78 = 1.1591
  expect(run.stdout).toContain("The closest is 15.9 % over the most open.");
  expect(run.stdout).toContain("0.9 × √");
});
