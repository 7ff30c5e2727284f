import type { LaidStripe } from "./laid-stripes.js";
import type { Hangs, Shafts } from "./shafts.js";

/** What rises with one shaft: ends threaded or joined wrong show here before a pick is woven. */
export interface ShaftRow {
  readonly shaft: Hangs;
  readonly ends: number;
  /** Ends whose colour is certain. */
  readonly colours: readonly { readonly yarn: string; readonly ends: number }[];
  /** Ends of blends: any yarn of the hand may hang here. */
  readonly blends: readonly { readonly yarns: readonly string[]; readonly ends: number }[];
}

/** Hands of a blend that hang on the same shafts: of so many ends on them each yarn comes as often as it is held. */
export interface HandCheck {
  readonly stripe: number;
  readonly yarns: readonly string[];
  readonly shafts: readonly Hangs[];
  readonly hands: number;
}

export interface ShaftCheck {
  /** From shaft 1, floating ends last. */
  readonly rows: readonly ShaftRow[];
  readonly hands: readonly HandCheck[];
}

const isBlend = ({ yarns, order }: LaidStripe): boolean => order === undefined && new Set(yarns).size > 1;

function handsOfStripe(stripe: LaidStripe, number: number, { shafts }: Shafts): readonly HandCheck[] {
  const held = stripe.yarns.length;
  const checks = new Map<string, HandCheck>();
  for (let first = stripe.firstEnd; first <= stripe.lastEnd; first += held) {
    const on = shafts.slice(first - 1, first - 1 + held);
    const known = checks.get(on.join());
    checks.set(on.join(), { stripe: number, yarns: stripe.yarns, shafts: on, hands: (known?.hands ?? 0) + 1 });
  }
  return [...checks.values()];
}

/** Where a shaft stands among the rows. */
function rank(shaft: Hangs): number {
  return typeof shaft === "number" ? shaft : shaft === "floating" ? Infinity : Number.MAX_VALUE;
}

/** For each shaft what rises with it, and for each hand of a blend the shafts on which its yarns hang. */
export function shaftCheck(stripes: readonly LaidStripe[], shafts: Shafts): ShaftCheck {
  const rows = new Map<Hangs, { ends: number; colours: Map<string, number>; blends: Map<string, number> }>();
  for (const stripe of stripes) {
    const key = isBlend(stripe) ? JSON.stringify(stripe.yarns) : null;
    for (let end = stripe.firstEnd; end <= stripe.lastEnd; end += 1) {
      const shaft = shafts.shafts[end - 1] ?? "not known";
      const row = rows.get(shaft) ?? { ends: 0, colours: new Map<string, number>(), blends: new Map<string, number>() };
      rows.set(shaft, row);
      row.ends += 1;
      const yarn = stripe.yarns[(end - stripe.firstEnd) % stripe.yarns.length] ?? "";
      const [counts, name] = key === null ? [row.colours, yarn] : [row.blends, key];
      counts.set(name, (counts.get(name) ?? 0) + 1);
    }
  }
  const made = [...rows].map(([shaft, { ends, colours, blends }]): ShaftRow => {
    const yarnsOf = new Map(stripes.map(({ yarns }) => [JSON.stringify(yarns), yarns]));
    return {
      shaft,
      ends,
      colours: [...colours].map(([yarn, number]) => ({ yarn, ends: number })),
      blends: [...blends].map(([key, number]) => ({ yarns: yarnsOf.get(key) ?? [], ends: number })),
    };
  });
  const hands = stripes.flatMap((stripe, at) => (isBlend(stripe) ? handsOfStripe(stripe, at + 1, shafts) : []));
  return { rows: made.sort((one, other) => rank(one.shaft) - rank(other.shaft)), hands };
}
