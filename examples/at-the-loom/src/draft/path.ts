import type { FaultPath } from "@thrum/plan";

/** The steps of a place as `pathText` writes it: `pieces[0].name`, `yarns["no. 2"].count`. */
export function stepsOf(path: string): FaultPath {
  const steps = path.matchAll(/\[(\d+)\]|\[("(?:[^"\\]|\\.)*")\]|([^.[\]]+)/gu);
  return [...steps].map(([, number, quoted, name]) => {
    if (number !== undefined) return Number(number);
    return quoted === undefined ? (name ?? "") : (JSON.parse(quoted) as string);
  });
}

/** Whether a fault at the one place is told at the other. */
export function isWithin(path: FaultPath, of: FaultPath): boolean {
  return of.every((step, at) => String(path[at]) === String(step));
}
