import { chains, layingList, sequence, StripeError, windingList } from "@thrum/stripes";
import type { Sequence } from "@thrum/stripes";
import * as v from "valibot";
import type { Job, StripesItem } from "./job.js";
import type { Place, PlacedFault } from "./placed-fault.js";
import { loomSchema, MOST_ENDS, stripesSchema, windingSchema } from "./schema.js";
import { coloursIn, leastEnds, sequenceOf } from "./stripes.js";

/** What the keys of the job are called in the stripes, whose refusals name their own. */
const KEYS: Readonly<Record<string, string>> = {
  most: "mostEndsInChain",
  cutAt: "chainsEndAt",
  threads: "threadsTogether",
};

type Tried<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: PlacedFault };

/** What the stripes refuse becomes a fault of the job; any other error stays an error. */
function tried<T>(path: Place, make: () => T): Tried<T> {
  try {
    return { ok: true, value: make() };
  } catch (error) {
    if (!(error instanceof StripeError)) throw error;
    const { expected, received, remedy } = error;
    const where = String(error.path[0] ?? "");
    const key = KEYS[where] ?? where;
    const at = path[0] === "stripes" ? path : [...path, key];
    return { ok: false, fault: { code: "out-of-range", path: at, expected, received, remedy } };
  }
}

function yarnFaults(
  stripes: readonly StripesItem[],
  names: readonly string[],
  weft: string | null,
): readonly PlacedFault[] {
  const woven = weft === null ? [] : [[weft, ["weft", "yarn"]] as const];
  const used = [...coloursIn(stripes, ["stripes"]), ...woven];
  const unknown = used
    .filter(([colour]) => !names.includes(colour))
    .map(([colour, path]) => ({
      code: "out-of-range" as const,
      path,
      expected: `one of the yarns: ${names.join(", ")}`,
      received: `"${colour}"`,
      remedy: "Add it under yarns, or correct the colour.",
    }));
  const idle = names
    .filter((name) => used.every(([colour]) => colour !== name))
    .map((name) => ({
      code: "out-of-range" as const,
      path: ["yarns", name],
      expected: "a yarn that a stripe or the weft uses",
      received: `"${name}", which none does`,
      remedy: "Give it a stripe or weave with it, or leave it out.",
    }));
  return [...unknown, ...idle];
}

function warpOf(stripes: readonly StripesItem[]): Tried<Sequence<string>> {
  const ends = leastEnds(stripes);
  if (ends <= MOST_ENDS) return tried(["stripes"], () => sequenceOf(stripes));
  const expected = `at most ${String(MOST_ENDS)} ends in all`;
  const remedy = "No hand loom holds as many: look for a slip in a count or a repeat.";
  return { ok: false, fault: { code: "out-of-range", path: ["stripes"], expected, received: String(ends), remedy } };
}

function windingFaults(warp: Sequence<string>, winding: Job["winding"]): readonly PlacedFault[] {
  const { threadsTogether: threads, tieEvery, mostEndsInChain: most, chainsEndAt: cutAt } = winding;
  const wound = tried(["winding"], () => {
    for (const one of chains({ sequence: warp, most, cutAt })) {
      windingList({ sequence: one.sequence, threads, tieEvery });
    }
  });
  return wound.ok ? [] : [wound.fault];
}

/** Any chain will do to ask whether the weaver can face that way. */
function seatFaults({ endOneOn, knotsTied, weaverFaces }: Job["loom"]): readonly PlacedFault[] {
  const one = chains({ sequence: sequence([{ colour: "any", ends: 1 }]), most: 1, cutAt: 1 });
  const laid = tried(["loom"], () => layingList({ chains: one, endOneOn, tiedAt: knotsTied, weaverFaces }));
  return laid.ok ? [] : [laid.fault];
}

function weftYarn(weft: unknown): string | null {
  const { yarn } = Object(weft) as { readonly yarn?: unknown };
  return typeof yarn === "string" ? yarn : null;
}

/** A shaft without a number of spare heddles, none being a number too. */
function heddleFaults(oldWarp: unknown): readonly PlacedFault[] {
  const { threading, spareHeddles } = Object(oldWarp) as Readonly<Record<string, unknown>>;
  const shafts = Array.isArray(threading)
    ? Math.max(0, ...(threading as unknown[]).filter((one) => typeof one === "number"))
    : 0;
  return ["beforeFirst", "afterLast"].flatMap((side) => {
    const on = (Object(spareHeddles) as Readonly<Record<string, unknown>>)[side];
    if (!Array.isArray(on) || on.length === 0 || on.length >= shafts) return [];
    const path = ["oldWarp", "spareHeddles", side];
    const expected = `a number for each of ${String(shafts)} shafts`;
    const remedy = "Write 0 for a shaft that has none left.";
    return [{ code: "out-of-range" as const, path, expected, received: `${String(on.length)} numbers`, remedy }];
  });
}

function partOf<T>(schema: v.GenericSchema<unknown, T>, part: unknown): T | null {
  const parsed = v.safeParse(schema, part);
  return parsed.success ? parsed.output : null;
}

/** What no value shows alone: colours without a yarn, yarns without a stripe, stripes that cannot be wound so. */
export function crossFaults(job: unknown): readonly PlacedFault[] {
  if (typeof job !== "object" || job === null) return [];
  const { yarns, ...parts } = job as Readonly<Record<string, unknown>>;
  const stripes = partOf(stripesSchema, parts["stripes"]);
  const loom = partOf(loomSchema, parts["loom"]);
  const winding = partOf(windingSchema, parts["winding"]);
  const named = typeof yarns === "object" && yarns !== null && !Array.isArray(yarns) ? Object.keys(yarns) : null;
  const warp = stripes === null ? null : warpOf(stripes);
  return [
    ...(loom === null ? [] : seatFaults(loom)),
    ...heddleFaults(parts["oldWarp"]),
    ...(stripes === null || named === null ? [] : yarnFaults(stripes, named, weftYarn(parts["weft"]))),
    ...(warp === null || warp.ok ? [] : [warp.fault]),
    ...(warp?.ok === true && winding !== null ? windingFaults(warp.value, winding) : []),
  ];
}
