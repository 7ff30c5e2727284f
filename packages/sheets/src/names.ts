/** `finishedLength` as a spreadsheet writes a name: finished_length. */
export function snakeCase(name: string): string {
  return name.replace(/(?<=[a-z\d])[A-Z]/gu, (letter) => `_${letter}`).toLowerCase();
}

/** Words as they stand at the head of a sheet or a sentence. */
export function withCapital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
