import { shallowRef } from "vue";

/** Whether the screen may go dark although a task is open. */
export const mayGoDark = shallowRef(false);

/** Keeps the screen awake until told to stop. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | null = null;
  let isOver = false;
  const ask = async (): Promise<void> => {
    if (isOver || document.visibilityState !== "visible") return;
    try {
      lock = await navigator.wakeLock.request("screen");
      mayGoDark.value = false;
      if (isOver as boolean) await lock.release();
    } catch {
      mayGoDark.value = true;
    }
  };
  const again = (): void => {
    void ask();
  };
  document.addEventListener("visibilitychange", again);
  void ask();
  return () => {
    isOver = true;
    document.removeEventListener("visibilitychange", again);
    void lock?.release();
  };
}
