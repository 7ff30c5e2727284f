// Which source file may import which: the plan of the house in DEVELOPERS.md, as one function without side effects.
import { posix } from "node:path";

const packages = { maths: [], stripes: [], plan: ["maths", "stripes"], sheets: ["maths", "stripes", "plan"] };
// Other packages may import what their package.json lists.
const outside = { maths: ["decimal.js"], stripes: [] };
const rooms = ["engine", "units", "check", "teach", "sources", "handbook", "verification", "catalogue", "define"];
const parts = [
  "fault",
  "looked-at",
  "frozen",
  "refusal",
  "numbers",
  "quantity",
  "formula",
  "working",
  "solve",
  "spreadsheet",
  "columns",
];
const keptFromHandbook = ["working", "solve", "spreadsheet", "columns", "check", "teach"];

/** The rooms of the plan, and those that each may import besides itself. `job (types)` is its types alone. */
const roomsOfPlan = {
  text: [],
  job: ["text"],
  core: ["text"],
  parts: ["core", "job (types)", "text"],
  figures: ["core", "job (types)", "parts", "text"],
  data: ["core", "job", "parts", "figures", "text"],
  views: ["core", "job", "parts", "figures", "data", "text"],
  progress: ["job", "text"],
  reconcile: ["job", "text"],
};

/** packages/maths/src/engine/quantity/unit.ts → { name: "maths", room: "engine", part: "quantity", … } */
function placeOf(path) {
  const [, name, inside] = /^packages\/([^/]+)\/src\/(.+)$/.exec(path) ?? [];
  if (name === undefined) return undefined;
  const [room, part] = inside.replace(/\.[a-z.-]+$/, "").split("/");
  return { name, room, part, isTest: /\.test(-d)?\.ts$/.test(path) };
}

function packageFault(from, specifier) {
  const [, wanted] = /^@thrum\/([^/]+)/.exec(specifier) ?? [];
  if (wanted !== undefined) {
    return packages[from.name]?.includes(wanted) ? undefined : `${from.name} may not import @thrum/${wanted}`;
  }
  if (from.isTest || outside[from.name]?.includes(specifier)) return undefined;
  if (specifier.startsWith("#ci/")) return "only tests may import from .ci";
  return from.name in outside ? `${from.name} may not import ${specifier}` : undefined;
}

function engineFault(from, to) {
  const [here, there] = [parts.indexOf(from.part), parts.indexOf(to.part)];
  const unknown = here < 0 ? from.part : there < 0 ? to.part : undefined;
  if (unknown !== undefined)
    return `engine/${unknown} has no place in the order of the engine's parts (.ci/lint/rooms.mjs)`;
  return there > here ? `engine/${from.part} may not import engine/${to.part}, which stands to its right` : undefined;
}

function roomFault(from, to) {
  if (from.room === "index" || (["verification", "catalogue"].includes(from.room) && to.room === "index"))
    return undefined;
  const [here, there] = [rooms.indexOf(from.room), rooms.indexOf(to.room)];
  if (here < 0) return `${from.room} is none of the rooms ${rooms.join(", ")}`;
  if (there < 0) return `${from.room} may not import ${to.room}, which is none of the rooms`;
  if (there > here) return `${from.room} may not import ${to.room}, which is built on it`;
  if (from.room === "engine") return engineFault(from, to);
  const wanted = to.room === "engine" ? to.part : to.room;
  return from.room === "handbook" && keptFromHandbook.includes(wanted)
    ? `the handbook may not import ${wanted}: one formula would pull it in`
    : undefined;
}

/** Files beside the rooms, and the command, may import them all. */
function planFault(from, to, isType) {
  const may = roomsOfPlan[from.room];
  if (may === undefined || from.room === to.room || may.includes(to.room)) return undefined;
  if (isType && may.includes(`${to.room} (types)`)) return undefined;
  const only = may.includes(`${to.room} (types)`) ? " but for its types" : "";
  return `in the plan ${from.room} may not import ${to.room}${only}`;
}

/** Why the file at `path` (from the root of the repository) may not import `specifier`, or only its types; undefined when it may. */
export function importFault(path, specifier, isType = false) {
  const from = placeOf(path);
  if (from === undefined) return undefined;
  if (!specifier.startsWith(".")) return packageFault(from, specifier);
  const target = posix.join(posix.dirname(path), specifier);
  const to = placeOf(target);
  if (to?.name !== from.name) return `${target} lies outside packages/${from.name}/src: import a package by its name`;
  if (from.isTest) return undefined;
  if (from.name === "plan") return planFault(from, to, isType);
  return from.name === "maths" ? roomFault(from, to) : undefined;
}
