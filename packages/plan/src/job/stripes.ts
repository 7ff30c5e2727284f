import { chains, join, layingList, mirror, pivot, repeat, sequence, StripeError, windingList } from "@thrum/stripes";
import type { Sequence } from "@thrum/stripes";
import type { JobFault } from "./fault.js";
import type { Job, StripesItem } from "./job.js";

/** The order of the colours as the job writes it. */
export function sequenceOf(items: readonly StripesItem[]): Sequence<string> {
  return join(
    items.map((item) => {
      if ("colour" in item) return sequence([item]);
      if ("repeat" in item) return repeat({ sequence: sequenceOf(item.of), times: item.repeat });
      const half = sequenceOf(item.mirror);
      return item.middleStripe === "once" ? pivot(half) : mirror(half);
    }),
  );
}

type Place = readonly (string | number)[];
type PlacedFault = Omit<JobFault, "line" | "path"> & { readonly path: Place };

function coloursIn(items: readonly StripesItem[], path: Place): readonly (readonly [colour: string, path: Place])[] {
  return items.flatMap((item, at) => {
    if ("colour" in item) return [[item.colour, [...path, at, "colour"]] as const];
    return "repeat" in item ? coloursIn(item.of, [...path, at, "of"]) : coloursIn(item.mirror, [...path, at, "mirror"]);
  });
}

/** What the form alone cannot see: colours without a yarn, yarns without a stripe, stripes that cannot be wound so. */
export function stripesFaults({ stripes, yarns, winding, loom }: Job): readonly PlacedFault[] {
  const names = Object.keys(yarns);
  const used = coloursIn(stripes, ["stripes"]);
  const unknown = used
    .filter(([colour]) => !names.includes(colour))
    .map(([colour, path]) => ({
      path,
      expected: `one of the yarns: ${names.join(", ")}`,
      received: `"${colour}"`,
      remedy: "Add it under yarns, or correct the colour.",
    }));
  const idle = names
    .filter((name) => used.every(([colour]) => colour !== name))
    .map((name) => ({
      path: ["yarns", name],
      expected: "a yarn that a stripe uses",
      received: `"${name}", which none does`,
      remedy: "Give it a stripe, or leave it out.",
    }));
  const faults = [...unknown, ...idle];
  if (faults.length > 0) return faults;
  const { threadsTogether, tieEvery, mostEndsInChain, chainsEndAt } = winding;
  const warp = refusalOf(["stripes"], () => sequenceOf(stripes));
  if (!warp.ok) return [warp.fault];
  const wound = refusalOf(["winding"], () => {
    const cut = chains({ sequence: warp.value, most: mostEndsInChain, cutAt: chainsEndAt });
    for (const { sequence: one } of cut) windingList({ sequence: one, threads: threadsTogether, tieEvery });
    return cut;
  });
  if (!wound.ok) return [wound.fault];
  const { endOneOn, knotsTied, weaverFaces } = loom;
  const laid = refusalOf(["loom", "weaverFaces"], () =>
    layingList({ chains: wound.value, endOneOn, tiedAt: knotsTied, weaverFaces }),
  );
  return laid.ok ? [] : [laid.fault];
}

type Tried<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: PlacedFault };

/** What the stripes refuse becomes a fault of the job; any other error stays an error. */
function refusalOf<T>(path: Place, make: () => T): Tried<T> {
  try {
    return { ok: true, value: make() };
  } catch (error) {
    if (!(error instanceof StripeError)) throw error;
    const { expected, received, remedy } = error;
    return { ok: false, fault: { path, expected, received, remedy } };
  }
}
