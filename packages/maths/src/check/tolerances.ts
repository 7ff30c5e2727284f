// What the check takes for one number: it works in doubles. Where the handbook puts a step is told in `engine/numbers.ts`.

/** A whole number, or the edge between two answers written differently, is met from so near: no question counts ten million of anything. */
export const WHOLE = 1e-9;

/** Amounts, units or factors that differ by no more than this part of them are one: above what any sum of doubles leaves over. */
export const ALIKE = 1e-9;

/** A wrong sum nearer to the right answer than this part of it gives the right answer: nobody could tell the two apart. */
export const SAME = 1e-10;

/** What a single division leaves over, or a sum beside nothing. */
export const RESIDUE = 1e-12;
