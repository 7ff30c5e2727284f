/** What is asked of a touch before it counts. */
const MOST_MOVED = 12;
/** A forearm is wider than a finger. */
const WIDEST = 40;

/** Lets one tap through in so many milliseconds. */
export function gate(gap: () => number, now: () => number = () => performance.now()): () => boolean {
  let last = -Infinity;
  return () => {
    if (now() - last < gap()) return false;
    last = now();
    return true;
  };
}

/** Taps anywhere on the stage: one finger that hardly moves. Gives back how to stop listening. */
export function listenToTaps(stage: HTMLElement, onTap: () => void): () => void {
  let down: { readonly id: number; readonly x: number; readonly y: number } | null = null;
  let fingers = 0;
  const begin = (event: PointerEvent): void => {
    fingers += 1;
    const isWide = Math.max(event.width, event.height) > WIDEST;
    const isOwn =
      event.target instanceof Element && event.target.closest("button, a, input, select, textarea, summary");
    down =
      fingers > 1 || isWide || isOwn !== null || event.button !== 0
        ? null
        : { id: event.pointerId, x: event.clientX, y: event.clientY };
  };
  const end = (event: PointerEvent): void => {
    fingers = Math.max(0, fingers - 1);
    const from = down;
    down = null;
    if (from?.id !== event.pointerId) return;
    const isWide = Math.max(event.width, event.height) > WIDEST;
    if (isWide || Math.hypot(event.clientX - from.x, event.clientY - from.y) > MOST_MOVED) return;
    if (getSelection()?.isCollapsed === false) return;
    onTap();
  };
  const cancel = (): void => {
    fingers = Math.max(0, fingers - 1);
    down = null;
  };
  stage.addEventListener("pointerdown", begin);
  addEventListener("pointerup", end);
  addEventListener("pointercancel", cancel);
  return () => {
    stage.removeEventListener("pointerdown", begin);
    removeEventListener("pointerup", end);
    removeEventListener("pointercancel", cancel);
  };
}
