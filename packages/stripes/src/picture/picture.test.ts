import { law, stripes, upTo } from "#ci/law.js";
import { refusalOf } from "#ci/refusal-of.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { sequence } from "../sequence/sequence.js";
import { item } from "../sequence/item.js";
import { noEnds } from "../sequence/no-ends.js";
import type { Paint } from "./paint.js";
import { hatchedSvg } from "./hatched-svg.js";
import { letteredSvg } from "./lettered-svg.js";
import { stripesSvg } from "./stripes-svg.js";
import { textStrip } from "./text-strip.js";

const paint = (fill: string, letter: string, name: string): Paint => ({ fill, letter, name });
const paints = new Map([
  ["ash", paint("#e8e4d8", "A", "ash")],
  ["coal", paint("rgb(40 40 44)", "K", "coal")],
  ["madder", paint("firebrick", "M", "madder")],
  ["weld", paint("hsl(50, 80%, 50%)", "W", "weld")],
]);
const drawn = {
  paints,
  height: 40,
  id: "napkin",
  title: "Napkin",
  description: "Stripes of the hall's napkin",
} as const;
const napkin = sequence([
  { colour: "ash", ends: 12 },
  { colour: "coal", ends: 4 },
  { colour: "ash", ends: 8 },
]);

law(
  31,
  "the rectangles are those of the stripes one sees, side by side, and fill the width",
  [stripes, upTo(2)],
  (list, way) => {
    const made = sequence(list);
    const draw = item([stripesSvg, hatchedSvg, letteredSvg], way);
    const svg = draw({ ...drawn, sequence: made });
    const rectangles = [...svg.matchAll(/<rect x="(\d+)" width="(\d+)" height="40"/g)].map(([, x, width]) => [
      Number(x),
      Number(width),
    ]);
    expect(rectangles).toEqual(made.runs.map(({ ends }, index) => [(made.starts[index] ?? 0) - 1, ends]));
    expect(svg).toContain(`viewBox="0 0 ${made.ends} 40"`);
  },
);
/** A small reader of well-formed XML: the tags must nest and nothing stray may stand in them. */
function wellFormed(xml: string): boolean {
  const open: string[] = [];
  const rest = xml.replace(
    /<(\/?)([a-zA-Z]+)((?: [a-zA-Z:-]+="[^"<>]*")*)(\/?)>/g,
    (_, closes: string, name: string, __, empty: string) => {
      if (closes === "/" && open.pop() !== name) open.push("wrong");
      else if (closes === "" && empty === "") open.push(name);
      return "";
    },
  );
  return open.length === 0 && !/[<>]/.test(rest) && !/&(?!#\d+;)/.test(rest);
}
law(
  31,
  "whatever the text of a name, a title or a letter, the picture stays well-formed",
  [fc.string({ minLength: 1, maxLength: 30, unit: "grapheme" }), fc.constantFrom(stripesSvg, hatchedSvg, letteredSvg)],
  (text, draw) => {
    fc.pre(text.trim() !== "");
    const hostile = new Map([
      ["ash", paint("#fff", "A", text)],
      ["coal", paint("#000", "&", `"><script>${text}`)],
    ]);
    const svg = draw({
      ...drawn,
      paints: hostile,
      sequence: napkin,
      title: `<b>${text}`,
      description: `${text}]]>`,
    });
    expect(wellFormed(svg)).toBe(true);
    expect(svg).not.toContain("<script");
    expect(svg).not.toContain("<b>");
  },
);
test("a picture has a title and a description for those who do not see it", () => {
  const svg = stripesSvg({ ...drawn, sequence: napkin });
  expect(svg).toContain('role="img" aria-labelledby="napkin-title napkin-description"');
  expect(svg).toContain(
    '<title id="napkin-title">Napkin</title><desc id="napkin-description">Stripes of the hall&#39;s napkin</desc>',
  );
  expect(svg).toContain("<title>coal, 4 ends, 13 to 16</title>");
});
test("in black and white every colour has its own hatch, and none of its own colour", () => {
  const svg = hatchedSvg({
    ...drawn,
    sequence: sequence([...paints.keys()].map((colour) => ({ colour, ends: 9 }))),
  });
  const fills = [...svg.matchAll(/width="9" height="40" fill="([^"]+)"/g)].map(([, fill]) => fill);
  expect(fills).toEqual(["#fff", "#000", "url(#napkin-hatch-2)", "url(#napkin-hatch-3)"]);
  expect([...svg.matchAll(/<pattern id="([^"]+)"/g)].map(([, id]) => id)).toEqual(["napkin-hatch-2", "napkin-hatch-3"]);
  expect(svg).not.toContain("firebrick");
});
test("in letters every stripe is white and carries the letter of its colour", () => {
  const svg = letteredSvg({ ...drawn, sequence: napkin });
  expect([...svg.matchAll(/<text [^>]*>(.)<\/text>/g)].map(([, letter]) => letter)).toEqual(["A", "K", "A"]);
});

test.each([
  "url(https://example.org/x)",
  "red;background:url(x)",
  "#12",
  "#ggg",
  'red" onload="x',
  "expression(1)",
  "var(--x)",
  "rgb(1,2,3",
  "",
  "red ".repeat(40),
  7,
])("the fill %j is refused", (fill) => {
  const bad = new Map(paints).set("coal", paint(fill as string, "K", "coal"));
  expect(refusalOf(() => stripesSvg({ ...drawn, paints: bad, sequence: napkin }))).toMatchObject({
    code: "unsafe-text",
    path: ["paints", "coal", "fill"],
  });
});
test.each<[string, unknown, string]>([
  [
    "a name with a control character",
    { paints: new Map(paints).set("ash", paint("#fff", "A", "a\u0000")) },
    "unsafe-text",
  ],
  ["half a character", { title: "\ud800" }, "unsafe-text"],
  ["an empty title", { title: " " }, "unsafe-text"],
  ["a title of a megabyte", { title: "x".repeat(1_000_000) }, "unsafe-text"],
  ["a name that could leave its quotation marks", { id: 'a"b' }, "unsafe-text"],
  ["a colour without a paint", { paints: new Map([["ash", paint("#fff", "A", "ash")]]) }, "missing"],
  [
    "a paint with a field too many",
    { paints: new Map(paints).set("ash", { ...paint("#fff", "A", "ash"), stroke: "x" } as never) },
    "unknown-field",
  ],
  ["paints in an object", { paints: {} }, "wrong-kind"],
  ["a picture of no height", { height: 0 }, "out-of-range"],
  ["a picture of no ends", { sequence: noEnds }, "empty"],
  ["another way to draw", { drawnIn: "crayon" }, "unknown-field"],
])("%s is refused", (_, change, code) => {
  expect(refusalOf(() => stripesSvg({ ...drawn, sequence: napkin, ...(change as object) })).code).toBe(code);
});
test("more colours than there are hatches are refused, not drawn alike", () => {
  const colours = Array.from({ length: 12 }, (_, colour) => colour);
  const made = sequence(colours.map((colour) => ({ colour, ends: 3 })));
  const all = new Map(colours.map((colour) => [colour, paint("#fff", "A", `colour ${colour}`)]));
  expect(refusalOf(() => hatchedSvg({ ...drawn, paints: all, sequence: made }))).toMatchObject({
    code: "out-of-range",
    path: ["paints"],
  });
  expect(
    hatchedSvg({
      ...drawn,
      paints: new Map([...all].slice(0, 11)),
      sequence: sequence(made.runs.slice(0, 11)),
    }),
  ).toContain("hatch-10");
});

const letters = new Map([
  ["ash", "."],
  ["coal", "#"],
]);
test("a strip for the terminal, every line numbered by its first end", () => {
  expect(textStrip({ sequence: napkin, letters, endsPerLine: 10 })).toBe(" 1  ..........\n11  ..####....\n21  ....");
});
test("a strip shows every end once", () => {
  const all = new Map([
    ["ash", "a"],
    ["coal", "c"],
    ["madder", "m"],
    ["weld", "w"],
  ]);
  fc.assert(
    fc.property(stripes, upTo(30), (list, more) => {
      const shown = textStrip({ sequence: sequence(list), letters: all, endsPerLine: more + 1 })
        .replace(/^ *\d+ {2}/gm, "")
        .replaceAll("\n", "");
      expect(shown).toBe(list.map(({ colour, ends }) => colour.charAt(0).repeat(ends)).join(""));
    }),
    { numRuns: 1000 },
  );
});
test.each<[string, unknown, string]>([
  ["a colour without a letter", new Map([["ash", "."]]), "missing"],
  [
    "a letter of two characters",
    new Map([
      ["ash", "ab"],
      ["coal", "#"],
    ]),
    "unsafe-text",
  ],
  [
    "a letter that moves the cursor",
    new Map([
      ["ash", "\u001b"],
      ["coal", "#"],
    ]),
    "unsafe-text",
  ],
  [
    "a blank for a letter",
    new Map([
      ["ash", " "],
      ["coal", "#"],
    ]),
    "unsafe-text",
  ],
  ["letters in an object", { ash: "." }, "wrong-kind"],
])("%s is refused", (_, given, code) => {
  expect(refusalOf(() => textStrip({ sequence: napkin, letters: given as never, endsPerLine: 10 })).code).toBe(code);
});

const threeStripes = {
  sequence: sequence([
    { colour: "ash", ends: 12 },
    { colour: "coal", ends: 4 },
    { colour: "madder", ends: 8 },
  ]),
  paints,
  height: 12,
  id: "warp",
  title: "Warp",
  description: "Three stripes",
};
const head = [
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 12" overflow="visible" role="img" aria-labelledby="warp-title warp-description">',
  '<title id="warp-title">Warp</title><desc id="warp-description">Three stripes</desc>',
];
test("a picture in colours is its stripes at their places and no more", () => {
  expect(stripesSvg(threeStripes).split("\n")).toEqual([
    ...head,
    '<rect x="0" width="12" height="12" fill="#e8e4d8"><title>ash, 12 ends, 1 to 12</title></rect>',
    '<rect x="12" width="4" height="12" fill="rgb(40 40 44)"><title>coal, 4 ends, 13 to 16</title></rect>',
    '<rect x="16" width="8" height="12" fill="firebrick"><title>madder, 8 ends, 17 to 24</title></rect>',
    "</svg>",
  ]);
});
test("letters stand in the middle of their stripes, each a fifth of the height lower than the last", () => {
  expect(letteredSvg(threeStripes).split("\n")).toEqual([
    ...head,
    '<g stroke="#000" stroke-width="0.024"><rect x="0" width="12" height="12" fill="#fff"><title>ash, 12 ends, 1 to 12</title></rect>',
    '<rect x="12" width="4" height="12" fill="#fff"><title>coal, 4 ends, 13 to 16</title></rect>',
    '<rect x="16" width="8" height="12" fill="#fff"><title>madder, 8 ends, 17 to 24</title></rect></g>' +
      '<g font-size="0.6" font-family="sans-serif" text-anchor="middle" stroke="#fff" stroke-width="0.15" paint-order="stroke">' +
      '<text x="6" y="2.4">A</text><text x="14" y="4.8">K</text><text x="20" y="7.2">M</text></g>',
    "</svg>",
  ]);
  expect(letteredSvg({ ...threeStripes, height: 3 })).toContain('font-size="0.5"');
});
test("hatches turn by 60 degrees, and are twice as far apart after three of them", () => {
  const colours = ["ash", "coal", "madder", "weld", "indigo", "walnut"];
  const svg = hatchedSvg({
    ...threeStripes,
    sequence: sequence(colours.map((colour) => ({ colour, ends: 50 }))),
    paints: new Map(colours.map((colour) => [colour, paint("#fff", "A", colour)])),
  });
  const hatch = (place: number, gap: number, turned: number): string =>
    `<pattern id="warp-hatch-${place}" patternUnits="userSpaceOnUse" width="${gap}" height="${gap}" patternTransform="rotate(${turned})">` +
    `<path fill="#fff" d="M0 0h${gap}v${gap}H0"/><path d="M0 0h1v${gap}H0"/></pattern>`;
  expect(svg).toContain(
    `</desc>\n${hatch(2, 3, 30)}${hatch(3, 3, 90)}${hatch(4, 3, 150)}${hatch(5, 6, 30)}<g stroke="#000" stroke-width="0.3"><rect `,
  );
  const fills = [
    "#fff",
    "#000",
    "url(#warp-hatch-2)",
    "url(#warp-hatch-3)",
    "url(#warp-hatch-4)",
    "url(#warp-hatch-5)",
  ];
  expect([...svg.matchAll(/<rect [^>]*fill="([^"]+)"/gu)].map(([, fill]) => fill)).toEqual(fills);
});
test("a colour without a paint is refused by the function that was called", () => {
  for (const [name, draw] of Object.entries({ stripesSvg, hatchedSvg, letteredSvg })) {
    expect(refusalOf(() => draw({ ...threeStripes, paints: new Map([...paints].slice(0, 2)) })).message).toBe(
      `${name}({ paints.madder }): expected an object, received nothing. Give fill, letter, name.`,
    );
  }
});
test("a full last line of a strip is followed by no empty one", () => {
  expect(textStrip({ sequence: napkin, letters, endsPerLine: 12 })).toBe(" 1  ............\n13  ####........");
});
