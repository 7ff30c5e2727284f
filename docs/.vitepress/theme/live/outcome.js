// What the fields come to, and the last sum that came out: shown grey while a field is being mended.
import { computed, shallowRef } from "vue";
import { reckoned } from "./reckoned.js";

export function useOutcome(form, given, { tools, badUnits, solve }) {
  const outcome = computed(() => (tools.value === null ? null : reckoned(form.value, given, tools.value, badUnits)));
  const isGood = computed(() => outcome.value?.working !== undefined);
  const last = shallowRef(null);
  const shown = computed(() => {
    if (isGood.value) last.value = outcome.value;
    return last.value;
  });
  /** Where nothing has come out yet, what the page opened with stands there, and is of before too. */
  const isStale = computed(
    () => outcome.value !== null && !isGood.value && (shown.value !== null || solve.value === null),
  );
  const staleSays = computed(() =>
    isStale.value ? (outcome.value?.faults[""] ?? "The answer of before; mend the field marked.") : "",
  );
  return { outcome, isGood, last, shown, isStale, staleSays };
}
