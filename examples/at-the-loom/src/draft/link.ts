import { strFromU8, strToU8, deflateSync, Inflate } from "fflate";

/** Longest link that every browser opens, and the largest job that one is unpacked to. */
const LONGEST = 8_000;
const LARGEST = 256 * 1024;

const base64 = (bytes: Uint8Array): string => btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));

/** The job file in the part of an address after #; null where it is too long for one. */
export function linkOf(text: string): string | null {
  const packed = base64(deflateSync(strToU8(text), { level: 9 }));
  const link = `#j1.${packed.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/u, "")}`;
  return link.length > LONGEST ? null : link;
}

/** The job file of a link; null for what is none, is too long, or unpacks to more than a job can be. */
export function jobOfLink(link: string): string | null {
  const packed = link.replace(/^#?j1\./u, "");
  if (packed.length > LONGEST || !/^[\w-]+$/u.test(packed)) return null;
  try {
    const bytes = Uint8Array.from(atob(packed.replaceAll("-", "+").replaceAll("_", "/")), (one) => one.charCodeAt(0));
    const parts: Uint8Array[] = [];
    let size = 0;
    const inflate = new Inflate((part) => {
      size += part.length;
      if (size > LARGEST) throw new RangeError("larger than a job");
      parts.push(part);
    });
    // In small pieces, so that a bomb is left long before it has gone off.
    for (let at = 0; at < bytes.length; at += 64) inflate.push(bytes.subarray(at, at + 64), at + 64 >= bytes.length);
    const whole = new Uint8Array(size);
    parts.reduce((at, part) => {
      whole.set(part, at);
      return at + part.length;
    }, 0);
    return size === 0 ? null : strFromU8(whole);
  } catch {
    return null;
  }
}
