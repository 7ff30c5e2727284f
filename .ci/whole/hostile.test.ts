// Nothing that a page, a file or another program hands over makes attempt throw, whichever function of whichever package it calls.
import * as maths from "@thrum/maths";
import * as catalogue from "@thrum/maths/catalogue";
import * as define from "@thrum/maths/define";
import * as plan from "@thrum/plan";
import * as stripes from "@thrum/stripes";
import { describe, expect, it } from "vitest";

const { attempt, faultText, inches } = maths;

function thrower(): never {
  throw new TypeError("a trap");
}
const TRAPS = ["get", "has", "ownKeys", "getPrototypeOf", "getOwnPropertyDescriptor", "isExtensible"] as const;
const revoked = (): object => {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return proxy;
};
class Ends {
  readonly ends = 3;
  get sett(): never {
    return thrower();
  }
}
const cyclic: Record<string, unknown> = {};
cyclic["self"] = cyclic;
const deep: unknown = JSON.parse(`${'{"a":['.repeat(900)}1${"]}".repeat(900)}`);

/** What may come: each is made anew, as some can be looked at but once. */
const hostile: readonly (() => unknown)[] = [
  ...[undefined, null, 3, -0, Number.NaN, 1e308, "x", "", true, 3n, Symbol("x"), [], [undefined], {}].map(
    (one) => () => one,
  ),
  () => () => 3,
  () => new Date(Number.NaN),
  () => new Map([["ends", 3]]),
  () => new Ends(),
  () => Object.create({ ends: 3 }) as unknown,
  () => Object.create(null) as unknown,
  () => JSON.parse('{"__proto__":{"ends":1},"constructor":1,"toString":null}') as unknown,
  () => new Proxy({}, {}),
  () => new Proxy([], {}),
  () => new Proxy(() => 3, {}),
  ...TRAPS.map((trap) => () => new Proxy({}, { [trap]: thrower })),
  ...TRAPS.map((trap) => () => new Proxy([1, 2], { [trap]: thrower })),
  () => new Proxy(inches(21), { get: thrower }),
  () => ({
    get ends() {
      return thrower();
    },
  }),
  () => ({
    dimension: "length",
    unit: "inches",
    get value() {
      return thrower();
    },
  }),
  revoked,
  () => cyclic,
  () => deep,
  () => Array.from({ length: 3 }),
];

type Called = readonly [name: string, f: (...given: never[]) => unknown];

const isFunction = (value: unknown): value is (...given: never[]) => unknown => typeof value === "function";

/** Errors, what attempts, and the printers of what our own functions gave. */
const APART =
  /^(?:attempt|QuantityError|StripeError|faultText|faultsText|pathText|inWords|asHtml|asLatex|asMathML|sourceText)$/u;

/** Every function of a package that takes what comes from outside. */
function functionsOf(name: string, all: object): readonly Called[] {
  return Object.entries(all).flatMap(([one, f]: readonly [string, unknown]): Called[] =>
    isFunction(f) && !APART.test(one) ? [[`${name} ${one}`, f]] : [],
  );
}

/** What of a package takes what people or programs hand over. What takes only a plan takes what `planFrom` made of it. */
const READS = /^(?:planWarp|planFrom|readPlan|readJob|readStripes|readProgress|readFigures|checkedJob)$/u;
const functions: readonly Called[] = [
  ...functionsOf("maths", { ...maths }),
  ...functionsOf("catalogue", {
    inputEntries: catalogue.inputEntries,
    revive: (one: unknown) => catalogue.revive("", one),
  }),
  ...functionsOf("define", { defineUnit: define.defineUnit, defineCalculation: define.defineCalculation }),
  ...functionsOf("stripes", { ...stripes }),
  ...functionsOf("plan", Object.fromEntries(Object.entries({ ...plan }).filter(([name]) => READS.test(name)))),
];

function faultsOf(f: Called[1], ...given: readonly unknown[]): readonly maths.Fault<string>[] {
  const read = attempt(f, ...given);
  return read.ok ? [] : read.faults;
}

describe.each(functions)("%s", (_name, f) => {
  it("is never thrown at through attempt, whatever it is called with", () => {
    const said = hostile.flatMap((make) => [...faultsOf(f, make(), make()), ...faultsOf(f, make())]).map(faultText);
    expect(said.filter((text) => !/: expected .+, received /u.test(text))).toEqual([]);
  });
});

const wanting = functions.filter(([, f]) => faultsOf(f, {}).some(({ code }) => code === "missing"));
it("most functions have fields to be missed", () => {
  expect(wanting.length).toBeGreaterThan(functions.length / 2);
});
describe.each(wanting)("%s, given an object", (_name, f) => {
  it("names every field that cannot be looked at, and every other that is missing", () => {
    const fields = [...new Set(faultsOf(f, {}).flatMap(({ path: [key] }) => (typeof key === "string" ? [key] : [])))];
    for (const field of fields) {
      for (const make of hostile) expect(attempt(f, { [field]: make() })).toHaveProperty("ok");
      const namedFor = (value: unknown): readonly unknown[] =>
        faultsOf(f, { [field]: value }).map(({ path: [key] }) => key);
      // A colour may be any value at all.
      if (namedFor(Symbol("x")).includes(field)) expect(namedFor(revoked())).toContain(field);
    }
  });
});

describe("a job that a program made", () => {
  it("is refused with every field that is none, each at its place", () => {
    const job = {
      groups: null,
      title: () => "x",
      note: new Date(0),
      warp: {
        length: revoked(),
        get wasteBehind() {
          return thrower();
        },
      },
      loom: { sley: 3n },
    };
    const places = ["groups", "title", "note", "warp length", "warp wasteBehind", "loom sley"];
    const named = faultsOf(plan.planWarp, job).map(({ function: by, path }) => [by, ...path].join(" "));
    expect(new Set(named)).toEqual(new Set(places.map((path) => `planWarp ${path}`)));
  });
});

describe("the attempt of the stripes", () => {
  it("answers as that of the maths", () => {
    for (const [, f] of functionsOf("", { ...stripes }))
      for (const make of hostile) expect(stripes.attempt(f, make()).ok).toBe(attempt(f, make()).ok);
  });
});
