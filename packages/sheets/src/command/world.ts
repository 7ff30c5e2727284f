/** What the command asks of the machine it runs on. */
export interface World {
  /** The text of a file, or of standard input where the path is "-". */
  read(path: string): string;
  /** Writes a file whole or not at all; an existing one is kept unless it may be replaced. */
  write(path: string, content: Uint8Array, existing: "keep" | "replace"): void;
  /** Standard output, and standard error for what is not the answer. */
  print(content: Uint8Array | string): void;
  complain(text: string): void;
  /** Whether standard output is a screen, which can show no workbook. */
  readonly isScreen: boolean;
}
