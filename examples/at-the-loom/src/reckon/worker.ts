import { viewNamed } from "./views.js";
import type { Views } from "./views.js";

export interface Question {
  readonly id: number;
  readonly view: keyof Views;
  readonly given: readonly unknown[];
}

export type Reply =
  | { readonly id: number; readonly ok: true; readonly answer: unknown }
  | { readonly id: number; readonly ok: false; readonly says: string };

async function replyTo({ id, view, given }: Question): Promise<Reply> {
  try {
    const answer = await viewNamed(view);
    return { id, ok: true, answer: await answer(...(given as never[])) };
  } catch (error) {
    return { id, ok: false, says: error instanceof Error ? error.message : String(error) };
  }
}

addEventListener("message", ({ data }: MessageEvent<Question>) => {
  void replyTo(data).then((reply) => {
    postMessage(reply);
  });
});
