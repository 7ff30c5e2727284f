const ON: readonly string[] = ["ArrowRight", "ArrowDown", "PageDown"];
const BACK: readonly string[] = ["ArrowLeft", "ArrowUp", "PageUp", "Backspace"];
const PRESS: readonly string[] = [" ", "Enter"];

/** What a key asks for at the loom; nothing while something is written, or held down. */
function keyAsks(event: KeyboardEvent): "on" | "back" | null {
  if (event.repeat || event.ctrlKey || event.metaKey || event.altKey) return null;
  const target = event.target instanceof Element ? event.target : null;
  if (target?.closest("input, select, textarea, dialog") ?? document.querySelector("dialog[open]")) return null;
  if (ON.includes(event.key)) return "on";
  if (BACK.includes(event.key)) return "back";
  return PRESS.includes(event.key) && (target?.closest("button, a, summary") ?? null) === null ? "on" : null;
}

/** Keys, and foot pedals that act as keyboards. Gives back how to stop listening. */
export function listenToKeys(onKey: (asks: "on" | "back") => void): () => void {
  const listen = (event: KeyboardEvent): void => {
    const asks = keyAsks(event);
    if (asks === null) return;
    event.preventDefault();
    onKey(asks);
  };
  addEventListener("keydown", listen);
  return () => {
    removeEventListener("keydown", listen);
  };
}
