import { oneOf, readInputs, unitFor } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { reading, refuse } from "../../engine/refusal.js";
import type { FaultParams, Reading, RefusalCode } from "../../engine/refusal.js";
import { DirectCount, IndirectCount } from "../../units/index.js";
import type { CountSystem } from "../../units/index.js";
import type { Yarn } from "./yarn.js";

/** What two numbers on a label leave open; nothing of it is guessed. */
export interface YarnNotation {
  /** Which number comes first: 2/40s has the plies first, 8/2 the count. */
  readonly order: "plies first" | "count first";
  readonly system: CountSystem;
  readonly counted: Yarn["counted"];
}

const NOTATION = /^(\d{1,5}(?:\.\d{1,3})?)(['’]?s)?(?:\s?[/-]\s?(\d{1,5}(?:\.\d{1,3})?)(['’]?s)?)?$/u;
const TICKET = /^(?:no\.?|nr\.?|ticket|tkt\.?)\s?\d/iu;

function readHow(how: YarnNotation): void {
  const isDirect = (how as Partial<YarnNotation> | null | undefined)?.system?.dimension === "mass per length";
  const inputs = {
    order: oneOf(["plies first", "count first"], "which number comes first"),
    system: isDirect ? unitFor(DirectCount, "the count system") : unitFor(IndirectCount, "the count system"),
    counted: oneOf(["single", "finished thread"], "what the number counts"),
  };
  readInputs(["yarnFrom", "how"], inputs, how);
}

/**
 * A yarn from the numbers of its label: `2/40s`, `2-40s`, `8/2`, `28/2`, `40s-2`, or a single `20s`.
 *
 * An s stands behind the count; where it contradicts the order stated the label is refused. Two like numbers, 16/16, are
 * refused too: some books mean two threads of 16. A ticket number, such as No. 60 of sewing cotton, is no count.
 *
 * @param label the numbers as they are printed, without the name of the system
 * @param how the order of the two numbers, the system, and what the count counts
 * @throws QuantityError "unreadable" for a label that is no count, "ambiguous" where it contradicts the order
 * @example yarnFrom("2/40s", { order: "plies first", system: cottonCount, counted: "single" }).plies // 2
 */
export function yarnFrom(label: string, how: YarnNotation): Yarn {
  readHow(how);
  const unread = (code: RefusalCode, remedy: string, params?: FaultParams): never =>
    refuse(
      code,
      ["yarnFrom", "label"],
      "the numbers of a yarn, such as 2/40s or 8/2",
      described(label),
      remedy,
      params,
    );
  const text: unknown = label;
  if (typeof text !== "string" || text.length > 40) return unread("unreadable", "Give the label as text.");
  if (TICKET.test(text.trim()))
    return unread("unreadable", "A ticket number is no count: find the count it stands for.");
  const [, first = "", firstMark, second, secondMark] = NOTATION.exec(text.trim()) ?? unread("unreadable", "");
  const pliesFirst = how.order === "plies first";
  if (second !== undefined && (pliesFirst ? firstMark : secondMark) !== undefined) {
    return unread("ambiguous", `The s marks the count, but the order stated is ${how.order}.`);
  }
  if (first === second && Number(first) > 2) {
    const two = pliesFirst ? `2/${first}` : `${first}/2`;
    const remedy = `Some books mean two threads of ${first}: write ${two} for those. Where ${first} plies are meant make the yarn of its parts: { count, plies: ${first}, counted }.`;
    return unread("ambiguous", remedy, { candidates: [two] });
  }
  const [count, plies] = second === undefined ? [first, "1"] : pliesFirst ? [second, first] : [first, second];
  if (!/^[1-9]\d*$/u.test(plies)) return unread("unreadable", "The plies are a whole number, 1 or more.");
  if (Number(count) === 0) return unread("unreadable", "A count is more than nothing.");
  return Object.freeze({ count: how.system(count), plies: Number(plies), counted: how.counted });
}

/**
 * As `yarnFrom`, but what cannot be read comes back as data instead of an error.
 *
 * @example yarnReading("No. 60", { order: "count first", system: cottonCount, counted: "single" }).ok // false
 */
export function yarnReading(label: string, how: YarnNotation): Reading<Yarn> {
  return reading(() => yarnFrom(label, how));
}
