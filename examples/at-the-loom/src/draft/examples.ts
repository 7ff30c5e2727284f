/** The examples by the word of each in the address, with the file it is in. */
export const EXAMPLES = {
  smallest: "1-smallest",
  napkins: "2-hall-napkins",
  "blended-towels": "3-blended-towels",
  scarves: "4-scarves",
  "crammed-stripe": "5-crammed-stripe",
  "wider-runner": "6-wider-runner",
  "warp-with-faults": "7-warp-with-faults",
  blankets: "8-blankets",
  "yarn-on-hand": "9-yarn-on-hand",
} as const;

export type Example = keyof typeof EXAMPLES;

export const isExample = (text: string): text is Example => Object.hasOwn(EXAMPLES, text);
