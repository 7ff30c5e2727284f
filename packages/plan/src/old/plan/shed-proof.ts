import type { Sequence } from "@thrum/stripes";

/** What shows when one shaft is up: a threading or a joining that went wrong shows here before a pick is woven. */
export interface ShedProof {
  readonly shaft: number;
  readonly ends: number;
  readonly colours: readonly { readonly colour: string; readonly ends: number }[];
}

/** For each shaft how many ends of each colour rise with it, the threading repeated right across. */
export function shedProof(warp: Sequence<string>, threading: readonly number[]): readonly ShedProof[] {
  const shafts = [...new Set(threading)].sort((a, b) => a - b);
  return shafts.map((shaft) => {
    const places = threading.flatMap((one, at) => (one === shaft ? [at] : []));
    const before = (end: number): number =>
      places.reduce((total, at) => total + Math.max(0, Math.ceil((end - at) / threading.length)), 0);
    const colours = new Map<string, number>();
    warp.runs.forEach(({ colour, ends }, at) => {
      const start = (warp.starts[at] ?? 1) - 1;
      const raised = before(start + ends) - before(start);
      if (raised > 0) colours.set(colour, (colours.get(colour) ?? 0) + raised);
    });
    return {
      shaft,
      ends: before(warp.ends),
      colours: [...colours].map(([colour, ends]) => ({ colour, ends })),
    };
  });
}
