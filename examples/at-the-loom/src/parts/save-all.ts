import { fileOf } from "../keep/file.js";
import type { WorkRecord } from "../keep/records.js";
import { jobs, work } from "../keep/store.js";

/** All jobs with their work, as one file to keep elsewhere. */
export async function saveAll(): Promise<void> {
  const all = await jobs();
  const works = await Promise.all(all.map(({ id }) => work(id)));
  const text = fileOf(
    all,
    works.filter((one): one is WorkRecord => one !== null),
  );
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = "warps.thrum.json";
  link.click();
  URL.revokeObjectURL(link.href);
}
