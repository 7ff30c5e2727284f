import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { brooks1892, wolfensberger1921 } from "#ci/sources.js";
import { endsOfColour } from "./ends-of-colour.js";

describe("ends of a colour", () => {
  const rows: readonly (readonly [title: string, Citation, pattern: number, patterns: number, part: number])[] = [
    ["38 stripes of 15 ends", published(brooks1892, "p. 151, ch. IX", "570", "570"), 15, 38, 0],
    ["38 stripes of ground, 45 ends each", published(brooks1892, "p. 151, ch. IX", "1710", "1710"), 45, 38, 0],
    ["sky in a pekin stripe", published(wolfensberger1921, "p. 97, disposition 6", "1680", "1680"), 240, 7, 0],
    // 204 + 180 + 234 + 180 + 30 in a repeat; 168 close it, and each edge holds 42 double ends.
    ["black in a pekin stripe", published(wolfensberger1921, "p. 97, disposition 6", "6132", "6132"), 828, 7, 336],
  ];
  for (const [title, citation, endsInPattern, patterns, endsInPart] of rows) {
    cited(title, citation, endsOfColour, [{ endsInPattern, patterns, endsInPart }]);
  }
  it("may be none", () => {
    expect(endsOfColour({ endsInPattern: 0, patterns: 12, endsInPart: 0 })).toBe(0);
  });
});

describe("the limits of ends of colour", () => {
  limits(
    endsOfColour,
    ["are the ends of the part alone where no pattern is whole", { endsInPattern: 0, patterns: 0, endsInPart: 7 }, 7],
    { endsInPattern: -1, patterns: -1, endsInPart: -1 },
  );
});
