import { newRecord } from "../../draft/use-draft.js";
import { furtherOn, readFile } from "../../keep/file.js";
import type { WorkRecord } from "../../keep/records.js";
import { job, jobs, putJob, putWork, work } from "../../keep/store.js";
import { ask, planOf } from "../../reckon/client.js";
import { begun } from "../../work/act.js";

/** What a file gave: the job to open, or the shelf with all that it held. */
export type FromFile = { readonly is: "job"; readonly id: string } | { readonly is: "all"; readonly many: number };

/** All jobs of a `.thrum.json`: a job that is here and newer stays, and no newer count is replaced. */
async function allOf(text: string): Promise<FromFile | null> {
  const file = readFile(text);
  if (file === null) return null;
  const here = await jobs();
  const works = await Promise.all(here.map(({ id }) => work(id)));
  for (const one of file.jobs) {
    const own = here.find(({ id }) => id === one.id);
    if (own === undefined || own.changed < one.changed) await putJob(one);
  }
  const further = furtherOn(
    file.work,
    works.filter((one): one is WorkRecord => one !== null),
  );
  for (const one of further) await putWork(one);
  return { is: "all", many: file.jobs.length };
}

/** Progress of the law's form: it goes on at the job of its name, or of its title. */
async function progressOf(text: string, jobId: string | null): Promise<FromFile | null> {
  const progress = await ask("progressIn", text);
  if (progress === null) return null;
  const name = progress.job.replace(/\.ya?ml$/u, "");
  const own = (await jobs()).find(({ id, title, removed }) => removed === null && (id === jobId || title === name));
  if (own === undefined) return null;
  const loom = await ask("loom", own.text);
  const before = await work(own.id);
  const fresh = before ?? begun(own.id, progress.job, loom);
  await putWork({ ...fresh, seq: fresh.seq + 1, at: Date.now(), progress, past: [] });
  return { is: "job", id: own.id };
}

/** Opens files as they are chosen together: a job, its progress, or all jobs; throws what is wrong with a job file. */
export async function openFiles(files: readonly File[]): Promise<FromFile | null> {
  let opened: FromFile | null = null;
  const texts = await Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() })));
  const isProgress = (text: string): boolean => /^thrumProgress:/mu.test(text);
  for (const { name, text } of texts.filter((one) => !isProgress(one.text))) {
    const all = await allOf(text);
    if (all !== null) {
      opened = all;
      continue;
    }
    const { job: read } = await planOf(text);
    const record = newRecord(text, undefined, read.title ?? name.replace(/\.ya?ml$/u, ""));
    await putJob(record);
    opened = { is: "job", id: record.id };
  }
  for (const { text } of texts.filter((one) => isProgress(one.text)))
    opened = (await progressOf(text, opened?.is === "job" ? opened.id : null)) ?? opened;
  return opened?.is === "job" && (await job(opened.id)) === null ? null : opened;
}
