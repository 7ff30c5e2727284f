// What the page does in the browser: nothing a pupil writes leaves it, or is kept when it is closed.
import { asHtml, check, explain } from "@thrum/maths";
import { problemsOf } from "./problems.mjs";

const SEED = 1;

const made = (name, own = {}, children = []) => {
  const element = Object.assign(document.createElement(name), own);
  element.append(...children);
  return element;
};

/** The question names the unit it wants, whatever the formula would give: no word of that. */
function told({ unit, notes, says }) {
  return unit === "another of its kind" ? says.filter((text) => !notes.includes(text)) : says;
}

function judged(problem, written) {
  try {
    return told(check(problem.calculation, problem.input, { written, unit: problem.unit }));
  } catch (error) {
    return [error.message];
  }
}

function opened(title, html) {
  const inside = made("div");
  inside.innerHTML = html;
  return made("details", {}, [made("summary", { textContent: title }), inside]);
}

function article(problem, at) {
  const symbol = problem.unit?.symbol ?? "";
  const answer = made("input", { id: `answer-${at}`, inputMode: "decimal", autocomplete: "off", maxLength: 20 });
  const verdict = made("div", { className: "verdict" });
  verdict.setAttribute("role", "status");
  const mark = made(
    "select",
    { id: `mark-${at}` },
    ["as judged", "right", "wrong"].map((text) => made("option", { text })),
  );
  const form = made("form", {}, [
    made("label", { htmlFor: answer.id, textContent: "Your answer " }),
    answer,
    ` ${symbol} `,
    made("button", { textContent: "Check" }),
  ]);
  const show = () => {
    const says =
      mark.value === "as judged" ? judged(problem, answer.value.trim()) : [`The teacher says: ${mark.value}.`];
    verdict.replaceChildren(...says.map((textContent) => made("p", { textContent })));
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    show();
  });
  mark.addEventListener("change", show);
  return made("article", {}, [
    made("h2", { textContent: `${at + 1}` }),
    made("p", { textContent: problem.asks }),
    made(
      "ul",
      {},
      problem.given.map((textContent) => made("li", { textContent })),
    ),
    made("p", { textContent: `Write it ${symbol === "" ? "" : `in ${symbol} `}${problem.rounding}.` }),
    form,
    verdict,
    opened("Hint", `<p>${problem.hint}</p>`),
    opened("Working", asHtml(explain(problem.calculation, problem.input))),
    made("p", { className: "teacher" }, [made("label", { htmlFor: mark.id, textContent: "Teacher’s mark " }), mark]),
  ]);
}

document.querySelector("main").append(...problemsOf(SEED).map(article));
