import type { FaultPath } from "./fault.js";
import type { Form } from "./form.js";
import { jobForm } from "./job.js";

/** The step as it is written, and the form that stands behind it; null where nothing more is written. */
function stepInto({ shape }: Form<unknown>, step: string | number): readonly [FaultPath, Form<unknown>] | null {
  switch (shape.kind) {
    case "group": {
      const form = shape.keys[step];
      return form === undefined ? null : [[step], form];
    }
    case "shapes": {
      const form = shape.ways[step];
      return form === undefined ? null : [[], form];
    }
    case "list":
      return typeof step === "number" ? [[step], shape.of] : null;
    case "byName":
      return [[step], shape.of];
    case "either":
      return shape.ways.reduce<ReturnType<typeof stepInto>>((found, way) => found ?? stepInto(way, step), null);
    case "text":
    case "words":
    case "word":
    case "number":
    case "runs":
      return null;
  }
}

/**
 * A place of a job as one writes it: what stands in one text is named by the key of that text, so `loom.sley`, never
 * `loom.sley.places`.
 */
export function writtenPath(path: FaultPath): FaultPath {
  let form: Form<unknown> = jobForm;
  const written: (string | number)[] = [];
  for (const step of path) {
    const next = stepInto(form, step);
    if (next === null) break;
    written.push(...next[0]);
    form = next[1];
  }
  return written;
}
