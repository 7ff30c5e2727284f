import { centimetres, endsPerCentimetre, endsPerInch, inches } from "@thrum/maths";
import type { WarpPlan } from "./warp-plan.js";

/** How many ends lie within each whole inch, or each two centimetres, of the raddle. */
export function raddleRows({ sett, widthInReed, ends }: WarpPlan): readonly (readonly [to: string, last: number])[] {
  const isMetric = widthInReed.unit.endsWith("metres");
  const mark = (at: number): [string, number] =>
    isMetric
      ? [`${String(2 * at)} cm`, Math.floor(2 * at * sett.in(endsPerCentimetre))]
      : [`${String(at)} in`, Math.floor(at * sett.in(endsPerInch))];
  const width = isMetric ? widthInReed.in(centimetres) / 2 : widthInReed.in(inches);
  return Array.from({ length: Math.ceil(width) }, (_, at) => {
    const [to, last] = mark(at + 1);
    return [to, Math.min(last, ends)] as const;
  });
}
