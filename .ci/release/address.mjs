// Writes where the project lives into every manifest, from the one line `repository` of the root's package.json, an address
// such as https://example.org/somebody/thrum without an ending. --check: refuses while it is empty, or where one differs.
import { readFileSync, writeFileSync } from "node:fs";
import { packageNames, root } from "../support/built.mjs";

const read = (file) => JSON.parse(readFileSync(root + file, "utf8"));

/** What a package says of where it lives; nothing while nobody has said where that is. */
function addressOf(repository, name) {
  if (repository === "") return {};
  return {
    homepage: `${repository}#readme`,
    bugs: { url: `${repository}/issues` },
    repository: { type: "git", url: `git+${repository}.git`, directory: `packages/${name}` },
  };
}

/** A manifest with the address in it, after its licence; without one, where there is none. */
export function addressed(manifest, repository, name) {
  const written = ["homepage", "bugs", "repository"];
  const entries = Object.entries(manifest).filter(([key]) => !written.includes(key));
  const at = entries.findIndex(([key]) => key === "license") + 1;
  return Object.fromEntries([
    ...entries.slice(0, at),
    ...Object.entries(addressOf(repository, name)),
    ...entries.slice(at),
  ]);
}

if (import.meta.filename === process.argv[1]) {
  const { repository } = read("package.json");
  const check = process.argv.includes("--check");
  const wrong = [];
  if (check && !/^https:\/\/[\w.-]+(?:\/[\w.-]+){2,}(?<!\.git)$/u.test(repository)) {
    wrong.push(
      `repository in package.json: expected an address of https without .git at its end, received "${repository}"`,
    );
  }
  for (const name of packageNames) {
    const file = `packages/${name}/package.json`;
    const text = `${JSON.stringify(addressed(read(file), repository, name), null, 2)}\n`;
    if (text === readFileSync(root + file, "utf8")) continue;
    if (check) wrong.push(`${file} has another address: run node .ci/release/address.mjs`);
    else writeFileSync(root + file, text);
  }
  process.stderr.write(wrong.map((one) => `${one}\n`).join(""));
  process.exitCode = wrong.length > 0 ? 1 : 0;
}
