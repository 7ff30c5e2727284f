/** The closed lists of words of a job, by the key they stand behind: what a picker offers. */
export const jobWords = {
  "stripes.middle": ["once", "twice"],
  "loom.endOneOn": ["left", "right"],
  "loom.heddleEye.of": ["metal", "cord"],
  "oldWarp.faults.is": ["broken", "one too many", "left out", "empty heddle", "on another shaft", "in another dent"],
  "join.knots": ["in front of the reed", "behind the reed", "behind the heddles"],
  "join.knot": ["overhand of both ends", "overhand of one end", "square", "weaver's"],
  "join.faces": ["back of the loom", "front of the loom"],
  "join.sides.where": ["both", "before end 1", "after the last"],
  "join.partner": ["hang a thrum", "thread it itself"],
  "join.order": ["from end 1", "from the last end", "one colour at a time"],
  "winding.chains": ["by stripe", "by group", "by colour"],
  "pieces.number": ["as many as the warp gives", "as many as the yarn gives"],
  "weft.lengths": ["finished", "at the loom"],
} as const;
