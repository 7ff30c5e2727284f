// The API of each package by TypeDoc, as one page of Markdown: packages/<name>/api.md, shown on the site too.
import { readFileSync } from "node:fs";
import { Application, ReflectionKind } from "typedoc";
import { packageNames, root } from "../built.mjs";
import { calculations } from "./handbook.mjs";
import { fence, list, plain } from "./markdown.mjs";

const OURS = ["@formula", "@units", "@exactness", "@source"];
const kebabOf = new Map(calculations.map(({ name, kebab }) => [name, kebab]));

/** The exports of the main module of a package, as TypeDoc reads them. */
async function exportsOf(name) {
  const app = await Application.bootstrap({
    entryPoints: [`${root}packages/${name}/src/index.ts`],
    tsconfig: `${root}packages/${name}/tsconfig.json`,
    compilerOptions: { noEmit: true },
    skipErrorChecking: true,
    excludeInternal: true,
    excludeExternals: true,
    disableGit: true,
    sourceLinkTemplate: "{path}",
    readme: "none",
    logLevel: "Error",
    blockTags: [...OURS, "@param", "@returns", "@throws", "@example", "@remarks"],
  });
  const project = await app.convert();
  if (project === undefined) throw new Error(`TypeDoc cannot read packages/${name}/src/index.ts`);
  return project.children ?? [];
}

const wordsOf = (parts) =>
  (parts ?? [])
    .map(({ text }) => text)
    .join("")
    .trim();
const commentOf = (one) => one.comment ?? one.signatures?.[0]?.comment;

function fieldsOf(one) {
  const fields = one.children ?? one.type?.declaration?.children ?? [];
  return fields
    .filter(({ kind }) => kind === ReflectionKind.Property)
    .map((field) => {
      const says = wordsOf(field.comment?.summary).replace(/\s+/gu, " ");
      return `\`${field.name}\`: \`${String(field.type)}\`${says === "" ? "" : `. ${plain(says)}`}`;
    });
}

function signaturesOf(one) {
  if (one.kind === ReflectionKind.Function) {
    return one.signatures.map((signature) => {
      const types = (signature.typeParameters ?? []).map(({ name, type }) =>
        type ? `${name} extends ${String(type)}` : name,
      );
      const given = (signature.parameters ?? []).map(
        ({ name, type, flags }) => `${flags.isRest ? "..." : ""}${name}${flags.isOptional ? "?" : ""}: ${String(type)}`,
      );
      return `${one.name}${types.length > 0 ? `<${types.join(", ")}>` : ""}(${given.join(", ")}): ${String(signature.type)}`;
    });
  }
  if (one.kind === ReflectionKind.Variable) return [`${one.name}: ${String(one.type)}`];
  if (one.kind === ReflectionKind.TypeAlias) return [`type ${one.name} = ${String(one.type)}`];
  if (one.kind === ReflectionKind.Class) return [`class ${one.name}`];
  return [`interface ${one.name}`];
}

function entryOf(one) {
  const comment = commentOf(one);
  const tags = (comment?.blockTags ?? []).filter(({ tag }) => tag === "@throws" || tag === "@units");
  const fields = fieldsOf(one);
  const page = kebabOf.has(one.name) ? `Page: [${one.name}](../../docs/formulas/${kebabOf.get(one.name)}.md)` : "";
  return [
    `### ${one.name}`,
    fence("text", signaturesOf(one).join("\n")),
    plain(wordsOf(comment?.summary)),
    list([
      ...fields,
      ...tags.map(({ tag, content }) => `${tag.slice(1)}: ${plain(wordsOf(content).replace(/\s+/gu, " "))}`),
    ]),
    page,
  ]
    .filter(Boolean)
    .join("\n\n");
}

/** The room a thing stands in: the folders between src and its file. */
function roomOf(one) {
  const file = one.sources?.[0]?.fileName ?? "";
  return (
    file
      .replace(/^.*?src\//u, "")
      .split("/")
      .slice(0, -1)
      .join("/") || "main"
  );
}

function sectionsOf(all) {
  const rooms = [...new Set(all.map(roomOf))].sort((a, b) => a.localeCompare(b));
  return rooms.map((room) => {
    const entries = all.filter((one) => roomOf(one) === room).sort((a, b) => a.name.localeCompare(b.name));
    return `## ${room}\n\n${entries.map((one) => entryOf(one)).join("\n\n")}`;
  });
}

/** The pages, by path. */
export async function apiPages() {
  const pages = new Map();
  for (const name of packageNames) {
    const all = await exportsOf(name);
    const { description } = JSON.parse(readFileSync(`${root}packages/${name}/package.json`, "utf8"));
    const head = `# API of @thrum/${name}\n\n${plain(description)}. ${all.length} exports, by the folder their source stands in.`;
    pages.set(`packages/${name}/api.md`, [head, ...sectionsOf(all)].join("\n\n"));
  }
  return pages;
}
