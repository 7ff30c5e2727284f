import { inWords } from "@thrum/maths";
import type { CheckedSum, Stated } from "./checked-sums.js";
import type { Reconciliation } from "./reconcile.js";
import type { SingleChange } from "./single-changes.js";

const MOST = 3;

function changeText({ figure, printed, needed, shape }: SingleChange): string {
  const how = shape === "none" ? "" : ` (${shape})`;
  return `${inWords(figure)} ${String(needed)} where ${printed} is printed${how}`;
}

function sumText({ figure, stated, reckoned }: CheckedSum): string {
  const [own, other] = [stated, reckoned].map((one) =>
    typeof one === "number" ? String(one) : `${one.value} ${one.unit}`,
  );
  return `${inWords(figure)} is printed ${String(own)}, the other figures give ${String(other)}`;
}

function listed(texts: readonly string[]): string {
  const more = texts.length > MOST ? `; or one of ${String(texts.length - MOST)} more` : "";
  return `${texts.slice(0, MOST).join("; or ")}${more}`;
}

/** A finding in sentences: what does not agree, and what one change would make it agree. */
export function sentencesOf(
  { verdict, sums, ways, changes, impossible }: Omit<Reconciliation, "says">,
  stated: Stated,
): readonly string[] {
  const would = changes.length === 0 ? [] : [`All would agree with ${listed(changes.map(changeText))}.`];
  if (verdict === "impossible figure") {
    const texts = impossible.map(
      (name) => `${inWords(name)} cannot be ${stated.get(name)?.printed ?? ""}: ${stated.get(name)?.impossible ?? ""}`,
    );
    return [`${texts.join("; ")}.`, ...would];
  }
  if (verdict === "too little stated") return ["Too little is stated for any sum to be checked."];
  if (verdict === "agrees") return ["All figures that can be checked agree."];
  const differs = sums.filter(({ finding }) => finding === "differs").map(sumText);
  const by = ways.map(({ convention, rounding }) =>
    [convention, rounding === "nearest" ? null : `rounded ${rounding}`].filter((one) => one !== null).join(", "),
  );
  const agree = by.length === 0 ? [] : [`All agree if reckoned so: ${listed(by)}.`];
  const none = verdict === "not explained" ? ["No one figure and no one way of reckoning explains it."] : [];
  const open = by.length + changes.length > 1 ? ["The page alone cannot tell which."] : [];
  return [`${differs.join("; ")}.`, ...agree, ...would, ...open, ...none];
}
