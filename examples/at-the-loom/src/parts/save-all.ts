import { fileOf } from "../keep/file.js";
import type { WorkRecord } from "../keep/records.js";
import { jobs, putJob, work } from "../keep/store.js";
import { savedFile } from "../screens/save-file.js";

/** All jobs with their work, as one file to keep elsewhere. */
export async function saveAll(): Promise<void> {
  const now = Date.now();
  const all = (await jobs()).map((one) => ({ ...one, saved: now }));
  const works = await Promise.all(all.map(({ id }) => work(id)));
  const text = fileOf(
    all,
    works.filter((one): one is WorkRecord => one !== null),
  );
  savedFile("warps.thrum.json", text, "application/json");
  await Promise.all(all.map((one) => putJob(one)));
}
