import type { FaultPath } from "./fault.js";
import type { Form } from "./form.js";
import { jobForm } from "./job.js";

function inner({ shape }: Form<unknown>, step: string | number): Form<unknown> | undefined {
  if (shape.kind === "list" || shape.kind === "byName") return shape.of;
  const keys = shape.kind === "group" ? shape.keys : shape.kind === "shapes" ? shape.ways : {};
  return Object.hasOwn(keys, step) ? keys[String(step)] : undefined;
}

/** A place of the job as it is written: the shape of a value, and what lies within one text, are no steps of it. */
export function writtenPath(path: FaultPath): FaultPath {
  const written: (string | number)[] = [];
  let form: Form<unknown> = jobForm;
  for (const step of path) {
    const next = inner(form, step);
    if (next === undefined) break;
    if (form.shape.kind !== "shapes") written.push(step);
    form = next;
  }
  return written;
}
