import { joined, number, part, sum } from "./hand.js";
import type { Constant, Part } from "./hand.js";
import { CONSTANTS } from "./mixed-up.js";
import type { Place } from "./places.js";
import { percentIn, worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

/** Other numbers a hand puts for a constant. */
export function constantsFor({ kind }: Constant, value: number): readonly number[] {
  const others = CONSTANTS[kind].filter((row) => row.includes(value)).flat();
  return [...new Set(others)].filter((one) => one !== value);
}

/** A name a reader gives a factor or term that can be left out: "only one hem counted". */
function leftOut(scene: Scene, at: Part, rest: readonly Part[]): string {
  const { of, turned } = at;
  const [partner] = rest;
  const counts = of.op === "number" && of.constant === undefined && Number.isInteger(of.value);
  if (counts && !turned && rest.length === 1 && partner !== undefined)
    return `counts ${worded(scene, partner.of)} once, not ${of.value === 2 ? "twice" : `${String(of.value)} times`}`;
  if (counts && turned) return `does not divide by ${String(of.value)}`;
  return turned ? `leaves out dividing by ${worded(scene, of)}` : `leaves out ${worded(scene, of)}`;
}

type Made = (family: Reason["family"], what: string, says: () => string, parts: readonly Part[]) => Reason;

function ofFactor(scene: Scene, at: Part, index: number, rest: readonly Part[], made: Made): readonly Reason[] {
  const { of, turned } = at;
  const constant = of.op === "number" ? of.constant : undefined;
  const family = constant === undefined ? "factor" : "constant";
  const say = (): string => worded(scene, of);
  const isAlone = !turned && rest.every((one) => one.turned);
  const reasons: Reason[] = [
    { ...made(family, `no ${String(index)}`, () => leftOut(scene, at, rest), rest), share: isAlone ? 0.3 : 1 },
  ];
  const isOne = of.op === "number" && of.value === 1;
  if (isOne) return [];
  const flip = { ...at, turned: !turned };
  reasons.push(
    made(
      family,
      `turned ${String(index)}`,
      () => `${turned ? "multiplies by" : "divides by"} ${say()} instead of ${turned ? "dividing" : "multiplying"}`,
      [...rest, flip],
    ),
  );
  if (constant !== undefined) {
    for (const other of constantsFor(constant, of.op === "number" ? of.value : 0))
      reasons.push(
        made("constant", `${String(other)} for ${String(index)}`, () => `takes ${String(other)} for ${say()}`, [
          ...rest,
          { ...at, of: number(other, constant) },
        ]),
      );
    reasons.push(made("constant", `twice ${String(index)}`, () => `uses ${say()} twice`, [...rest, at, at]));
    return reasons;
  }
  reasons.push({
    ...made("factor", `twice ${String(index)}`, () => `${turned ? "divides" : "multiplies"} twice by ${say()}`, [
      ...rest,
      at,
      at,
    ]),
    share: 0.5,
  });
  if (rest.length > 0 && rest.length < 4 && of.op === "name") {
    const others = joined("product", rest);
    const says = turned
      ? `takes ${say()} away instead of dividing by it`
      : `adds ${say()} instead of multiplying by it`;
    reasons.push(made("factor", `added ${String(index)}`, () => says, [part(sum(part(others), part(of, turned)))]));
  }
  return reasons;
}

/** Everything a hand does wrong with the factors of a product that are no percentage. */
export function factorReasons(scene: Scene, place: Place): readonly Reason[] {
  const { hand, line } = place;
  if (hand.op !== "product") return [];
  const { parts } = hand;
  const where = `${line} ${String(parts.length)}`;
  const isPlain = parts.map(
    ({ of }) => percentIn(scene, of) === null && !(of.op === "name" && scene.percents.has(of.name)),
  );
  const made =
    (own: string): Made =>
    (family, what, says, next) => ({
      family,
      key: `${what} ${where}`,
      line: own === "" ? line : own,
      says,
      hand: joined("product", next.length === 0 ? [part(number(1))] : next),
      place,
    });
  const reasons = parts.flatMap((at, index) => {
    const rest = parts.filter((_, other) => other !== index);
    return isPlain[index] === true ? ofFactor(scene, at, index, rest, made(at.line)) : [];
  });
  const free = parts.map((_, index) => index).filter((index) => isPlain[index] === true);
  for (const [order, a] of free.entries())
    for (const b of free.slice(order + 1)) {
      const [one, two] = [parts[a], parts[b]];
      if (one === undefined || two === undefined) continue;
      const flip = parts.map((own, index) => (index === a || index === b ? { ...own, turned: !own.turned } : own));
      const numbers = one.of.op === "number" && two.of.op === "number";
      const says = (): string => `turns ${worded(scene, one.of)} and ${worded(scene, two.of)} upside down`;
      if (!numbers && one.turned !== two.turned)
        reasons.push(made(one.line)("factor", `pair ${String(a)} ${String(b)}`, says, flip));
      const both = parts.filter((_, index) => index !== a && index !== b);
      const out = (): string => `leaves out ${worded(scene, one.of)} and ${worded(scene, two.of)}`;
      if (one.line === two.line || numbers)
        reasons.push({ ...made(one.line)("factor", `both ${String(a)} ${String(b)}`, out, both), share: 0.3 });
    }
  if (parts.length > 1) {
    const constants = (own: Part): boolean => own.of.op === "number" && own.of.constant !== undefined;
    const flip = parts.map((own) => (constants(own) ? own : { ...own, turned: !own.turned }));
    if (place === scene.places[0] || parts.some(({ turned }) => turned))
      reasons.push({ ...made("")("factor", "whole", () => "turns the whole upside down", flip), share: 0.3 });
    const ratio = parts.map((own, index) =>
      constants(own) || isPlain[index] !== true ? own : { ...own, turned: !own.turned },
    );
    if (isPlain.includes(false))
      reasons.push({ ...made("")("factor", "ratio", () => "turns the ratio upside down", ratio), share: 0.3 });
  }
  return reasons;
}
