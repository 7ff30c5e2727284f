// What the rules of the trade give as the closest sett of one yarn in one weave, side by side.
import { asText, comparedSetts, cottonCount, endsPerInch, explain, percentAdded, twill } from "@thrum/maths";

// 8/2 cotton is 4s as it stands.
const input = {
  weave: twill({ floats: [2, 2] }),
  count: cottonCount(4),
  material: "cotton",
  wrapsPerInch: "not wrapped",
};
const { setts, silent, spread } = comparedSetts(input);
const perInch = ({ sett }) => sett.in(endsPerInch).toFixed(1);

console.log("8/2 cotton in 2/2 twill, ends per inch at the closest\n");
for (const one of setts) {
  console.log(`${perInch(one).padStart(6)}  ${one.rule} (${one.status}: ${one.source.author}, ${one.source.title})`);
}
for (const { rule, why } of silent) console.log(`     —  ${rule}: ${why}`);
console.log(`\nThe closest is ${spread.in(percentAdded).toFixed(1)} % over the most open. The working of the first:\n`);
for (const { calculation, input: numbers } of setts[0].steps) console.log(`${asText(explain(calculation, numbers))}\n`);
