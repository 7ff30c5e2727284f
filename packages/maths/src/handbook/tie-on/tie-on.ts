import { allTogether } from "../../engine/refusal.js";
import { listOf, positive, positiveEither, readInputs, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { compare, difference, ratio } from "../../engine/quantity/index.js";
import { brooks1892, taylor1909 } from "../../sources/index.js";
import { DirectCount, EndsPerLength, IndirectCount, tex } from "../../units/index.js";
import { reedWidth } from "../reed/index.js";
import type { ReedWidthInput } from "../reed/index.js";
import { convertCount } from "../yarn/index.js";
import type { Finding } from "./finding.js";
import { edgesFinding, plural, threadingFinding } from "./threading-findings.js";

/** The old warp as it stands on the loom, counted and measured. */
export interface OldWarp {
  readonly ends: number;
  readonly sett: EndsPerLength;
  /** The shafts of one threading repeat, from end 1. */
  readonly threading: readonly number[];
  /** Of the finished thread. */
  readonly count: DirectCount | IndirectCount;
}

/** The warp to be tied to it. */
export interface NewWarp extends OldWarp {
  /** The number of the last end of every stripe, counted from end 1. */
  readonly edges: readonly number[];
}

/** Whether one warp can be tied to another, and what was found. */
export interface TieOnReport {
  readonly verdict: "fits" | "check" | "does not fit";
  readonly findings: readonly Finding[];
  readonly steps: readonly ReportStep<ReedWidthInput>[];
}

function readWarps(oldWarp: OldWarp, newWarp: NewWarp): void {
  const old = {
    ends: whole("ends", "one knot to each", { atLeast: 1 }),
    sett: positive(EndsPerLength, "in the reed"),
    threading: listOf(whole("shafts", "of one threading repeat, in turn", { atLeast: 1, atMost: 1000 })),
    count: positiveEither(IndirectCount, DirectCount, "a yarn count", "of the finished thread"),
  };
  const edge = whole("ends", "up to and with the last of a stripe", { atLeast: 1 });
  allTogether(
    () => readInputs(["tieOn", "oldWarp"], old, oldWarp),
    () => readInputs(["tieOn", "newWarp"], { ...old, edges: listOf(edge) }, newWarp),
  );
}

function endsFinding(old: number, now: number): Finding {
  const off = now - old;
  const says =
    off === 0
      ? `Both warps have ${plural(old, "end")}: one knot to each.`
      : off > 0
        ? `The new warp has ${plural(off, "end")} too many: each needs a spare heddle and a place in the reed, or must go.`
        : `The new warp is ${plural(-off, "end")} short: so many old ends are left without a partner.`;
  return {
    about: "ends",
    standing: "must",
    agrees: off === 0,
    old,
    new: now,
    difference: off,
    says,
    source: taylor1909,
  };
}

function settFinding(old: EndsPerLength, now: EndsPerLength): Finding {
  const order = compare(now, old);
  const says =
    order === 0
      ? `Both are planned at ${String(old)} in the reed.`
      : `The new plan is ${order > 0 ? "closer" : "more open"}, ${String(now)} for ${String(old)}: the sett stays unless the reed is sleyed afresh.`;
  const figures = { old, new: now, difference: difference(now, old) };
  return { about: "sett", standing: "check", agrees: order === 0, ...figures, says, source: brooks1892 };
}

function gristFinding(old: OldWarp["count"], now: OldWarp["count"]): Finding {
  const [before, after] = [convertCount(old, tex).count, convertCount(now, tex).count];
  const order = compare(after, before);
  const percent = Math.round(ratio(after, before) * 100);
  const says =
    order === 0
      ? "Both yarns are of one grist."
      : `The new yarn is ${order > 0 ? "heavier" : "lighter"}, about ${String(percent)} % of the old weight for its length: look whether the cloth wants the same sett, and whether the knots pass.`;
  const figures = { old: before, new: after, difference: difference(after, before) };
  return { about: "grist", standing: "check", agrees: order === 0, ...figures, says, source: taylor1909 };
}

/**
 * Compares the old warp on the loom with the one to be tied to it, end by end: what must agree, what wants a look, what
 * is free.
 *
 * @param oldWarp as it stands on the loom
 * @param newWarp as planned
 * @throws QuantityError for fields that are missing, unknown or of another kind
 * @source taylor-1909 for ends, threading and yarn; brooks-1892 for the sett
 * @example
 * const old = { ends: 384, sett: endsPerInch(20), threading: [1, 2, 3, 4], count: cottonCount(4) };
 * tieOn(old, { ...old, edges: [96, 288, 384] }).verdict // "fits"
 */
export function tieOn(oldWarp: OldWarp, newWarp: NewWarp): TieOnReport {
  readWarps(oldWarp, newWarp);
  const findings = [
    endsFinding(oldWarp.ends, newWarp.ends),
    threadingFinding(oldWarp.threading, newWarp.threading),
    settFinding(oldWarp.sett, newWarp.sett),
    gristFinding(oldWarp.count, newWarp.count),
    edgesFinding(newWarp.ends, newWarp.edges, oldWarp.threading.length),
  ];
  const differs = (standing: string): boolean => findings.some((one) => one.standing === standing && !one.agrees);
  const steps = [oldWarp, newWarp].map(({ ends, sett }) => ({ calculation: reedWidth, input: { ends, sett } }));
  const verdict = differs("must") ? "does not fit" : differs("check") ? "check" : "fits";
  return frozen({ verdict, findings, steps });
}
