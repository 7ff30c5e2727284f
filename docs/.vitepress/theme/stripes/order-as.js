// An order that has been read, as runs of colours, as a job file, and in an address.
import { sequence as sequenceFrom } from "@thrum/stripes";
import { Unwritten } from "./marks.js";
import { MOST_CHARACTERS, readOrder } from "./read-order.js";

/**
 * Every stripe in its place, blends end by end.
 *
 * @param {readonly object[]} list
 * @returns {{ colour: string, ends: number }[]}
 */
export function runsOf(list) {
  return list.flatMap((one) => {
    if (one.of !== undefined) return Array.from({ length: one.repeat }, () => runsOf(one.of)).flat();
    if (one.mirror !== undefined) {
      const there = one.mirror.map((part) => runsOf([part]));
      const back = there.map((runs) => runs.toReversed()).toReversed();
      return [...there.flat(), ...(one.middle === "once" ? back.slice(1) : back).flat()];
    }
    if (one.yarns.length === 1) return [{ colour: one.yarns[0], ends: one.ends }];
    return Array.from({ length: one.ends }, (_, end) => ({ colour: one.yarns[end % one.yarns.length], ends: 1 }));
  });
}

/** An order as it is written, with its colours in the order they appear; or what is wrong with it, in words. */
export function writtenOrder(text) {
  try {
    const { list, total, printed } = readOrder(text);
    const runs = runsOf(list);
    const names = [...new Set(runs.map(({ colour }) => colour))];
    return { list, total, printed, sequence: sequenceFrom(runs), names, fault: "" };
  } catch (error) {
    if (error instanceof Unwritten) return { fault: error.message };
    if (error.name === "StripeError") return { fault: error.faults.map(({ remedy }) => remedy).join(" ") };
    throw error;
  }
}

/**
 * The order as a job file writes it.
 *
 * @param {readonly object[]} list
 * @returns {string}
 */
export function asJob(list) {
  const flow = (one) => {
    if (one.of !== undefined) return `{ repeat: ${one.repeat}, of: [${one.of.map(flow).join(", ")}] }`;
    if (one.mirror !== undefined) return `{ mirror: [${one.mirror.map(flow).join(", ")}], middle: ${one.middle} }`;
    return `${one.ends} ${one.yarns.join(" + ")}`;
  };
  return `stripes:\n${list.map((one) => `  - ${flow(one)}\n`).join("")}`;
}

/** The order a link asks for; null where it asks for none. */
export function orderIn(query) {
  return new URLSearchParams(query).get("order")?.slice(0, MOST_CHARACTERS + 1) ?? null;
}

/** A job file as the part of an address that the app reads: deflated, in letters that an address may hold. */
export async function linkOf(job) {
  const packed = new Blob([job]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(packed).arrayBuffer());
  const letters = btoa(String.fromCharCode(...bytes));
  return `#j1.${letters.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/u, "")}`;
}
