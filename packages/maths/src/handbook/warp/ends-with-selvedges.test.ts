import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { franz2021, marissa, sunnano, weaveAway } from "#ci/sources.js";
import { endsWithSelvedges } from "./ends-with-selvedges.js";

describe("ends to wind", () => {
  const rows: readonly (readonly [title: string, Citation, body: number, selvedge: number, floating: number])[] = [
    ["a mat of 246 ends and four more in the selvedges", published(sunnano, "whole page", "250", "250"), 246, 2, 0],
    ["150 ends and eight more at the sides", published(marissa, "whole page", "158", "158"), 150, 4, 0],
    ["320 ends and one at each edge", published(weaveAway, "Linda's placemats", "322", "322"), 320, 1, 0],
    ["560 ends and two that float", published(franz2021, "figures of the sample", "562", "562"), 560, 0, 2],
  ];
  for (const [title, citation, bodyEnds, endsEachSelvedge, floatingEnds] of rows) {
    cited(title, citation, endsWithSelvedges, [{ bodyEnds, endsEachSelvedge, floatingEnds }]);
  }
  it("are refused for no body and for half an end", () => {
    expect(() => endsWithSelvedges({ bodyEnds: 0, endsEachSelvedge: 2, floatingEnds: 0 })).toThrow("bodyEnds");
    expect(() => endsWithSelvedges({ bodyEnds: 100, endsEachSelvedge: 0.5, floatingEnds: 0 })).toThrow(
      "endsEachSelvedge",
    );
  });
});
