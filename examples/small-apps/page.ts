/** An element of the page by its id. */
export function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no ${id}`);
  return found;
}

/** An element made with its own fields and what stands inside. */
export function made<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  own: Partial<HTMLElementTagNameMap[K]> = {},
  ...inside: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = Object.assign(document.createElement(tag), own);
  element.append(...inside);
  return element;
}
