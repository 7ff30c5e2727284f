// Who may import whom, as rules of dependency-cruiser: the plan of the house in DEVELOPERS.md.

/** The packages each may import, by their names. */
const packages = { maths: [], stripes: [], plan: ["maths", "stripes"], sheets: ["maths", "stripes", "plan"] };

/** What two of them may import of others; what the rest import stands in their package.json. */
const outside = { maths: ["decimal\\.js"], stripes: [] };

/** Each may import those before it. */
const inOrder = (names) => Object.fromEntries(names.map((name, at) => [name, names.slice(0, at)]));

const engine = inOrder([
  ...["fault", "looked-at", "frozen", "refusal", "numbers", "quantity", "formula"],
  ...["working", "solve", "spreadsheet", "columns"],
]);
const keptFromHandbook = ["working", "solve", "spreadsheet", "columns"];

/** The rooms of each package, and those that each may import besides itself; `job (types)` is its types alone, null is all. */
const rooms = {
  maths: {
    ...inOrder(["engine", "units", "check", "teach"]),
    sources: ["engine", "units"],
    handbook: ["engine", "units", "sources"],
    verification: ["index.ts"],
    catalogue: ["engine", "units", "handbook", "verification", "index.ts"],
    define: ["engine", "units"],
  },
  stripes: {
    refusal: ["sequence (types)"],
    sequence: ["refusal"],
    colour: ["refusal"],
    orders: ["refusal", "sequence"],
    comparing: ["refusal", "sequence"],
    fitting: ["refusal", "sequence"],
    notation: ["refusal", "sequence"],
    pairs: ["refusal", "sequence", "orders"],
    picture: ["refusal", "sequence"],
    winding: ["refusal", "sequence"],
    verification: [],
  },
  plan: {
    text: [],
    job: ["text"],
    core: ["text"],
    parts: ["core", "job (types)", "text"],
    figures: ["core", "job (types)", "parts", "text"],
    data: ["core", "job", "parts", "figures", "text"],
    views: ["core", "job", "parts", "figures", "data", "text"],
    progress: ["job", "text"],
    reconcile: ["job", "text"],
    command: null,
    files: null,
  },
  sheets: {
    book: [],
    calculation: ["book", "names.ts"],
    plan: ["book", "calculation", "names.ts"],
    functions: ["names.ts"],
    command: null,
  },
};

const test = "\\.test(-d)?\\.ts$";
const any = (names, end = "/") => `(${names.join("|")})${end}`;
const forbidden = [];
const forbid = (name, comment, from, to) => forbidden.push({ name, comment, severity: "error", from, to });

for (const [name, others] of Object.entries(packages)) {
  const src = `^packages/${name}/src/`;
  forbid(
    `${name} and other packages`,
    `It may import ${others.join(", ") || "none"}.`,
    { path: src },
    {
      path: "^packages/|^@thrum/",
      pathNot: `^packages/${any([name, ...others])}|^@thrum/${any([name, ...others], "(/|$)")}`,
    },
  );
  forbid(
    `${name} by its path`,
    "Import a package by its name.",
    { path: `^packages/(?!${name}/)[^/]+/src/` },
    {
      path: `^packages/${name}/`,
      dependencyTypesNot: ["aliased"],
    },
  );
  const inside = { path: src, pathNot: test };
  forbid(`${name} and .ci`, "Only tests may import from .ci.", inside, { path: "^\\.ci/|^#ci/" });
  if (outside[name] !== undefined)
    forbid(`${name} and the world`, `It imports ${outside[name].join(", ") || "nothing"}.`, inside, {
      dependencyTypes: ["core", "npm", "npm-dev", "npm-no-pkg", "npm-optional", "npm-peer", "npm-unknown", "unknown"],
      pathNot: ["^@thrum/", ...outside[name].map((one) => `(^|/)${one}(/|$)`)],
    });

  const known = any(Object.keys(rooms[name]));
  forbid(
    `a room of ${name}`,
    "It has no place in .ci/lint/rooms.mjs.",
    { path: `${src}[^/]+/`, pathNot: [`${src}${known}`, test] },
    {},
  );
  for (const [room, may] of Object.entries(rooms[name])) {
    if (may === null) continue;
    const from = { path: `${src}${room}/`, pathNot: test };
    const types = may.flatMap((one) => (one.endsWith(" (types)") ? [one.slice(0, -" (types)".length)] : []));
    const all = [room, ...may.filter((one) => !one.endsWith(" (types)")), ...types];
    forbid(`${name}/${room}`, `It may import ${may.join(", ") || "no other room"}.`, from, {
      path: src,
      pathNot: `${src}${any(all, "(/|$)")}`,
    });
    if (types.length > 0)
      forbid(`${name}/${room}, types`, `It may import the types of ${types.join(", ")} alone.`, from, {
        path: `${src}${any(types)}`,
        dependencyTypesNot: ["type-only"],
      });
  }
}

const ofEngine = "^packages/maths/src/engine/";
const part = (names) => `${ofEngine}${any(names, "[/.]")}`;
forbid(
  "a part of the engine",
  "It has no place in .ci/lint/rooms.mjs.",
  { path: "^packages/maths/src/" },
  {
    path: ofEngine,
    pathNot: part(Object.keys(engine)),
  },
);
for (const [name, before] of Object.entries(engine)) {
  forbid(
    `engine/${name}`,
    `It may import those to its left: ${before.join(", ")}.`,
    { path: part([name]), pathNot: test },
    {
      path: ofEngine,
      pathNot: part([name, ...before]),
    },
  );
}
forbid(
  "the handbook and the engine",
  "One formula would pull it in.",
  { path: "^packages/maths/src/handbook/", pathNot: test },
  { path: part(keptFromHandbook) },
);

forbid(
  "a cycle",
  "Two files that need each other.",
  {},
  {
    circular: true,
    viaOnly: { dependencyTypesNot: ["type-only"] },
  },
);
forbid("a cycle in the handbook", "Not even of types.", { path: "^packages/maths/src/handbook/" }, { circular: true });

export default {
  forbidden,
  options: {
    tsPreCompilationDeps: "specify",
    skipAnalysisNotInRules: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    doNotFollow: { path: ["node_modules", "/dist/", "^\\.ci/", "^examples/"] },
  },
};
