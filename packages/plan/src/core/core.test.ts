import { endsPerInch, inches, percentLost, reedWidth, wovenLength } from "@thrum/maths";
import type { EndsPerLength, Length, Loss } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { keysOf, keysOfRow } from "./keys.js";
import { figureData } from "./read-out.js";
import { nodeOf } from "./source.js";
import type { Figure, Part } from "./source.js";
import { all, always, orNone, own, wish } from "./wiring.js";
import { isRows } from "./row.js";
import type { State } from "./state.js";
import { work } from "./work.js";
import type { Plan, RowOf } from "./row.js";
import { waits } from "./waits.js";
import { worked } from "./worked.js";

interface Piece {
  readonly number?: number;
  readonly finishedLength?: Length;
  readonly hemEachEnd?: Length;
}
interface Job {
  readonly ends?: number;
  readonly sett?: EndsPerLength;
  readonly cloth?: { readonly lost?: Loss; readonly width?: Length };
  readonly pieces?: readonly Piece[];
}

const job = keysOf<Job>();
const ownPiece = keysOfRow<Piece, "piece">("piece", "pieces", "*");
const { figure, counted, first, part, word } = worked("plan");
const ofPiece = worked("piece");

interface PieceRow extends RowOf {
  readonly kind: "cloth" | "breaks";
}
const rows: Part<readonly PieceRow[]> = part({ pieces: job.pieces }, ({ pieces }) => [
  ...pieces.map((_, at): PieceRow => ({ name: String(at + 1), place: at, kind: "cloth" })),
  { name: "breaks", kind: "breaks" },
]);
const width: Figure<Length> = figure("width in the reed", reedWidth, { ends: job.ends, sett: job.sett });
const either: Figure<Length> = first("width", wish(job.cloth.width), width);
const woven: Figure<Length, "piece"> = ofPiece.choice("woven", own(rows, "piece", "kind"), {
  cloth: ofPiece.figure("woven for one", wovenLength, {
    finishedLength: ownPiece.finishedLength,
    hemEachEnd: orNone(ownPiece.hemEachEnd, always(inches(0))),
    loomToFinished: job.cloth.lost,
  }),
  breaks: always(inches(1)),
});
const pieces: Figure<number> = counted(
  "pieces woven",
  "pieces",
  { lengths: all(woven) },
  ({ lengths }) => lengths.length,
);
const groups = { loom: { width, either, pieces, rows }, piece: { woven } };
const names = new Map(
  Object.entries(groups).flatMap(([group, figures]) =>
    Object.entries<object>(figures).map(([name, one]) => [nodeOf(one), [group, name] as const]),
  ),
);
const plan: Plan = { scopes: { piece: rows }, searches: [] };
const state = (of: object, given: Job): State => work(plan, given).stateOf(nodeOf(of), null);

describe("a list of figures", () => {
  it("works a formula out of the keys of the job", () => {
    expect(String((state(width, { ends: 368, sett: endsPerInch(20) }) as { value: Length }).value)).toBe("18.4 in");
  });

  it("waits for the keys that are not there, and nobody is asked for a wish", () => {
    expect(state(width, { ends: 368 })).toEqual({ is: "waiting", needs: [["sett"]] });
    expect(state(either, {})).toEqual({ is: "waiting", needs: [["ends"], ["sett"]] });
    expect(state(either, { cloth: { width: inches(20) } })).toMatchObject({ is: "there" });
  });

  it("tells the refusal of the formula in its own words", () => {
    const none = state(width, { ends: 0, sett: endsPerInch(20) });
    expect(none).toMatchObject({ is: "none" });
  });

  it("works a row's figure once for each row, and goes the way its word names", () => {
    const given: Job = { cloth: { lost: percentLost(10) }, pieces: [{ finishedLength: inches(18) }, {}] };
    expect(state(pieces, given)).toEqual({ is: "waiting", needs: [["pieces", 1, "finishedLength"]] });
    const whole: Job = { ...given, pieces: [{ finishedLength: inches(18), hemEachEnd: inches("0.75") }] };
    const at = work(plan, whole);
    expect(state(pieces, whole)).toMatchObject({ value: 2 });
    const found = at.rowsOf("piece");
    const [one = null, breaks = null] = isRows(found) ? found : [];
    expect(figureData(at, names, nodeOf(woven), one)).toEqual({
      label: "woven",
      calculation: "wovenLength",
      from: {
        finishedLength: { path: ["job", "pieces", 0, "finishedLength"] },
        hemEachEnd: { path: ["job", "pieces", 0, "hemEachEnd"] },
        loomToFinished: { path: ["job", "cloth", "lost"] },
      },
      value: wovenLength({ finishedLength: inches(18), hemEachEnd: inches("0.75"), loomToFinished: percentLost(10) }),
      needs: [],
      why: null,
    });
    expect(figureData(at, names, nodeOf(woven), breaks)).toMatchObject({
      calculation: null,
      from: { is: { amount: inches(1) } },
    });
  });

  it("takes what a part finds missing for a key that is waited for", () => {
    const needy: Part<number> = part({ ends: job.ends }, () => waits("pieces", "0", "weft"));
    expect(state(needy, { ends: 2 })).toEqual({ is: "waiting", needs: [["pieces", "0", "weft"]] });
  });

  it("lets an error of the program through", () => {
    const wrong: Part<number> = part({ ends: job.ends }, () => {
      throw new TypeError("of the program");
    });
    expect(() => state(wrong, { ends: 2 })).toThrow("of the program");
  });

  it("searches the largest number that is still enough", () => {
    const most: Figure<number> = worked("plan").searched("most");
    const enough: Figure<"enough" | "short"> = word("enough", { most, ends: job.ends }, (given) =>
      given.most * 7 <= given.ends ? "enough" : "short",
    );
    const searching: Plan = { scopes: {}, searches: [{ of: most, while: enough }] };
    const found = (ends: number): State => work(searching, { ends }).stateOf(nodeOf(most), null);
    expect([6, 7, 13, 14, 700, 706].map((ends) => (found(ends) as { value: number }).value)).toEqual([
      0, 1, 1, 2, 100, 100,
    ]);
  });
});
