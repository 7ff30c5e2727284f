// Measures of a loom, kept by the browser as JSON and made quantities again when the page is next opened.
import { asText, attempt, grams, massFrom, moneyFrom, ounces, sum } from "@thrum/maths";
import type { Mass, Money } from "@thrum/maths";
import { revive } from "@thrum/maths/catalogue";
import { made, part } from "../page.js";

interface Cone {
  readonly name: string;
  readonly mass: Mass;
  readonly price: Money;
}

const KEY = "cones";
const locale = navigator.language;
const field = (id: string): HTMLInputElement => part(id) as HTMLInputElement;

/** What was kept: nothing where it is no JSON of ours. */
function kept(): readonly Cone[] {
  const read = attempt(JSON.parse, localStorage.getItem(KEY) ?? "[]", revive);
  return read.ok ? (read.value as readonly Cone[]) : [];
}

function show(): void {
  const cones = kept();
  const [first, ...others] = cones;
  part("cones").replaceChildren(
    ...cones.map(({ name, mass, price }) =>
      made("li", {}, `${name}: ${asText(mass)} at ${asText(price, { decimals: 2, locale })}`),
    ),
  );
  const all = first === undefined ? null : others.reduce((mass, cone) => sum(mass, cone.mass), first.mass);
  part("all").textContent = all === null ? "nothing yet" : asText(all, { unit: grams, decimals: 1, locale });
}

function add(): void {
  const mass = attempt(massFrom, field("mass").value, [grams, ounces], { locale });
  const price = attempt(moneyFrom, field("price").value, { locale });
  part("wrong").textContent = [mass, price].flatMap((read) => (read.ok ? [] : [read.faults[0].remedy])).join(" ");
  if (!mass.ok || !price.ok) return;
  const cones = [...kept(), { name: field("name").value, mass: mass.value, price: price.value }];
  localStorage.setItem(KEY, JSON.stringify(cones));
  show();
}

part("add").onclick = add;
show();
