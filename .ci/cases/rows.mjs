// What the scripts over the cited cases share.

/** A published case was read in its source and has a printed answer there. */
export const isPublished = ({ status, prints }) => status === "read" && prints !== "";

/** In how many digits a row's value agrees with the exact one, at most 15. */
export function digitsAgreeing({ value, exact }) {
  const found = /^(-?\d+(?:\.\d+)?)(?:\/(\d+))?$/u.exec(exact);
  if (found === null) return value === exact ? 15 : 0;
  const wanted = Number(found[1]) / Number(found[2] ?? 1);
  const off = Math.abs(Number(value) - wanted) / Math.max(Math.abs(wanted), Number.MIN_VALUE);
  return off === 0 ? 15 : Math.min(15, Math.max(0, Math.floor(-Math.log10(off))));
}
