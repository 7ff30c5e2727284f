import type { SlipAnswer } from "../check/index.js";

/** One set of inputs with what the right sum and every slip come to, in steps of the rounding asked for. */
export interface Sample {
  readonly right: number;
  readonly cut: number;
  readonly slips: ReadonlyMap<string, SampledSlip>;
}

export interface SampledSlip {
  readonly steps: number;
  /** Whether the sum comes to the right answer itself: then, here, it is no slip. */
  readonly isRight: boolean;
}

const RESIDUE = 1e-9;
const SAME = 1e-12;
/** So many times two slips must have been seen alike before they are taken for one. */
const ENOUGH = 4;

/**
 * Names that are the same for other numbers: a slip at a line by its place among those, since the formula alone makes them; one in
 * reading by its sentence without the numbers, and its place among those with the same.
 */
function namesOf(slips: readonly SlipAnswer[]): readonly string[] {
  const met = new Map<string, number>();
  return slips.map(({ line, says }) => {
    const bare = line === "" ? says().replace(/\d+(?:\.\d+)?/gu, "#") : "";
    const at = met.get(bare) ?? 0;
    met.set(bare, at + 1);
    return `${bare} ${String(at)}`;
  });
}

/** What the right sum and each slip come to for some inputs. */
export function sampled(answer: number, decimals: number, slips: readonly SlipAnswer[]): Sample {
  const scale = 10 ** decimals;
  const stepsFor = (x: number): number => Math.floor(x * scale + 0.5 + RESIDUE);
  const names = namesOf(slips);
  const found = slips.map(({ rough }, at): readonly [string, SampledSlip] => {
    const isRight = Math.abs(rough - answer) <= SAME * Math.abs(answer);
    return [names[at] ?? "", { steps: stepsFor(rough), isRight }];
  });
  return { right: stepsFor(answer), cut: Math.floor(answer * scale + RESIDUE), slips: new Map(found) };
}

function shown({ right, slips }: Sample, name: string): number | null {
  const slip = slips.get(name);
  return slip === undefined || slip.steps === right ? null : slip.steps;
}

/** Whether no inputs drawn tell the two apart while both show: then they are one slip with two sentences. */
function areOne(samples: readonly Sample[], a: string, b: string): boolean {
  const both = samples
    .map((one) => [shown(one, a), shown(one, b)] as const)
    .filter(([x, y]) => x !== null && y !== null);
  return both.length >= ENOUGH && both.every(([x, y]) => x === y);
}

/** Whether every slip shows for these inputs: none gives the right answer, and no two the same wrong one. */
export function isTelling(sample: Sample, samples: readonly Sample[]): boolean {
  const { right, cut, slips } = sample;
  const first = new Map<number, string>();
  for (const [name, { steps, isRight }] of slips) {
    if (!Number.isFinite(steps)) continue;
    if (steps === right) {
      if (isRight && samples.every((one) => one.slips.get(name)?.isRight !== false)) continue;
      return false;
    }
    if (steps === cut) return false;
    const other = first.get(steps);
    if (other === undefined) first.set(steps, name);
    else if (!areOne(samples, other, name)) return false;
  }
  return true;
}
