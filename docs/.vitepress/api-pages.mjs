// The API of each package by TypeDoc: a page for each folder of its sources, and the list of them.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { Application, ReflectionKind } from "typedoc";
import { calculations, maths, packageNames, root } from "./pages/handbook.mjs";
import { capital, fence, list, plain } from "./pages/markdown.mjs";

const OURS = ["@formula", "@units", "@exactness", "@source"];
const pageOf = new Map(calculations.map(({ name, kebab }) => [name, kebab]));
const inputOf = (name) => `${name[0].toUpperCase()}${name.slice(1)}Input`;

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

/** An export as a section; a formula tells its own inputs, whose interface needs none. */
function entryOf(one, input) {
  const comment = commentOf(one);
  const tags = (comment?.blockTags ?? []).filter(({ tag }) => tag === "@throws" || tag === "@units");
  const fields = fieldsOf(input ?? one);
  const page = pageOf.has(one.name)
    ? `To try: [${capital(maths.inWords(one.name))}](../../formulas/${pageOf.get(one.name)}.md)`
    : "";
  return [
    `## ${one.name}`,
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

const byName = (a, b) => a.name.localeCompare(b.name);
const titleOf = (room) => capital(room.replace("/", ": "));
const slugOf = (room) => room.split("/").at(-1);

/** A folder's page: its names first, then each. Of two names alike but for their capitals the second is numbered. */
function roomPage(name, room, all, part) {
  const inputs = new Map(all.map((one) => [one.name, one]));
  const ownInputs = new Set(all.filter((one) => pageOf.has(one.name)).map((one) => inputOf(one.name)));
  const entries = all.filter((one) => !ownInputs.has(one.name));
  const seen = new Map();
  const names = entries.map((one) => {
    const slug = one.name.toLowerCase();
    const before = seen.get(slug) ?? 0;
    seen.set(slug, before + 1);
    return `[${one.name}](#${slug}${before === 0 ? "" : `-${before}`})`;
  });
  const head = `# ${titleOf(room)}, of @thrum/${name}`;
  const sections = entries.map((one) => entryOf(one, pageOf.has(one.name) ? inputs.get(inputOf(one.name)) : undefined));
  return [`---\n${JSON.stringify({ part })}\n---`, head, names.join(" · "), ...sections].join("\n\n");
}

/** Writes the pages of the API into docs/api. */
export async function writeApiPages() {
  const folder = `${root}docs/api`;
  rmSync(folder, { recursive: true, force: true });
  const parts = ["# API", "Every export with its signature and its fields, made by TypeDoc from the sources."];
  for (const name of packageNames) {
    mkdirSync(`${folder}/${name}`, { recursive: true });
    const all = await exportsOf(name);
    const { description } = JSON.parse(readFileSync(`${root}packages/${name}/package.json`, "utf8"));
    const rooms = [...new Set(all.map(roomOf))].sort((a, b) => a.localeCompare(b));
    const part = {
      title: `@thrum/${name}`,
      index: "api/index.html",
      pages: rooms.map((room) => [`api/${name}/${slugOf(room)}.html`, titleOf(room)]),
    };
    const links = rooms.map((room) => {
      const entries = all.filter((one) => roomOf(one) === room).sort(byName);
      writeFileSync(`${folder}/${name}/${slugOf(room)}.md`, `${roomPage(name, room, entries, part)}\n`);
      return `[${titleOf(room)}](./${name}/${slugOf(room)}.md): ${entries.map((one) => `\`${one.name}\``).join(", ")}`;
    });
    parts.push(`## @thrum/${name}`, `${plain(description)}. ${all.length} exports.`, list(links));
  }
  writeFileSync(`${folder}/index.md`, `${parts.join("\n\n")}\n`);
}
