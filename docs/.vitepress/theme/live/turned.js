// A formula asked the other way: its form, and the tools that reckon it.
import { computed, ref, shallowRef } from "vue";
import { turnedForm } from "./reckoned.js";

/** What is solved for, and the form and the tools that follow from it; `printed` holds the tools of the formula itself. */
export function useTurned(asPrinted, given, printed) {
  /** The input solved for; none where the formula stands as it is printed. */
  const solve = ref(null);
  const rounding = ref("roundDown");
  const turner = shallowRef(null);
  const form = computed(() => (solve.value === null ? asPrinted : turnedForm(asPrinted, solve.value)));
  const turn = computed(() => asPrinted.turns.find(({ field }) => field === solve.value));

  const unitAsked = (units) => {
    const { unit } = given[solve.value];
    return unit === null ? {} : { in: units[unit] };
  };
  const tools = computed(() => {
    if (solve.value === null || printed.value === null) return printed.value;
    if (turner.value === null) return null;
    const { calculation, units } = printed.value;
    const { solveFor, readers } = turner.value;
    const how = turn.value.isWhole ? { rounding: rounding.value } : unitAsked(units);
    const turned = solveFor(calculation, solve.value, asPrinted.answerField.field, how);
    return { ...printed.value, calculation: turned, readers: { ...printed.value.readers, ...readers } };
  });
  /** Fetches what turns a formula round, when one is. */
  async function loadTurner() {
    turner.value ??= await printed.value.loadSolve();
  }
  return { solve, rounding, form, turn, tools, loadTurner };
}
