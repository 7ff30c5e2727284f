import { isPercent } from "../engine/quantity/index.js";
import { inWords } from "../engine/working/index.js";
import { name, number, part, product, sum } from "./hand.js";
import type { Constant, Hand, Part } from "./hand.js";
import { constantsFor } from "./operators-factor.js";
import { changed, withFactors } from "./places.js";
import { worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

function isUnder(hand: Hand, input: string): boolean {
  if (!("parts" in hand)) return "of" in hand && isUnder(hand.of, input);
  return hand.parts.some(({ of, turned }) => (of.op === "name" && of.name === input ? turned : isUnder(of, input)));
}

/** An input turned over, its constants turned with it or left out. */
function turnedWith(hand: Hand, input: string, bare: boolean): Hand {
  const own = ({ of }: Part): boolean =>
    (of.op === "number" && of.constant?.input === input) || (of.op === "name" && of.name === input);
  return withFactors(hand, (one) => {
    if (!own(one)) return null;
    return bare && one.of.op === "number" ? [] : [{ ...one, turned: !one.turned }];
  });
}
/** The same constant mixed up wherever it stands, or all those of one input or one kind left out. */
export function constantReasons(scene: Scene): readonly Reason[] {
  const found = new Map<string, { readonly value: number; readonly constant: Constant; count: number }>();
  const visit = (hand: Hand): void => {
    if (hand.op === "number" && hand.constant !== undefined) {
      const key = `${hand.constant.kind} ${String(hand.value)}`;
      const own = found.get(key) ?? { value: hand.value, constant: hand.constant, count: 0 };
      own.count += 1;
      found.set(key, own);
    }
    if ("parts" in hand) for (const { of } of hand.parts) visit(of);
    else if ("of" in hand) visit(hand.of);
  };
  visit(scene.hand);
  const reasons: Reason[] = [];
  const put = (key: string, says: string, hand: Hand, family: Reason["family"] = "constant"): void => {
    reasons.push({ family, key, line: "", says: () => says, hand });
  };
  const all = (value: number, other: number): Hand =>
    changed(scene.hand, (hand) =>
      hand.op === "number" && hand.constant !== undefined && hand.value === value ? number(other) : null,
    );
  for (const { value, constant, count } of found.values()) {
    const say = worded(scene, number(value, constant));
    if (count > 1) {
      for (const other of constantsFor(constant, value))
        put(`all ${String(value)} ${String(other)}`, `takes ${String(other)} for ${say} throughout`, all(value, other));
      put(`all no ${String(value)}`, `leaves ${say} out throughout`, all(value, 1));
    }
  }
  for (const input of new Set([...found.values()].map(({ constant }) => constant.input))) {
    const own = (hand: Hand): boolean => hand.op === "number" && hand.constant?.input === input;
    const many = [...found.values()].filter(({ constant }) => constant.input === input);
    if (input !== "")
      put(
        `turned bare ${input}`,
        `${isUnder(scene.hand, input) ? "multiplies by" : "divides by"} ${worded(scene, { op: "name", name: input })} alone, its units left out`,
        turnedWith(scene.hand, input, true),
      );
    if (many.length < 2) continue;
    put(
      `turned with units ${input}`,
      `takes the ${worded(scene, { op: "name", name: input })} the other way, as the other kind of count is taken`,
      turnedWith(scene.hand, input, false),
    );
    const none = changed(scene.hand, (hand) => (own(hand) ? number(1) : null));
    put(
      `no units of ${input}`,
      input === ""
        ? "leaves the answer in the units it was worked in"
        : `does not turn ${worded(scene, { op: "name", name: input })} into the units of the sum`,
      none,
    );
  }
  return reasons;
}

/** A sum of a percentage answer: as a fraction, what is left of it, the whole and it. */
export function percentAnswers({ hand, unit, percents, inputs }: Scene): readonly Reason[] {
  if (!isPercent(unit)) return [];
  const made = (key: string, says: string, own: Hand): Reason => {
    return { family: "base", key, line: "", says: () => says, hand: own };
  };
  const names = [...inputs.keys()].filter((one) => percents.has(one) && inputs.get(one)?.what === "quantity");
  const all = names.map((one): Hand => ({ op: "name", name: one }));
  const hundred = part(number(100));
  const both =
    names.length < 2
      ? []
      : [
          made("added", "adds the percentages", product(part(sum(...all.map((one) => part(one)))), hundred)),
          made("multiplied", "multiplies the percentages", product(...all.map((one) => part(one)), hundred)),
          made(
            "mean",
            "takes the mean of the percentages",
            product(part(sum(...all.map((one) => part(one)))), hundred, part(number(names.length), true)),
          ),
          made(
            "difference",
            "takes the difference of the percentages",
            product(part(sum(...all.map((one, at) => part(one, at > 0)))), hundred),
          ),
          ...[false, true].map((turned) =>
            made(
              `onto ${String(turned)}`,
              turned ? "gives the part that neither takes" : "works as if both were added on",
              product(
                part(
                  turned
                    ? product(...all.map((one) => part(sum(part(number(1)), part(one, true)))))
                    : sum(
                        part(product(...all.map((one) => part(sum(part(number(1)), part(one)))))),
                        part(number(1), true),
                      ),
                ),
                hundred,
              ),
            ),
          ),
        ];
  const measures = [...inputs].filter(([, read]) => read.what === "quantity").map(([one]) => one);
  const ratios = measures.flatMap((one) =>
    measures.flatMap((other) => {
      const [a, b] = [inputs.get(one), inputs.get(other)];
      const alike = one !== other && a?.what === "quantity" && b?.what === "quantity" && a.unit.name === b.unit.name;
      return alike && !percents.has(one)
        ? [
            made(
              `${one} of ${other}`,
              `gives ${inWords(one)} as a part of ${inWords(other)}`,
              product(part(name(one)), part(name(other), true), hundred),
            ),
          ]
        : [];
    }),
  );
  return [
    ...ratios,
    made("fraction", "gives the fraction, not the per cent", product(part(hand), part(number(100), true))),
    made("rest", "gives what is left of the hundred", sum(part(number(100)), part(hand, true))),
    made("and", "gives the hundred and the part together", sum(part(number(100)), part(hand))),
    ...both,
  ];
}
