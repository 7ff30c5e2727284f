// ESLint rules made from rooms.mjs: imports that go the wrong way, and cycles of imports in the handbook.
import { existsSync, readFileSync } from "node:fs";
import { dirname, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { importFault } from "./rooms.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const handbook = resolve(root, "packages/maths/src/handbook") + sep;

/** Files of the handbook that a text at `path` imports. */
function handbookImports(path, text) {
  return ts
    .preProcessFile(text)
    .importedFiles.filter(({ fileName }) => fileName.startsWith("."))
    .map(({ fileName }) => resolve(dirname(path), fileName.replace(/\.js$/, ".ts")))
    .filter((file) => file.startsWith(handbook));
}

/** The way from `path` back to itself along imports, or undefined. */
function cycleFrom(path, text) {
  const seen = new Set();
  const queue = handbookImports(path, text).map((file) => [file]);
  for (const way of queue) {
    const file = way.at(-1);
    if (file === path) return way;
    if (seen.has(file) || !existsSync(file)) continue;
    seen.add(file);
    queue.push(...handbookImports(file, readFileSync(file, "utf8")).map((next) => [...way, next]));
  }
  return undefined;
}

const direction = {
  create(context) {
    const path = relative(root, context.filename).replaceAll(sep, "/");
    const judge = (node, isType) => {
      const fault = typeof node?.value === "string" ? importFault(path, node.value, isType) : undefined;
      if (fault !== undefined) context.report({ node, message: fault });
    };
    return {
      "ImportDeclaration, ExportAllDeclaration, ExportNamedDeclaration, ImportExpression, TSImportType": (node) => {
        const kind = node.type === "TSImportType" ? "type" : (node.importKind ?? node.exportKind);
        judge(node.source, kind === "type");
      },
    };
  },
};

const noCycle = {
  create(context) {
    return {
      Program(node) {
        const cycle = context.filename.startsWith(handbook)
          ? cycleFrom(context.filename, context.sourceCode.text)
          : undefined;
        if (cycle === undefined) return;
        const names = [context.filename, ...cycle].map((file) => relative(handbook, file));
        context.report({ node, message: `the handbook has a cycle of imports: ${names.join(" → ")}` });
      },
    };
  },
};

export const roomsPlugin = { rules: { direction, "no-cycle": noCycle } };
