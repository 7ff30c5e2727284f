// The UCUM library that others keep, to hold our units against. It comes without types: what we use of it is said here.
import { realpathSync } from "node:fs";
import { createRequire } from "node:module";

interface Ucum {
  readonly UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(
        from: string,
        amount: number,
        to: string,
      ): { readonly status: string; readonly toVal: number | null };
    };
  };
}

// What it stands on lies beside its own folder, so it is loaded from there and not by the link to it.
const require = createRequire(import.meta.url);
const { UcumLhcUtils } = require(realpathSync.native(require.resolve("@lhncbc/ucum-lhc"))) as Ucum;
const ucum = UcumLhcUtils.getInstance();

/** How many of `base` one of `code` is, in UCUM's own codes. */
export function ucumFactor(code: string, base: string): number {
  const { status, toVal } = ucum.convertUnitTo(code, 1, base);
  if (status !== "succeeded" || toVal === null) throw new RangeError(`UCUM does not turn ${code} into ${base}`);
  return toVal;
}
