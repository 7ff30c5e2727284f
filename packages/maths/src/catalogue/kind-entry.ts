import {
  Density,
  DentsPerLength,
  DiametersPerLength,
  DirectCount,
  EndsPerLength,
  HeddlesPerLength,
  IndirectCount,
  Length,
  Mass,
  MassPerArea,
  Money,
  PicksPerLength,
  VolumePerMass,
} from "../units/index.js";
import { systems } from "../units/reading/count-names.js";
import type { CountSystem } from "../units/reading/count-names.js";

/** A kind of quantity. */
export interface KindEntry {
  readonly kind: string;
  /** As a sentence wants it: "a sett". */
  readonly noun: string;
  /** As one writes it in a program: "endsPerInch(16)". */
  readonly example: string;
  /** Whether `unitsOf` lists its units; those of money are made by `currency`, of any name, and none is listed. */
  readonly units: "listed" | "of any name";
}

const PERCENTAGES: readonly Omit<KindEntry, "units">[] = [
  { kind: "loss", noun: "a percentage lost", example: "percentLost(10)" },
  { kind: "addition", noun: "a percentage added", example: "percentAdded(6)" },
  { kind: "share", noun: "a percentage of a whole", example: "percentOf(80)" },
];

/** Every kind of quantity there is. */
export function kindEntries(): readonly KindEntry[] {
  const kinds = [
    Length,
    Mass,
    DirectCount,
    IndirectCount,
    EndsPerLength,
    PicksPerLength,
    DentsPerLength,
    HeddlesPerLength,
    DiametersPerLength,
    MassPerArea,
    Density,
    VolumePerMass,
    Money,
  ];
  const ofKinds = kinds.map(({ dimension, noun, example }) => ({ kind: dimension, noun, example }));
  return [...ofKinds, ...PERCENTAGES].map((entry) => ({
    ...entry,
    units: entry.kind === Money.dimension ? "of any name" : "listed",
  }));
}

/** Every system that numbers yarn, direct and indirect. */
export function countSystems(): readonly CountSystem[] {
  return systems();
}
