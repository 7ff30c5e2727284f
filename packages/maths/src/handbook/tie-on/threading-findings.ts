import { commonPractice, taylor1909 } from "../../sources/index.js";
import type { Finding } from "./finding.js";

/** "1 end", "2 ends" */
export function plural(number: number, noun: string): string {
  return `${String(number)} ${noun}${number === 1 ? "" : "s"}`;
}

/** The places of a repeat where two threadings part, in words. */
function placesApart(old: readonly number[], now: readonly number[]): readonly string[] {
  return old.flatMap((shaft, at) => {
    const other = now[at];
    return other === undefined || other === shaft
      ? []
      : [`place ${String(at + 1)} on shaft ${String(other)}, not ${String(shaft)}`];
  });
}

/** The two threadings, place by place. */
export function threadingFinding(old: readonly number[], now: readonly number[]): Finding {
  const apart = placesApart(old, now);
  const agrees = old.length === now.length && apart.length === 0;
  const says = agrees
    ? `Both plans count on one threading repeat of ${plural(old.length, "end")}.`
    : old.length === now.length
      ? `The new plan counts on another threading, ${apart.join(", ")}: the threading stays as it is.`
      : `The old warp is threaded in repeats of ${plural(old.length, "end")}, the new plan counts on ${String(now.length)}: the threading stays as it is.`;
  const figures = { old: old.length, new: now.length, difference: now.length - old.length };
  return { about: "threading", standing: "must", agrees, ...figures, says, source: taylor1909 };
}

/** The stripe edges against the threading repeats. */
export function edgesFinding(ends: number, edges: readonly number[], repeat: number): Finding {
  const inside = edges.filter((edge) => edge !== ends);
  const off = inside.filter((edge) => edge % repeat !== 0);
  const places = off.map((edge) => `end ${String(edge)} at place ${String(edge % repeat)}`).join(", ");
  const says =
    off.length === 0
      ? `Every stripe edge closes a threading repeat of ${plural(repeat, "end")}.`
      : `${plural(off.length, "stripe edge")} of ${String(inside.length)} inside a threading repeat of ${plural(repeat, "end")}: ${places}.`;
  const figures = { old: inside.length, new: inside.length - off.length, difference: -off.length };
  return {
    about: "stripe edges",
    standing: "free",
    agrees: off.length === 0,
    ...figures,
    says,
    source: commonPractice,
  };
}
