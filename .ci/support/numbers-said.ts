import type { PlanData, Told } from "@thrum/plan";

/** "18 3/8" is two: the whole inches and the part. */
const NUMBERS = /\d+(?:[.,/]\d+)*/gu;

/** "end 1" is a name; what is told in inches and in centimetres is so in the source. */
const NAMES = /\bend 1\b|\d+ in \(\d+ cm\)|\d+ cm \(\d+ in\)/gu;

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [Math.abs(value)];
  // Of a long list six are said, and how many more there are.
  if (Array.isArray(value)) return [...(value.length > 6 ? [value.length - 6] : []), ...value.flatMap(numbersIn)];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Whether a number as said is one of these, rounded to the figures it is said with. */
function isOf(said: string, values: readonly number[]): boolean {
  const half = 0.5 * 10 ** -(said.split(".")[1] ?? "").length;
  return values.some((value) => Math.abs(value - Number(said)) <= half * (1 + 1e-9));
}

/** The numbers of the sentences of a plan that do not stand in the data beside the sentence, each with its sentence. */
export function numbersOnlySaid({ figures }: PlanData): readonly string[] {
  const told = Object.values(figures.told).flatMap(({ value }): readonly Told[] => value ?? []);
  return told.flatMap(({ about, says, values }) => {
    const written = new Set(JSON.stringify(values).match(NUMBERS) ?? []);
    const numbers = numbersIn(values);
    const only = (says.replaceAll(NAMES, "").match(NUMBERS) ?? []).filter(
      (one) => !written.has(one) && !isOf(one, numbers),
    );
    return only.length === 0 ? [] : [`${about}: ${only.join(", ")} in "${says}"`];
  });
}
