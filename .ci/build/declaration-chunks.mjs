// What two entries of a package share of their types stands in a declaration file of its own. Not every compiler reads one
// that stands for no module, so a module without content is put beside it, which says where its types are.
import { existsSync, readdirSync, writeFileSync } from "node:fs";

for (const file of readdirSync("dist").filter((name) => name.endsWith(".d.ts"))) {
  const module = `dist/${file.replace(/\.d\.ts$/u, ".js")}`;
  if (!existsSync(module)) writeFileSync(module, `// @ts-self-types="./${file}"\nexport {};\n`);
}
