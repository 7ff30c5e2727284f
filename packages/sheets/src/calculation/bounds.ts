import type { Declared, Unit } from "@thrum/maths";

type Input = Declared["inputs"][string];

/** A bound as a cell compares with it, counted in the unit of its column. */
function inUnit(bound: number, unit: Unit<string> | null): string {
  const [over, under] = unit?.scale ?? [1, 1];
  return String((bound * under) / over);
}

/** The comparisons a cell must pass, in spreadsheet words. */
export function comparisons(at: string, { what, range }: Input, unit: Unit<string> | null): readonly string[] {
  return [
    ...(what === "whole" ? [`${at}=INT(${at})`] : []),
    ...(range.atLeast === null ? [] : [`${at}>=${inUnit(range.atLeast, unit)}`]),
    ...(range.above === null ? [] : [`${at}>${inUnit(range.above, unit)}`]),
    ...(range.below === null ? [] : [`${at}<${inUnit(range.below, unit)}`]),
    ...(range.atMost === undefined ? [] : [`${at}<=${inUnit(range.atMost, unit)}`]),
  ];
}

/** The same in words: "a whole number of pieces, 1 or more". */
export function allowed({ what, range, noun }: Input, unit: Unit<string> | null): string {
  const shown = (bound: number): string => `${inUnit(bound, unit)}${unit === null ? "" : ` ${unit.symbol}`}`;
  const kind = what === "whole" ? `a whole number of ${noun}` : `a number${unit === null ? "" : ` (${unit.symbol})`}`;
  return [
    kind,
    ...(range.atLeast === null ? [] : [`${shown(range.atLeast)} or more`]),
    ...(range.above === null ? [] : [`more than ${shown(range.above)}`]),
    ...(range.below === null ? [] : [`less than ${shown(range.below)}`]),
    ...(range.atMost === undefined ? [] : [`no more than ${shown(range.atMost)}`]),
  ].join(", ");
}

/** The formula of a check: nothing where the number may stand, the sentence where it may not, an error as itself. */
export function checkFormula(at: string, input: Input, unit: Unit<string> | null): string {
  const says = `"${allowed(input, unit).replace(/"/gu, '""')}"`;
  const tests = comparisons(at, input, unit);
  const fits = tests.length === 0 ? '""' : `IF(AND(${tests.join(",")}),"",${says})`;
  return `=IF(ISERROR(${at}),${at},IF(ISNUMBER(${at}),${fits},${says}))`;
}

/** What must hold of the working for its answer to be one, in spreadsheet words; `place` tells where a line stands. */
export function answerTests(
  { atLeast, result }: Pick<Declared, "atLeast" | "result">,
  unit: Unit<string> | null,
  place: (line: string) => string,
  answer: string,
): string {
  const lines = Object.entries(atLeast).map(([line, least]) => `${place(line)}>=${String(least)}`);
  return [...lines, ...comparisons(answer, { ...result, what: "number" }, unit), "TRUE"].join(",");
}
