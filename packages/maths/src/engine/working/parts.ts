/** A piece of a line of a working: a number, a sign, or words. */
export interface Part {
  readonly what: "number" | "sign" | "words";
  readonly text: string;
}

const SIGNS = "+−×÷√Σ(),=≈";

/** A line of a working in its pieces, for printers that set each kind apart. */
export function partsOf(text: string): readonly Part[] {
  const parts: Part[] = [];
  let word = "";
  const end = (): void => {
    const own = word.trim();
    if (own !== "") parts.push({ what: /^\d+(?:\.\d+)?$/u.test(own) ? "number" : "words", text: own });
    word = "";
  };
  for (const piece of text.split(/([+−×÷√Σ(),=≈ ])/u)) {
    if (SIGNS.includes(piece) && piece !== "") {
      end();
      parts.push({ what: "sign", text: piece });
    } else if (piece === " ") {
      if (/^\d/u.test(word)) end();
      else word += piece;
    } else if (/^\d/u.test(piece) && word.trim() === "") word = piece;
    else word += piece;
  }
  end();
  return parts;
}
