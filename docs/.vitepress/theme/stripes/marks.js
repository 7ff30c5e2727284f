// The marks of an order as people write it, and one stripe of it.

/** Why an order was not read, in words for its writer. */
export class Unwritten extends Error {}

export const tell = (says) => {
  throw new Unwritten(says);
};

const TOKEN = /[ \t\r]*(?:([,;\n]+)|([[(])|([\])])|(=[^,;\n]*)|([^,;\n[\](){}=]+))/gu;

/** The marks of an order: separators, brackets, a total, and words between them. */
export function tokensOf(text) {
  const kinds = ["comma", "open", "close", "total", "words"];
  const tokens = [];
  // A break of the line parts stripes as a comma does.
  for (const [, ...parts] of text.replace(/[ \t]+/gu, " ").matchAll(TOKEN)) {
    const at = parts.findIndex((part) => part !== undefined);
    const said = parts[at].trim();
    if (said === "" && kinds[at] !== "comma") continue;
    tokens.push({ kind: kinds[at], said });
  }
  return tokens;
}

const IN_NAME = /\b(?:times|repeats?|repeated|mirror(?:ed)?|x)\b|[×*]/iu;

/** One stripe: a number and a colour, in either order; two colours wound together are joined by +. */
export function stripeOf(said) {
  const [, before, behind] = /^(?:(?:end|then) )?(\d{1,5}) ?(\D.*)$/iu.exec(said) ?? [];
  const [, ahead, after] = /^(\D*?) ?(\d{1,5})$/u.exec(said) ?? [];
  const ends = Number(before ?? after);
  const name = (behind ?? ahead ?? "").trim().replace(/^ends?(?: of)? /iu, "");
  if (name === "" && after !== undefined) tell(`${after} of which colour? Write ${after} natural.`);
  if (name === "") tell(`How many ends of “${said}”? Write a number and a colour, such as 24 natural.`);
  const digits = /\d+/u.exec(name)?.[0];
  if (digits !== undefined) tell(`“${said}”: is a comma missing before ${digits}?`);
  if (IN_NAME.test(name)) {
    tell(`“${said}”: put what is repeated in brackets, such as [12 madder, 6 natural] 3 times.`);
  }
  if (ends === 0) tell(`“${said}”: a stripe has one end or more.`);
  const yarns = name.split("+").map((one) => one.trim());
  if (yarns.includes("")) tell(`“${said}”: write both colours, such as 16 plum + pink.`);
  if (ends % yarns.length !== 0) {
    tell(
      `“${said}”: ${ends} ends are no whole number of ${yarns.join(" + ")}. Write ${ends - (ends % yarns.length)} or ${ends + yarns.length - (ends % yarns.length)}.`,
    );
  }
  return { ends, yarns };
}
