// A form for any formula, made from the catalogue alone.
import { asHtml, attempt, currency, decimalTextFrom, explain, numberFrom } from "@thrum/maths";
import { formulaEntries, inputEntries, loadFormula, unitsOf } from "@thrum/maths/catalogue";
import type { InputEntry, UnitEntry } from "@thrum/maths/catalogue";
import { made, part } from "../page.js";

const locale = navigator.language;
const MONEY = ["EUR", "GBP", "USD"].map((code) => ({ label: code, unit: currency(code) }));

type Choice = Pick<UnitEntry, "label" | "unit">;

interface Field {
  readonly key: string;
  readonly read: () => unknown;
  readonly row: HTMLElement;
  readonly wrong: HTMLElement;
}

function fieldOf({ key, label, meaning, kinds, what, words, isList }: InputEntry): Field {
  const units = kinds.flatMap((kind): readonly Choice[] => (kind === "money" ? MONEY : unitsOf(kind)));
  const options = units.map((unit) => made("option", {}, unit.label));
  const picker = made("select", { name: `${key}-unit`, ariaLabel: `unit of ${label}` }, ...options);
  const choices = words.map((word) => made("option", {}, word));
  const typed = what === "word" ? made("select", { name: key }, ...choices) : made("input", { name: key });
  const one = (text: string): unknown => {
    if (what === "word") return text;
    if (what !== "quantity") return numberFrom(text, { locale });
    return units[picker.selectedIndex]?.unit(decimalTextFrom(text, { locale }));
  };
  const several = (): unknown => (isList ? typed.value.split(";").map(one) : one(typed.value));
  const read = (): unknown => (what === "unit" ? units[picker.selectedIndex]?.unit : several());
  const wrong = made("span", { className: "wrong" });
  const parts = [...(what === "unit" ? [] : [typed]), ...(units.length > 0 ? [picker] : []), wrong];
  return { key, read, wrong, row: made("label", { title: meaning }, `${label} `, ...parts) };
}

async function show(name: string): Promise<void> {
  const formula = await loadFormula(name);
  const fields = inputEntries(formula).map(fieldOf);
  const answer = (): void => {
    const reads = fields.map(({ key, read }) => [key, attempt(read)] as const);
    const input = Object.fromEntries(reads.flatMap(([key, read]) => (read.ok ? [[key, read.value]] : [])));
    const working = attempt(explain, formula, input);
    part("answer").innerHTML = working.ok ? asHtml(working.value) : "";
    const typed = reads.flatMap(([key, read]) => (read.ok ? [] : [{ ...read.faults[0], path: [key] }]));
    const faults = [...typed, ...(working.ok ? [] : working.faults)];
    const saids = faults.map(({ path, expected, remedy }) => [path[0], `Here stands ${expected}. ${remedy}`] as const);
    const said = (at?: string): string => saids.find(([field]) => field === at)?.[1] ?? "";
    for (const { key, wrong } of fields) wrong.textContent = said(key);
    part("apart").textContent = said();
  };
  part("fields").replaceChildren(...fields.map(({ row }) => row));
  part("fields").oninput = answer;
  answer();
}

const formulas = formulaEntries.filter(({ what }) => what === "calculation");
part("formula").append(...formulas.map(({ name, title }) => made("option", { value: name }, title)));
part("formula").onchange = () => void show((part("formula") as HTMLSelectElement).value);
void show("warpLength");
