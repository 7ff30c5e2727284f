/** Gives a file to the browser, which asks or keeps it among the downloads. */
export function savedFile(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  // No mark that a file system takes for something else.
  link.download = name.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, " ").slice(0, 100);
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 10_000);
}
