import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { expect, it } from "vitest";

const FILE = fileURLToPath(new URL("wiring.test-d.ts", import.meta.url));

/** What the compiler says of each wrong wiring, the lines that let it pass taken out. */
function messages(): readonly string[] {
  const { config } = ts.readConfigFile("tsconfig.base.json", (path) => ts.sys.readFile(path)) as { config: object };
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ".");
  const host = ts.createCompilerHost(options);
  const read = host.readFile.bind(host);
  const text = readFileSync(FILE, "utf8").replaceAll("@ts-expect-error", "wrong:");
  const source = (path: string): string | undefined => (path.endsWith("wiring.test-d.ts") ? text : read(path));
  host.readFile = source;
  host.getSourceFile = (path, target) => {
    const found = source(path);
    return found === undefined ? undefined : ts.createSourceFile(path, found, target);
  };
  const program = ts.createProgram([FILE], { ...options, noEmit: true, skipLibCheck: true }, host);
  return ts
    .getPreEmitDiagnostics(program, program.getSourceFile(FILE))
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, "\n").replace(/\s+/gu, " "));
}

it("the compiler refuses every wrong wiring in at most 300 characters", () => {
  const said = messages();
  const wrong = readFileSync(FILE, "utf8").match(/@ts-expect-error/gu) ?? [];
  expect(said.length).toBe(wrong.length);
  expect(said.filter((one) => one.length > 300).map((one) => `${String(one.length)}: ${one}`)).toEqual([]);
}, 120_000);
