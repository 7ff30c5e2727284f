/** One thing wrong in a job file: where it stands and what to write instead. */
export interface JobFault {
  /** Line of the file, from 1. */
  readonly line: number;
  /** Path of the value, such as `pieces.hemEachEnd` or `stripes[2].ends`. */
  readonly path: string;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
}

/** A fault in one sentence, for a screen. */
export function faultText({ line, path, expected, received, remedy }: JobFault): string {
  const place = path === "" ? `line ${String(line)}` : `line ${String(line)}, ${path}`;
  return `${place}: expected ${expected}, received ${received}. ${remedy}`.trimEnd();
}
