// What the page does in the browser: nothing a pupil writes leaves it, or is kept when it is closed.
import { asHtml, check, explain } from "@thrum/maths";
import { problems } from "./problems.mjs";

const made = (name, own = {}, children = []) => {
  const element = Object.assign(document.createElement(name), own);
  element.append(...children);
  return element;
};

function told({ unit, notes: all, right, value, rounded, slips, tellApart, cost }) {
  // The question names the unit it wants, whatever the formula would give: no word of that.
  const notes = unit === "another of its kind" ? [] : all;
  if (right) return [value === "right" ? "Right." : `${value}.`, ...notes];
  const named = slips.length === 0 ? ["No slip we know gives this number."] : slips.map(({ says }) => says);
  const digits =
    value === "right" ? [] : [value === "wrong" ? "Not this number." : `${value}: it would be ${rounded}.`];
  return [...digits, ...notes, ...named, ...(tellApart === null ? [] : [tellApart]), ...(cost === null ? [] : [cost])];
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
  const digits = problem.decimals === 0 ? "as a whole number" : `to ${problem.decimals} decimals, halves up`;
  return made("article", {}, [
    made("h2", { textContent: `${at + 1}` }),
    made("p", { textContent: `${problem.asks} Write it ${symbol === "" ? "" : `in ${symbol} `}${digits}.` }),
    form,
    verdict,
    opened("Hint", `<p>${problem.hint}</p>`),
    opened("Working", asHtml(explain(problem.calculation, problem.input))),
    made("p", { className: "teacher" }, [made("label", { htmlFor: mark.id, textContent: "Teacher’s mark " }), mark]),
  ]);
}

document.querySelector("main").append(...problems.map(article));
