import { endsPerInch, reedWidth, wovenLength } from "@thrum/maths";
import type { Addition, EndsPerLength, Length, Loss, Mass } from "@thrum/maths";
import { expectTypeOf, it } from "vitest";
import { keysOf, keysOfRow } from "./keys.js";
import type { Figure } from "./source.js";
import { all, always } from "./wiring.js";
import { worked } from "./worked.js";

interface Job {
  readonly ends?: number;
  readonly sett?: EndsPerLength;
  readonly mass?: Mass;
  readonly warp?: { readonly length?: Length; readonly lost?: Loss; readonly allowance?: Addition };
}

const job = keysOf<Job>();
const ownYarn = keysOfRow<{ readonly length?: Length }, "yarn">("yarn", "yarns", "*");
const { figure, counted, word, choice } = worked("plan");
const way: Figure<"fixed" | "free"> = word("way", { ends: job.ends }, () => "fixed");

it("a wrong wiring is refused by the compiler", () => {
  const right: Figure<Length> = figure("width", reedWidth, { ends: job.ends, sett: job.sett });
  expectTypeOf(right.gives).toEqualTypeOf<Length>();
  // @ts-expect-error an amount of another kind
  figure("width", reedWidth, { ends: job.ends, sett: job.mass });
  // @ts-expect-error a figure of another kind
  figure("width", reedWidth, { ends: right, sett: job.sett });
  // @ts-expect-error a row of a scope, read outside it
  counted("one", "ends", { length: ownYarn.length }, () => 1);
  // @ts-expect-error a row of another scope
  worked("piece").counted("one", "ends", { length: ownYarn.length }, () => 1);
  // @ts-expect-error a key misspelt
  counted("one", "ends", job.warp.lenght, () => 1);
  // @ts-expect-error an input left out
  figure("width", reedWidth, { ends: job.ends });
  // @ts-expect-error an input misspelt
  figure("width", reedWidth, { ends: job.ends, set: job.sett });
  // @ts-expect-error a way left out of a choice
  choice("length", way, { fixed: job.warp.length });
  // @ts-expect-error a way misspelt
  choice("length", way, { fixed: job.warp.length, fre: job.warp.length });
  const { length, allowance } = job.warp;
  // @ts-expect-error a percentage on another base
  figure("woven", wovenLength, { finishedLength: length, hemEachEnd: length, loomToFinished: allowance });
  // @ts-expect-error a list where one amount belongs
  figure("width", reedWidth, { ends: job.ends, sett: all(job.sett) });
  // @ts-expect-error a value, not where it comes from
  figure("width", reedWidth, { ends: 368, sett: always(endsPerInch(20)) });
});
