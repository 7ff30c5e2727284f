/**
 * "812 passed, 0 failed, 31 skipped" from the files of a Vitest JSON report. A file that failed outside its tests counts
 * as one failed test, and so does a run that went wrong outside any file.
 */
export function tally(files, { ranToTheEnd }) {
  const statuses = files.flatMap((file) => {
    const own = file.assertionResults.map((test) => test.status);
    return file.status === "failed" && !own.includes("failed") ? [...own, "failed"] : own;
  });
  const passed = statuses.filter((status) => status === "passed").length;
  const failed = statuses.filter((status) => status === "failed").length;
  const skipped = statuses.length - passed - failed;
  const counts = [`${passed} passed`, `${failed === 0 && !ranToTheEnd ? 1 : failed} failed`];
  return [...counts, ...(skipped > 0 ? [`${skipped} skipped`] : [])].join(", ");
}
