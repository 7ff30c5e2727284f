import * as v from "valibot";
import type { Job, StripesItem } from "./job.js";
import { anyLength, anyMass, count, oneOf, someLength, someLoss, someMass, words } from "./values.js";

const yarnFields = {
  count: v.pipe(v.number("the number of the yarn|"), v.finite("a number|"), v.gtValue(0, "a number above zero|")),
  system: oneOf("tex", "denier", "cotton", "worsted", "linen", "metric"),
  plies: count("plies"),
  counted: oneOf("single", "finished thread"),
};

const stripesItem: v.GenericSchema<StripesItem> = v.lazy((given) => {
  const keys = typeof given === "object" && given !== null ? given : {};
  if ("repeat" in keys || "of" in keys) return v.strictObject({ repeat: count("times"), of: stripesList });
  if ("mirror" in keys || "middleStripe" in keys) {
    return v.strictObject({ mirror: stripesList, middleStripe: oneOf("once", "twice") });
  }
  return v.strictObject({ colour: words, ends: count("ends") });
});
const stripesList: v.GenericSchema<readonly StripesItem[]> = v.pipe(
  v.array(stripesItem, "a list of stripes|Write one or more, each with colour and ends."),
  v.minLength(1, "a list of one stripe or more|"),
);

/** The form of a job file: every key is required and no other is known. */
export const jobSchema: v.GenericSchema<unknown, Job> = v.strictObject({
  thrum: v.literal(1, "1, the version of this form|"),
  title: words,
  note: words,
  loom: v.strictObject({
    knotsTied: oneOf("in front of the reed", "behind the reed", "behind the heddles"),
    weaverFaces: oneOf("back of the loom", "front of the loom"),
    endOneOn: oneOf("left", "right"),
  }),
  oldWarp: v.strictObject({
    ends: count("ends"),
    reed: v.strictObject({ dents: count("dents"), in: oneOf("1 inch", "10 centimetres") }),
    endsPerDent: count("ends in each dent"),
    threading: v.pipe(
      v.array(count("shaft"), "the shafts of one threading repeat, such as [1, 2, 3, 4]|"),
      v.minLength(1, "one shaft or more|"),
    ),
    yarn: v.strictObject(yarnFields),
  }),
  newWarp: v.strictObject({
    sett: v.strictObject({ ends: count("ends"), in: oneOf("1 inch", "1 centimetre") }),
    threadingRepeat: count("ends in one threading repeat"),
    takeUp: someLoss,
    wasteInFront: anyLength,
    wasteBehind: anyLength,
  }),
  pieces: v.strictObject({
    number: count("pieces"),
    finishedLength: someLength,
    hemEachEnd: anyLength,
    loomToFinished: someLoss,
    widthReedToFinished: someLoss,
  }),
  yarns: v.record(words, v.strictObject({ ...yarnFields, onHand: anyMass, package: someMass })),
  stripes: stripesList,
  winding: v.strictObject({
    threadsTogether: count("threads"),
    tieEvery: count("ends"),
    mostEndsInChain: count("ends"),
    chainsEndAt: v.union([v.literal("stripe edges"), count("ends")], '"stripe edges", or a number of ends such as 2|'),
  }),
});
