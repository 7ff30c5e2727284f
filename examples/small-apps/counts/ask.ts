// The page of the service: a yarn is typed, and where it may mean two things there is a button for each.
import { made, part } from "../page.js";

interface Answer {
  readonly said?: string;
  readonly choices?: readonly string[];
  readonly counts?: readonly { readonly system: string; readonly text: string }[];
}

const service = new URLSearchParams(location.search).get("service") ?? "";
const typed = part("yarn") as HTMLInputElement;

async function ask(): Promise<void> {
  const body = JSON.stringify({ text: typed.value });
  const sent = await fetch(`${service}?locale=${navigator.language}`, { method: "POST", body });
  const { said = "", choices = [], counts = [] } = (await sent.json()) as Answer;
  part("said").textContent = said;
  const buttons = choices.map((text) => {
    const button = made("button", { type: "button" }, text);
    button.onclick = () => {
      typed.value = text;
      void ask();
    };
    return button;
  });
  part("choices").replaceChildren(...buttons);
  part("counts").replaceChildren(...counts.map(({ text }) => made("li", {}, text)));
}

typed.onchange = () => void ask();
