/** What a command asks of the machine it runs on. */
export interface World {
  /** The text of a file, or of standard input where the path is "-". */
  read(path: string): string;
  /** Writes a file whole or not at all; an existing one is kept unless it may be replaced. */
  write(path: string, content: string | Uint8Array, existing: "keep" | "replace"): void;
  /** Whether two paths lead to one file. */
  isSameFile(one: string, other: string): boolean;
  /** Standard output, and standard error for what is not the answer. */
  print(content: string | Uint8Array): void;
  complain(text: string): void;
  /** Whether standard output is a screen, which can show no workbook. */
  readonly isScreen: boolean;
}

/** A file that could not be read or written, told in one sentence. */
export class FileTrouble extends Error {
  override readonly name = "FileTrouble";
}
