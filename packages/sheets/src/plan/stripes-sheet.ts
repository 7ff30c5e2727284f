import type { BookCell, LiveLook, Rule, Sheet } from "../book/book.js";
import { formulaCell, headings, INPUT, PLAIN, textCell, TITLE, UNIT, WARNING } from "../book/cells.js";
import { colourOf } from "./colours.js";
import { handText } from "./hands.js";
import type { Hand, LaidStripe } from "./hands.js";
import { rowPrefix } from "./ledger-cells.js";
import { shareCells } from "./share-cells.js";

const FIRST = 5;
const SAYS = "a whole number of ends, 1 or more, of one of the hands on the right";

function stripeRow(row: string, colour: string, ends: number, yarn: number, lastYarn: string): readonly BookCell[] {
  const fits = `AND(ISNUMBER(C${row}),G${row}>0)`;
  const whole = `AND(C${row}>=1,C${row}=INT(C${row}))`;
  return [
    formulaCell(`A${row}`, `=ROW()-${String(FIRST - 1)}`, Number(row) - FIRST + 1, PLAIN),
    textCell(`B${row}`, colour, { ...INPUT, indent: true }),
    { at: `C${row}`, content: { number: ends }, look: INPUT },
    formulaCell(`D${row}`, `=E${row}-C${row}+1`, null, PLAIN),
    formulaCell(`E${row}`, `=SUM(C$${String(FIRST)}:C${row})`, null, PLAIN),
    // Unlike =, EXACT tells "Indigo" from "indigo".
    formulaCell(
      `G${row}`,
      `=SUMPRODUCT(EXACT(J$${String(FIRST)}:J$${lastYarn},B${row})*I$${String(FIRST)}:I$${lastYarn})`,
      yarn,
      PLAIN,
    ),
    formulaCell(
      `H${row}`,
      `=IF(ISERROR(C${row}),C${row},IF(${fits},IF(${whole},"","${SAYS}"),"${SAYS}"))`,
      "",
      WARNING,
    ),
  ];
}

/** The stripes, which may be changed: each with its hand, its ends and its colour, and where it begins and ends. */
export function stripesSheet(
  runs: readonly LaidStripe[],
  hands: readonly Hand[],
  yarns: readonly string[],
): {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
  readonly checks: string;
} {
  const last = String(FIRST + runs.length - 1);
  const lastHand = String(FIRST + hands.length - 1);
  const column = (letter: string, end: string): string => `'Stripes'!$${letter}$${String(FIRST)}:$${letter}$${end}`;
  const numberOf = (text: string): number => hands.findIndex((hand) => hand.text === text) + 1;
  const rows = runs.flatMap((run, at) => {
    const text = handText(run);
    return stripeRow(String(FIRST + at), text, run.ends, numberOf(text), lastHand);
  });
  const legend = hands.flatMap(({ text }, at): readonly BookCell[] => {
    const row = String(FIRST + at);
    return [
      { at: `I${row}`, content: { number: at + 1 }, look: PLAIN },
      textCell(`J${row}`, text, UNIT),
      textCell(`K${row}`, "", { fill: colourOf(at) }),
    ];
  });
  const rules = runs.flatMap((_, at): readonly Rule[] => {
    const row = String(FIRST + at);
    const words = { title: `stripe ${String(at + 1)}`, says: SAYS };
    return [
      { at: `B${row}`, type: "list", formula: `$J$${String(FIRST)}:$J$${lastHand}`, ...words },
      { at: `C${row}`, type: "custom", formula: `AND(ISNUMBER(C${row}),C${row}>=1,C${row}=INT(C${row}))`, ...words },
    ];
  });
  const liveLooks = hands.map((_, at): LiveLook => ({
    at: `F${String(FIRST)}:F${last}`,
    formula: `$G${String(FIRST)}=${String(at + 1)}`,
    look: { fill: colourOf(at) },
  }));
  const shares = shareCells(FIRST, hands, yarns, runs.length);
  const sheet: Sheet = {
    name: "Stripes",
    widths: [8, 24, 9, 10, 10, 10, 10, 34, 9, 24, 10],
    heights: new Map(),
    cells: [
      textCell("A1", "The stripes, in the order of the ends", TITLE),
      textCell(
        "A2",
        "Change the yellow cells. For one stripe more, insert a row inside the table and copy the row above into it.",
        PLAIN,
      ),
      textCell("A3", "The colours tell the hands apart; they are not those of their dye.", PLAIN),
      ...headings(FIRST - 1, [
        "Stripe",
        "Yarn",
        "Ends",
        "First end",
        "Last end",
        "Colour",
        "Hand no.",
        "Check",
        "Hand no.",
        "Hand",
        "Colour",
      ]),
      ...rows,
      ...legend,
      ...shares.cells,
    ],
    rules,
    liveLooks,
    notes: [],
  };
  const names = new Map([
    ["stripe_ends", column("C", last)],
    ["stripe_firsts", column("D", last)],
    ["stripe_hands", column("G", last)],
    ...shares.ranges.map((range, at): [string, string] => [`${rowPrefix("yarn", at)}_share`, range]),
  ]);
  return { sheet, names, checks: column("H", last) };
}
