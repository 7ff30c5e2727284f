import { quantityText } from "../../engine/quantity/index.js";
import { attempt, missingOr } from "../../engine/refusal.js";
import type { RefusalCode } from "../../engine/refusal.js";
import { countFrom, yardsPerPound } from "../../units/index.js";
import type { ReadingOptions } from "../../units/index.js";
import { refusalsOf } from "../../units/reading/text-given.js";
import type { RefuseText } from "../../units/reading/text-given.js";
import { convertCount } from "./convert-count.js";
import { yarnCount } from "./yarn.js";
import type { Yarn } from "./yarn.js";

const NUMBER = String.raw`(\d{1,5}(?:[.,]\d{1,3})?)(['’]?s(?!\p{L}))?`;
const PLIES = /^(\d{1,3})[- ]?ply of (.+)$/iu;
const TWO = /* @__PURE__ */ new RegExp(`^(\\D*?) ?${NUMBER} ?[/-] ?${NUMBER} ?(.*)$`, "u");
const TIMES = /^(.+?) ?[×x] ?(\d{1,3})$/u;
const IN_ALL = /^(?:(.+) in all|[Rr] ?(\d.*))$/u;
const TICKET = /^(?:no\.?|nr\.?|ticket|tkt\.?) ?\d/iu;
const LONGEST = 100;
const MOST_PLIES = 1000;
const FEW = ["cotton", "worsted", "linen", "metric"];

/** The yards of a pound that a reading comes to, so that one may choose by the label. */
function yards(candidate: string, options: ReadingOptions | undefined): string {
  const read = attempt(yarnFromText, candidate, options);
  if (!read.ok) return candidate;
  const { count } = convertCount(yarnCount(read.value), yardsPerPound);
  return `${candidate} (${quantityText(count, { decimals: 0 })})`;
}

/** Two numbers: the s tells which is the count; without it both readings are given. */
function twoNumbers(found: RegExpExecArray, options: ReadingOptions | undefined, refuse: RefuseText): Yarn {
  const [, before = "", first = "", firstMark, second = "", secondMark, after = ""] = found;
  const system = before.trim() === "" ? after.trim() : before.trim();
  const marks = Number(firstMark !== undefined) - Number(secondMark !== undefined);
  const [count, plies] = marks > 0 ? [first, second] : [second, first];
  const isTold = marks !== 0 && system !== "" && /^[1-9]\d*$/u.test(plies);
  if (isTold) return plied(`${plies}-ply of ${count} ${system}`, options, refuse);
  const systems = system === "" ? FEW : [system];
  const whole = (text: string): boolean => /^[1-9]\d{0,2}$/u.test(text);
  const pairs =
    first === second
      ? [
          [first, second],
          ["2", first],
        ]
      : [
          [second, first],
          [first, second],
        ];
  const candidates = systems.flatMap((name) =>
    pairs.flatMap(([many = "", one = ""]) => (whole(many) ? [`${many}-ply of ${one} ${name}`] : [])),
  );
  const told = candidates.map((candidate) => yards(candidate, options)).join(", ");
  return refuse("ambiguous", `Write one of them: ${told}.`, candidates);
}

/** `3-ply of 2-ply of 8 cotton`: the number is of the single. */
function plied(text: string, options: ReadingOptions | undefined, refuse: RefuseText): Yarn {
  let [plies, rest] = [1, text];
  for (let found = PLIES.exec(rest); found !== null; found = PLIES.exec(rest)) {
    plies *= Number(found[1]);
    rest = found[2] ?? "";
  }
  if (plies < 1 || plies > MOST_PLIES)
    return refuse("out-of-range", `The plies are 1 to ${String(MOST_PLIES)} in all.`);
  return { count: countOf(rest, options, refuse), plies, counted: "single" };
}

function countOf(text: string, options: ReadingOptions | undefined, refuse: RefuseText): Yarn["count"] {
  const read = attempt(countFrom, text, options);
  if (read.ok) return read.value;
  const [{ code, remedy, params }] = read.faults;
  return refuse(code as RefusalCode, remedy, params.candidates?.map(String));
}

/**
 * A whole yarn from text, as a label, a shop or a job file writes it.
 *
 * `3360 yd per lb`, `300 m per 100 g` and `80 tex in all` tell of the finished thread; `2-ply of 8 cotton`, `2/20s cotton`
 * and `30 tex × 2` of the single. Where two numbers have two readings, as `8/2 cotton` has, both are given with their yards
 * in the pound, and as texts this reader takes in `params.candidates`.
 *
 * @param text the yarn
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" for two readings, "unreadable" for what is no yarn, a ticket number among them
 * @example yarnFromText("2/20s cotton").plies // 2
 */
export function yarnFromText(text: string, options?: ReadingOptions): Yarn {
  const given: unknown = text;
  const example = "2-ply of 8 cotton";
  const refuse = refusalsOf("yarnFromText", `a yarn, such as ${example}`, example, given);
  if (typeof given !== "string") return refuse(missingOr(given, "wrong-kind"), "Give the yarn as text.");
  if (given.length > LONGEST) return refuse("too-long", `Text of more than ${String(LONGEST)} characters is not read.`);
  const yarn = given.trim().replace(/\s+/gu, " ");
  if (yarn === "") return refuse("empty", "Write the yarn out.");
  if (TICKET.test(yarn)) return refuse("unreadable", "A ticket number is no count: find the count it stands for.");
  const [, all, resultant] = IN_ALL.exec(yarn) ?? [];
  const whole = all ?? resultant;
  if (whole !== undefined)
    return made({ count: countOf(whole, options, refuse), plies: 1, counted: "finished thread" });
  const [, single, times] = TIMES.exec(yarn) ?? [];
  if (single !== undefined) return made(plied(`${times ?? ""}-ply of ${single}`, options, refuse));
  const two = TWO.exec(yarn);
  if (two !== null && !/(?:yd|yards?|m|metres?) ?[/]/iu.test(yarn)) return made(twoNumbers(two, options, refuse));
  const read = plied(yarn, options, refuse);
  const isLabel = read.count.unit.includes("Per");
  return made(isLabel && read.plies === 1 ? { ...read, counted: "finished thread" } : read);
}

function made(yarn: Yarn): Yarn {
  return Object.freeze(yarn);
}
