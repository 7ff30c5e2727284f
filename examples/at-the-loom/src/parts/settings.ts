import { shallowRef } from "vue";
import { FIRST_SETTINGS } from "../keep/records.js";
import type { Settings } from "../keep/records.js";
import { putSettings, settings as kept } from "../keep/store.js";
import { click, shake } from "../senses/clicks.js";
import { say } from "../senses/voice.js";

/** How the screens work, the same for every job. */
export const settings = shallowRef<Settings>(FIRST_SETTINGS);

function shade(): void {
  const { classList } = document.documentElement;
  classList.toggle("light", settings.value.shade === "light");
  classList.toggle("dark", settings.value.shade === "dark");
  classList.toggle("larger", settings.value.larger);
}

export async function readSettings(): Promise<void> {
  settings.value = await kept();
  shade();
}

export function set(change: Partial<Settings>): void {
  settings.value = { ...settings.value, ...change };
  shade();
  void putSettings(settings.value);
}

/** The last sentence said: the one polite live region shows it. */
export const said = shallowRef("");

/** One sentence of an act, to the eye of a reader, to the ear, and to the hand. */
export function tell(sentence: string, clicks: 0 | 1 | 2 | "undo" = 0): void {
  const { voice, every, locale, speed, clicks: isHeard } = settings.value;
  said.value = sentence;
  const isBetween = /^\d+$/u.test(sentence) && Number(sentence) % every !== 0;
  if (voice && !isBetween) say(sentence, locale, speed);
  if (clicks === 0) return;
  shake();
  if (isHeard) click(clicks);
}
