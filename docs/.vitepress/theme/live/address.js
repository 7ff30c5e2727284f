// The numbers of a form as its address has them: `?finishedLength=21~inches&answer=yards`.

/** What an address asks of a form: values by field, what is wrong with them, and how the answer is wanted. */
export function readAddress(search, form) {
  const asked = new URLSearchParams(search);
  const [given, bad] = [{}, {}];
  const wanted = asked.get("solve");
  const solve = form.turns.some(({ field }) => field === wanted) ? wanted : null;
  for (const { field, what, units, symbols, words, label } of [...form.fields, form.answerField]) {
    const text = asked.get(field);
    if (text === null) continue;
    const [value, unit] = text.slice(0, 400).split("~");
    given[field] = {};
    if (what !== "word" || words.includes(value)) given[field].value = value;
    else bad[field] = `The link asks for “${value}”, which is none of ${words.join(", ")}.`;
    if (units.includes(unit)) given[field].unit = unit;
    else if (unit !== undefined)
      bad[field] = `The link gives ${label} in “${unit}”, which is no unit here: choose one, such as ${symbols[0]}.`;
  }
  return { given, bad, solve, isAsking: asked.get("ask") === "1", answer: asked.get("answer") };
}

export function addressOf({ fields }, given, { solve, answer, isAsking }) {
  const asked = new URLSearchParams();
  if (solve !== null) asked.set("solve", solve);
  for (const { field } of fields) {
    const { value, unit } = given[field];
    asked.set(field, unit === null ? value : `${value}~${unit}`);
  }
  if (answer !== null) asked.set("answer", answer);
  if (isAsking) asked.set("ask", "1");
  return `?${asked.toString()}`;
}
