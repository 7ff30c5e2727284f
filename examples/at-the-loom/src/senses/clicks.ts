const TONES = { count: 880, undo: 220 } as const;
const LONG = 0.06;
let context: AudioContext | null = null;

function tone(hertz: number, at: number, audio: AudioContext): void {
  const oscillator = audio.createOscillator();
  const gain = audio.createGain();
  oscillator.frequency.value = hertz;
  gain.gain.setValueAtTime(0.2, at);
  gain.gain.exponentialRampToValueAtTime(0.001, at + LONG);
  oscillator.connect(gain).connect(audio.destination);
  oscillator.start(at);
  oscillator.stop(at + LONG);
}

/** One tone a count, two at the end of a stripe, a low one for undo. */
export function click(what: 1 | 2 | "undo"): void {
  if (!("AudioContext" in globalThis)) return;
  context ??= new AudioContext();
  void context.resume();
  if (what === "undo") {
    tone(TONES.undo, context.currentTime, context);
    return;
  }
  for (let one = 0; one < what; one += 1) tone(TONES.count, context.currentTime + one * LONG * 2, context);
}

/** A short shake of the device, where it can and motion is not unwelcome. */
export function shake(): void {
  if (!("vibrate" in navigator) || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  navigator.vibrate(15);
}
