/** A list over and over; `"the rest"` fills the room that the others leave. */
export interface Repeated<Run> {
  readonly repeat: number | "the rest";
  readonly of: Runs<Run>;
}

/** A list and its way back; the last run of it stands once or twice in the middle. */
export interface Mirrored<Run> {
  readonly mirror: Runs<Run>;
  readonly middle: "once" | "twice";
}

/** Runs as they were written, number first, as the trade writes them. */
export type Runs<Run> = readonly (Run | Repeated<Run> | Mirrored<Run>)[];

/** The threads held in the hand at once. A hand of several is taken as the lease gives it, or strictly in turn. */
export interface Hand {
  /** As often as each is held: plum, plum, pink. */
  readonly yarns: readonly string[];
  readonly order?: "strictly in turn";
}

export type AnyRun<Run> = Runs<Run>[number];

export function isRepeated<Run>(run: AnyRun<Run>): run is Repeated<Run> {
  return typeof run === "object" && run !== null && "repeat" in run;
}

export function isMirrored<Run>(run: AnyRun<Run>): run is Mirrored<Run> {
  return typeof run === "object" && run !== null && "mirror" in run;
}
