// Stripes as they are typed: the picture, the ends of each yarn, and the same stripes on as many ends as a width takes.
import { attempt, centimetres, endsForWidth, faultText, inches, lengthFrom, settFrom } from "@thrum/maths";
import { endsPerColour, scale, sequenceFromList, stripesSvg, writtenList } from "@thrum/stripes";
import type { Sequence } from "@thrum/stripes";
import { made, part } from "../page.js";

const FILLS = ["#e8dcc0", "#b5432e", "#2b4c7e", "#d9a441", "#7fa36b", "#5b3a29"];
const field = (id: string): HTMLInputElement => part(id) as HTMLInputElement;
const say = (id: string, text = ""): void => void (part(id).textContent = text);

/** What each yarn is painted with, in the order in which the yarns come. */
function draw(sequence: Sequence<string>): void {
  const totals = endsPerColour(sequence);
  const paints = new Map(
    totals.map(({ colour: name }, at) => [
      name,
      { fill: FILLS[at % FILLS.length] ?? "", letter: String(at + 1), name },
    ]),
  );
  const words = { id: "warp", title: "The stripes", description: "End 1 on the left" };
  const svg = attempt(stripesSvg, { sequence, paints, height: 40, ...words });
  if (svg.ok) part("picture").innerHTML = svg.value;
  part("totals").replaceChildren(...totals.map(({ colour: name, ends }) => made("li", {}, `${name}: ${String(ends)}`)));
}

/** The stripes in the ends that the width takes, in whole dents of two. */
function fitted(sequence: Sequence<string>): string {
  const locale = navigator.language;
  const width = attempt(lengthFrom, field("width").value, [inches, centimetres], { locale });
  const sett = attempt(settFrom, field("sett").value, { locale });
  say("width-wrong", width.ok ? "" : width.faults[0].remedy);
  say("sett-wrong", sett.ok ? "" : sett.faults[0].remedy);
  if (!width.ok || !sett.ok) return "";
  const plain = { widthInReed: width.value, sett: sett.value, threadingRepeat: 2, balanceEnds: 0 };
  const ends = attempt(endsForWidth, plain);
  if (!ends.ok) return ends.faults.map(faultText).join(" ");
  const fit = attempt(() => scale({ sequence, ends: ends.value, step: 2, smallest: 2 }));
  if (!fit.ok) return fit.faults.map(faultText).join(" ");
  const legend = Object.fromEntries(endsPerColour(sequence).map(({ colour: name }) => [name, name]));
  return writtenList({ sequence: fit.value.sequence, legend, repeats: "in brackets" });
}

function show(): void {
  const read = attempt(() => sequenceFromList({ text: field("list").value }));
  const [fault] = read.ok ? [] : read.faults;
  say("list-wrong", fault === undefined ? "" : `${fault.expected}, received ${fault.received}`);
  if (fault?.position !== undefined) field("list").setSelectionRange(fault.position - 1, fault.position);
  if (!read.ok) return;
  const { sequence } = read.value;
  draw(sequence);
  say("total", `${String(sequence.ends)} ends`);
  say("fitted", fitted(sequence));
}

document.addEventListener("input", show);
show();
