import * as v from "valibot";
import { costsSchema, fibresSchema, firstInchesSchema, foundSchema, picksSchema } from "./after-weaving.js";
import { any, some } from "./amounts.js";
import type { AmountSchemas } from "./amounts.js";
import { coloursSeenSchema, extraEndsSchema } from "./beside-the-warp.js";
import type { Job, StripesItem } from "./job.js";
import { count, counted, oneOf, shaft, words, yarnName, yarnNumber } from "./values.js";

/** More than a hand loom holds: a count beyond it is a slip. */
export const MOST_ENDS = 20_000;

const yarnFields = {
  count: yarnNumber,
  system: oneOf("tex", "denier", "cotton", "worsted", "linen", "metric"),
  plies: count("plies", 100),
  counted: oneOf("single", "finished thread"),
};

const threading = v.pipe(
  v.array(shaft, "the shafts of one threading repeat, such as [1, 2, 3, 4]|"),
  v.minLength(1, "one shaft or more|"),
  v.maxLength(MOST_ENDS, "no more shafts than a loom has ends|"),
);

const heddles = v.pipe(
  v.array(counted("heddles", MOST_ENDS), "spare heddles on each shaft, from shaft 1, such as [3, 3, 2, 3]|"),
  v.minLength(1, "one number or more|"),
  v.maxLength(100, "no more shafts than a loom has|"),
);

const stripesItem: v.GenericSchema<unknown, StripesItem> = v.lazy((given) => {
  const keys = typeof given === "object" && given !== null ? given : {};
  if ("repeat" in keys || "of" in keys) return v.object({ repeat: count("times", MOST_ENDS), of: stripesSchema });
  if ("mirror" in keys || "middleStripe" in keys) {
    return v.object({ mirror: stripesSchema, middleStripe: oneOf("once", "twice") });
  }
  return v.object({ colour: yarnName, ends: count("ends", MOST_ENDS) });
});

/** The stripes alone, so that they are looked into even where another part of the job is wrong. */
export const stripesSchema: v.GenericSchema<unknown, readonly StripesItem[]> = v.pipe(
  v.array(stripesItem, "a list of stripes|Write one or more, each with colour and ends."),
  v.minLength(1, "a list of one stripe or more|"),
);

export const loomSchema: v.GenericSchema<unknown, Job["loom"]> = v.object({
  knotsTied: oneOf("in front of the reed", "behind the reed", "behind the heddles"),
  weaverFaces: oneOf("back of the loom", "front of the loom"),
  endOneOn: oneOf("left", "right"),
  knot: oneOf("overhand, two strands together", "overhand, one strand", "square", "weaver's"),
});

export const windingSchema: v.GenericSchema<unknown, Job["winding"]> = v.object({
  threadsTogether: count("threads", 100),
  tieEvery: count("ends", MOST_ENDS),
  mostEndsInChain: count("ends", MOST_ENDS),
  chainsEndAt: v.union(
    [v.literal("stripe edges"), count("ends", MOST_ENDS)],
    '"stripe edges", or a whole number of ends such as 2|',
  ),
});

/** The form of a job: no other key is known, and every one but the parts that come after the weaving is required. */
export function jobSchema(amounts: AmountSchemas): v.GenericSchema<unknown, Job> {
  const { length, mass, loss } = amounts;
  return v.object({
    thrum: v.literal(1, "1, the version of this form|"),
    title: words,
    note: words,
    loom: loomSchema,
    oldWarp: v.object({
      ends: count("ends", MOST_ENDS),
      reed: v.object({ dents: count("dents", 1000), in: oneOf("1 inch", "10 centimetres") }),
      endsPerDent: count("ends in each dent", 100),
      threading,
      yarn: v.object(yarnFields),
      gapInDent: v.union(
        [v.literal("not measured"), some(length, "length")],
        'the free gap between two wires, such as 1.5 mm, or "not measured"|',
      ),
      emptyDents: v.object({ beforeFirst: counted("dents", MOST_ENDS), afterLast: counted("dents", MOST_ENDS) }),
      spareHeddles: v.object({ beforeFirst: heddles, afterLast: heddles }),
    }),
    newWarp: v.object({
      sett: v.object({ ends: count("ends", 1000), in: oneOf("1 inch", "1 centimetre") }),
      threading,
      takeUp: loss,
      wasteInFront: any(length, "length"),
      wasteBehind: any(length, "length"),
    }),
    pieces: v.object({
      number: count("pieces", 10_000),
      finishedLength: some(length, "length"),
      hemEachEnd: any(length, "length"),
      loomToFinished: loss,
      widthReedToFinished: loss,
    }),
    weft: v.object({
      yarn: yarnName,
      picksAtLoom: picksSchema,
    }),
    yarns: v.record(
      yarnName,
      v.object({ ...yarnFields, onHand: any(mass, "mass"), package: some(mass, "mass") }),
      "the yarns by name|",
    ),
    stripes: stripesSchema,
    winding: windingSchema,
    extraEnds: v.exactOptional(extraEndsSchema),
    coloursSeen: v.exactOptional(coloursSeenSchema),
    firstInches: v.exactOptional(firstInchesSchema(amounts)),
    warpLeft: v.exactOptional(any(length, "length")),
    found: v.exactOptional(foundSchema(amounts)),
    costs: v.exactOptional(costsSchema(amounts)),
    fibres: v.exactOptional(fibresSchema(amounts)),
  });
}
