import { oneOf, readInputs } from "../../engine/formula/index.js";
import type { Source } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { astmD1909, euFibreNames } from "../../sources/index.js";
import { percentAdded } from "../../units/index.js";
import type { Addition } from "../../units/index.js";

/** A regain that a market agrees on for a fibre, with where it was found and whether it was read there. */
export interface AgreedRegain {
  readonly regain: Addition;
  readonly source: Source;
  readonly status: "read" | "from memory";
}

type Row = readonly [percent: string, status: AgreedRegain["status"]];

/** A fibre as one convention or another divides it. */
export type Fibre =
  | "acetate"
  | "acrylic"
  | "alginate"
  | "aramid"
  | "bleached ramie"
  | "carded wool"
  | "coir"
  | "combed wool"
  | "cotton"
  | "cupro"
  | "elastane"
  | "flax"
  | "hemp"
  | "jute"
  | "kapok"
  | "lyocell"
  | "mercerised cotton"
  | "modacrylic"
  | "modal"
  | "nylon"
  | "paper yarn"
  | "polyamide filament"
  | "polyamide staple"
  | "polyester"
  | "polylactide"
  | "polypropylene"
  | "silk"
  | "sisal"
  | "triacetate"
  | "viscose"
  | "wool";

/** Who agreed on it, and for which fibre: the same fibre has another regain elsewhere. */
export interface AgreedRegainOf {
  readonly convention: "EU 1007/2011" | "ASTM D1909";
  readonly fibre: Fibre;
}

type Rows = Readonly<Partial<Record<Fibre, Row>>>;

const conventions: Readonly<Record<AgreedRegainOf["convention"], Rows>> = {
  "EU 1007/2011": {
    "carded wool": ["17", "read"],
    "combed wool": ["18.25", "from memory"],
    cotton: ["8.5", "read"],
    "mercerised cotton": ["10.5", "from memory"],
    flax: ["12", "from memory"],
    jute: ["17", "from memory"],
    silk: ["11", "from memory"],
    viscose: ["13", "from memory"],
    acetate: ["9", "from memory"],
    polyester: ["1.5", "from memory"],
    "polyamide staple": ["6.25", "read"],
    "polyamide filament": ["5.75", "from memory"],
    acrylic: ["2", "from memory"],
    alginate: ["20", "from memory"],
    aramid: ["8", "from memory"],
    "bleached ramie": ["8.5", "from memory"],
    coir: ["13", "from memory"],
    cupro: ["13", "from memory"],
    elastane: ["1.5", "from memory"],
    hemp: ["12", "from memory"],
    kapok: ["10.9", "from memory"],
    lyocell: ["13", "from memory"],
    modacrylic: ["2", "from memory"],
    modal: ["13", "from memory"],
    "paper yarn": ["13.75", "from memory"],
    polylactide: ["1.5", "from memory"],
    polypropylene: ["2", "from memory"],
    sisal: ["14", "from memory"],
    triacetate: ["7", "from memory"],
  },
  "ASTM D1909": {
    wool: ["13.6", "read"],
    jute: ["13.75", "from memory"],
    polyester: ["0.4", "from memory"],
    acetate: ["6.5", "from memory"],
    acrylic: ["1.5", "from memory"],
    flax: ["12", "from memory"],
    hemp: ["12", "from memory"],
    nylon: ["4.5", "from memory"],
    silk: ["11", "from memory"],
    triacetate: ["3.5", "from memory"],
    viscose: ["11", "from memory"],
  },
};

/**
 * The regain that a market agrees on for a fibre. There is none that holds everywhere, so the convention is always named;
 * what a label or an invoice must use is for the law of the place.
 *
 * @param of the convention and the fibre, as the convention divides them
 * @throws QuantityError "ambiguous" for a fibre the convention divides further, "no-answer" for one not in it
 * @example agreedRegain({ convention: "EU 1007/2011", fibre: "carded wool" }).regain.in(percentAdded) // 17
 */
export function agreedRegain(of: AgreedRegainOf): AgreedRegain {
  const fibres = new Set(Object.values(conventions).flatMap((rows) => Object.keys(rows)));
  const inputs = {
    convention: oneOf(Object.keys(conventions), "who agreed on it"),
    fibre: oneOf([...fibres], "which fibre is weighed"),
  };
  readInputs("agreedRegain", inputs, of);
  const { convention, fibre } = of;
  const [percent, status] = conventions[convention][fibre] ?? unknownFibre(of);
  const source = convention === "ASTM D1909" ? astmD1909 : euFibreNames;
  return Object.freeze({ regain: percentAdded(percent), source, status });
}

function unknownFibre({ convention, fibre }: AgreedRegainOf): never {
  const names = Object.keys(conventions[convention]);
  const parts = names.filter((name) => name.split(" ").includes(fibre));
  refuse(
    parts.length > 0 ? "ambiguous" : "no-answer",
    ["agreedRegain", "fibre"],
    `a fibre of ${convention}: ${names.join(", ")}`,
    described(fibre),
    parts.length > 0 ? `Say which: ${parts.join(" or ")}.` : "Give the regain agreed on yourself.",
    { candidates: parts.length > 0 ? parts : names },
  );
}
