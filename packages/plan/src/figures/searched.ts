import type { Figure } from "../core/source.js";
import { worked } from "../core/worked.js";

/** The number that the yarn on hand allows: a way of a choice, and so none of the groups, or every plan would search it. */
export const ofYarn: Figure<number, "piece"> = worked("piece").searched("pieces the yarn gives");
