import { oneOf, readInputs } from "../../engine/formula/index.js";
import type { Source } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { refuse } from "../../engine/refusal.js";
import { quiltingClimber2017, settSinglePage, sweetGeorgia, taylor1909 } from "../../sources/index.js";

/** A constant of the rule of diameters, for inches and yards per pound, with where it was read. */
export interface DiameterConstant {
  readonly constant: number;
  readonly source: Source;
}

/** For which yarn, and by whose book: they differ by a twentieth. */
export interface DiameterConstantOf {
  readonly material: "cotton" | "worsted" | "woollen";
  readonly givenBy: "Taylor" | "faena" | "SweetGeorgia" | "quiltingclimber";
}

type Given = readonly [Source, Readonly<Partial<Record<DiameterConstantOf["material"], number>>>];

const sets: Readonly<Record<DiameterConstantOf["givenBy"], Given>> = {
  Taylor: [taylor1909, { cotton: 0.95 }],
  faena: [settSinglePage, { cotton: 0.9, worsted: 0.9, woollen: 0.84 }],
  SweetGeorgia: [sweetGeorgia, { cotton: 0.91, worsted: 0.9, woollen: 0.85 }],
  quiltingclimber: [quiltingClimber2017, { worsted: 0.9, woollen: 0.86 }],
};

/**
 * The constant that a book or page gives for a material, in the rule that Ashenhurst made known: diameters per inch are
 * the constant times the square root of the yards per pound. Found by trial, so it is never assumed.
 *
 * @param of the material, and who gives the constant
 * @throws QuantityError "no-answer" where that book gives none for the material
 * @example diameterConstant({ material: "woollen", givenBy: "SweetGeorgia" }).constant // 0.85
 */
export function diameterConstant(of: DiameterConstantOf): DiameterConstant {
  const inputs = {
    material: oneOf(["cotton", "worsted", "woollen"], "what the yarn is spun from, and how"),
    givenBy: oneOf(Object.keys(sets), "whose constant it is"),
  };
  readInputs("diameterConstant", inputs, of);
  const { material, givenBy } = of;
  const [source, given] = sets[givenBy];
  const constant = given[material];
  if (constant !== undefined) return Object.freeze({ constant, source });
  const others = Object.entries(sets).flatMap(([who, [, set]]) => {
    const other = set[material];
    return other === undefined ? [] : [`${who} ${String(other)}`];
  });
  refuse(
    "no-answer",
    ["diameterConstant", "givenBy"],
    `one who gives a constant for ${material}`,
    described(givenBy),
    `It is given by ${others.join(", ")}.`,
  );
}
