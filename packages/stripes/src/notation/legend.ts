import { aText } from "../refusal/a-text.js";
import { type Check, fault, PASSED, refuse } from "../refusal/check.js";
import { described } from "../refusal/described.js";
import { sameColour } from "../sequence/same-colour.js";
import { refuseText } from "./refuse-text.js";

/** What each letter or name of a written order stands for. Letters are not the same everywhere: B is blue, or black. */
export type Legend<C> = Readonly<Record<string, C>>;

export const aNotation: Check = /* @__PURE__ */ aText(10_000);

/** A legend whose names all have one form. */
export function aLegend(form: RegExp, words: string): Check {
  return (value, path) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      return fault("wrong-kind", path, "an object from letters to colours", value, 'Write { K: "black" }.');
    }
    const names = Object.entries(value);
    if (names.length === 0) return fault("empty", path, "at least one letter", value, "Say what each stands for.");
    const wrong = names.find(([name, colour]) => !form.test(name) || name.length > 40 || colour === undefined);
    return wrong === undefined ? PASSED : fault("unreadable", path, words, wrong[0], "Name every colour so.");
  };
}

export function colourNamed<C>(refusedBy: string, legend: Legend<C>, name: string, position: number): C {
  if (Object.hasOwn(legend, name)) return legend[name] as C;
  return refuseText(
    refusedBy,
    "unknown-letter",
    `${Object.keys(legend).join(" or ")}, as in the legend`,
    name,
    position,
  );
}

export function nameOf<C>(refusedBy: string, legend: Legend<C>, colour: C): string {
  for (const [name, meant] of Object.entries(legend)) if (sameColour(meant, colour)) return name;
  return refuse(refusedBy, "unknown-letter", ["legend"], {
    expected: "a letter for every colour of the sequence",
    received: described(colour),
    remedy: "Add it to the legend.",
  });
}
