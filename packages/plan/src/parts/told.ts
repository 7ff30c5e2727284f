/** What does not agree, or what the weaver is asked to look at: a sentence, and the figures in it. */
export interface Told {
  readonly standing: "must" | "check" | "free" | "ask";
  /** What it is about, in words of the trade. */
  readonly about: string;
  readonly says: string;
  readonly values: Readonly<Record<string, number | string | readonly number[] | readonly string[]>>;
}

/** "1 end", "2 ends" */
export function counted(number: number, noun: string, plural = `${noun}s`): string {
  return `${String(number)} ${number === 1 ? noun : plural}`;
}

/** "1, 2 and 3" */
export function listed(words: readonly (number | string)[], last = "and"): string {
  const texts = words.map(String);
  return texts.length < 2 ? texts.join("") : `${texts.slice(0, -1).join(", ")} ${last} ${texts.at(-1) ?? ""}`;
}

/** The first six by name, the others by their number: "1, 2, 3, 4, 5, 6 and 324 more". */
export function firstSix(words: readonly (number | string)[]): string {
  return words.length <= 6 ? listed(words) : `${words.slice(0, 6).join(", ")} and ${String(words.length - 6)} more`;
}
