// The pictures of the weaver's job, drawn from the plan of the example itself, so that they cannot say anything else.
import { job, letteredSvg, paints, plan, sequenceOf, stripesSvg, warp } from "./napkins.mjs";
import { cells } from "./cells-picture.mjs";
import { tieOn } from "./tie-on-picture.mjs";

const { figures } = plan;
const drawn = (draw, laid, id, title, height) =>
  draw({ sequence: laid, paints, height, id, title, description: `${laid.ends} ends, end 1 on the left` });
const figure = (inside, caption) => `<figure>${inside}<figcaption>${caption}</figcaption></figure>`;

function stripes() {
  const colours = drawn(stripesSvg, warp, "job-stripes", "The stripes in their colours", 50);
  const letters = drawn(letteredSvg, warp, "job-letters", "The same stripes in letters", 50);
  return figure(
    colours + letters,
    `The ${warp.ends} ends to scale, end 1 on the left; below, for a copy in black and white.`,
  );
}

function chains() {
  const one = ({ chain, ends, parts }) => {
    const svg = drawn(stripesSvg, sequenceOf(parts), `job-chain-${chain}`, `Chain ${chain}`, 30);
    const named = `chain ${chain}: ends ${parts[0].firstEnd} to ${parts.at(-1).lastEnd}`;
    return `<span style="flex:${ends}">${svg}${named}</span>`;
  };
  const { chains: all } = figures.winding.chains.value;
  const caption = `Chains end where a stripe does, and none holds more than ${job.winding.most.ends} ends.`;
  return figure(`<div class="chains">${all.map(one).join("")}</div>`, caption);
}

function tape() {
  const { marks } = figures.order.tape.value;
  const length = Number(marks.at(-1).to.value);
  const pieces = marks.map(({ inRun, from, to, hem }) => {
    const [start, end, turned] = [from, to, hem].map(({ value }) => Number(value));
    const hems = `<path d="M${start + turned} 2v14M${end - turned} 2v14" stroke-dasharray="1" stroke-width=".3"/>`;
    return `<rect x="${start}" y="2" width="${end - start}" height="14" fill="none" stroke-width=".5"/>${hems}<text x="${(start + end) / 2}" y="11" fill="currentColor" stroke="none">${inRun}</text>`;
  });
  const svg = `<svg viewBox="-1 0 ${length + 2} 18" role="img" aria-label="Nine pieces end to end, their hems dotted" stroke="currentColor" font-size="6" text-anchor="middle">${pieces.join("")}</svg>`;
  const caption = `${marks.length} pieces of ${(length / marks.length).toFixed(3)} in on the loom, ${length.toFixed(0)} in woven in all; the dotted lines are the folds of the hems.`;
  return figure(svg, caption);
}

/** Not to scale: only what stands before what. */
function knots() {
  const label = (x, y, text) => `<text x="${x}" y="${y}">${text}</text>`;
  const row = [0, 1, 2, 3].map((at) => `<path d="M${96 + at * 9} 22v36" stroke-width="1"/>`).join("");
  const words = [
    label(22, 84, "warp beam"),
    label(110, 14, "heddles"),
    label(164, 14, "reed"),
    label(196, 70, "knots"),
  ];
  const svg = `<svg viewBox="0 0 300 92" role="img" aria-label="From the back of the loom to the front: the old warp from its beam through the heddles and the reed, the knots in front of the reed, then the new warp over the breast beam" fill="none" stroke="currentColor" font-size="10" text-anchor="middle">
<circle cx="22" cy="62" r="10"/><path d="M30 55L44 40H190" stroke-width="2"/>${row}<path d="M164 20v40" stroke-width="3"/>
<path d="M196 40H274q10 0 10 12v30" stroke="var(--accent)" stroke-width="2"/><circle cx="193" cy="40" r="4" fill="currentColor"/><circle cx="272" cy="48" r="7"/>
<g fill="currentColor" stroke="none">${words.join("")}${label(70, 34, "old warp")}${label(234, 34, "new warp")}${label(250, 72, "breast beam")}</g></svg>`;
  return figure(svg, "Here the knots are tied in front of the reed and drawn back through reed and heddles.");
}

const pictures = { cells, stripes, chains, knots, tape, tieon: tieOn };

/** The picture of a name, as a piece of HTML. */
export function jobPicture(name) {
  const draw = pictures[name];
  if (draw === undefined) throw new Error(`no picture ${name}: there are ${Object.keys(pictures).join(", ")}`);
  return draw();
}
