type Speech = Pick<SpeechSynthesis, "getVoices" | "cancel" | "speak" | "addEventListener">;

const speech = (): Speech | null => ("speechSynthesis" in globalThis ? globalThis.speechSynthesis : null);

/** A voice of the device itself: nothing of hers goes through a network. */
function localVoice(locale: string): SpeechSynthesisVoice | null {
  const local =
    speech()
      ?.getVoices()
      .filter((voice) => voice.localService) ?? [];
  const language = locale.slice(0, 2);
  return local.find(({ lang }) => lang === locale) ?? local.find(({ lang }) => lang.startsWith(language)) ?? null;
}

/** Whether there is one; some browsers learn of their voices a moment late. */
export async function hasVoice(locale: string): Promise<boolean> {
  const here = speech();
  if (here === null) return false;
  if (localVoice(locale) !== null) return true;
  await new Promise<void>((resolve) => {
    here.addEventListener(
      "voiceschanged",
      () => {
        resolve();
      },
      { once: true },
    );
    setTimeout(resolve, 500);
  });
  return localVoice(locale) !== null;
}

/** Says one sentence; whatever was being said before gives way to it. */
export function say(sentence: string, locale: string, speed: number): void {
  const here = speech();
  const voice = localVoice(locale);
  if (here === null || voice === null) return;
  here.cancel();
  const said = new SpeechSynthesisUtterance(sentence);
  said.voice = voice;
  said.lang = voice.lang;
  said.rate = speed;
  here.speak(said);
}
