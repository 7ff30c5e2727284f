export const plural = (number: number, one: string, many = `${one}s`): string =>
  `${String(number)} ${number === 1 ? one : many}`;

export interface Hand {
  readonly yarns: readonly string[];
  readonly order?: string;
}

/** "plum and pink, either first" */
export function hand({ yarns, order }: Hand): string {
  const names = [...new Set(yarns)];
  if (names.length === 1) return names[0] ?? "";
  return order === undefined ? `${names.join(" and ")}, either first` : `${names.join(" and ")}, one and one`;
}

export function rounds(passes: number): string {
  const whole = Math.floor(passes / 2);
  return passes % 2 === 0 ? String(whole) : `${whole === 0 ? "" : String(whole)}½`;
}
export const roundsRead = (passes: number): string =>
  rounds(passes).replace("½", passes === 1 ? "a half" : " and a half");

export function duration(minutes: number): string {
  if (minutes < 60) return `about ${String(minutes)} min to go`;
  const rest = minutes % 60;
  return `about ${String(Math.floor(minutes / 60))} h${rest === 0 ? "" : ` ${String(rest)}`} to go`;
}
