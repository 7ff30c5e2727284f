// Prints the sheet of a seed, then its key: node sheet.mjs 7
import { asText } from "@thrum/maths";
import { jobOf } from "./problems.mjs";

const { sums, sheet, key } = jobOf(Number(process.argv[2] ?? 1));
const workings = sums.map(({ key: own }, at) => `Sum ${at + 1}\n${asText(own.working)}`);
process.stdout.write(`${asText(sheet)}\n\nKey\n\n${asText(key)}\n\n${workings.join("\n\n")}\n`);
