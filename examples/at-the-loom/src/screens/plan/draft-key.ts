import type { WrittenValue } from "@thrum/plan";
import type { InjectionKey } from "vue";
import type { Change } from "../../draft/draft.js";
import type { Yarn } from "../../parts/yarn.js";

/** What the rows of the plan see of the job. */
export interface DraftOnScreen {
  /** As it is typed, read or not yet. */
  typedAt(path: string): string;
  faultAt(path: string): string | null;
  valueAt(path: string): WrittenValue | null;
  yarns(): readonly Yarn[];
  answer(...changes: readonly Change[]): Promise<void>;
}

export const DRAFT: InjectionKey<DraftOnScreen> = Symbol("draft");
