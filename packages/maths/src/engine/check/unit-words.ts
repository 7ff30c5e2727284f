/** How a unit may be written, in lower case. */
export function isCalled(text: string, symbol: string, name: string): boolean {
  const said = text.replace(/\.$/u, "").toLowerCase();
  const words = name.replace(/([a-z])([A-Z])/gu, "$1 $2").toLowerCase();
  const marks: Readonly<Record<string, readonly string[]>> = {
    in: ['"', "″", "inch", "inches"],
    ft: ["'", "′", "foot", "feet"],
  };
  const more: Readonly<Record<string, string>> = {
    yd: "yard",
    cm: "centimetre",
    m: "metre",
    oz: "ounce",
    lb: "pound",
    g: "gram",
    kg: "kilogram",
  };
  const word = more[symbol] ?? "";
  return (
    said === symbol.toLowerCase() ||
    said === words ||
    said === words.replace(/s$/u, "") ||
    marks[symbol]?.includes(said) === true ||
    (word !== "" && (said === word || said === `${word}s` || said === `${symbol}s`))
  );
}
