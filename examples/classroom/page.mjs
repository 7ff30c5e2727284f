// What the page does in the browser: nothing a pupil writes leaves it, or is kept when it is closed.
import { asHtml, firstWrongLine, isThrumError } from "@thrum/maths";
import { jobOf } from "./problems.mjs";

const SEED = 1;

const made = (name, own = {}, children = []) => {
  const element = Object.assign(document.createElement(name), own);
  element.append(...children);
  return element;
};

/** What is wrong with a figure, without the names a program uses. */
function refused({ faults }, what) {
  return faults.map(
    ({ expected, received, remedy }) => `${what}: expected ${expected}, received ${received}. ${remedy}`,
  );
}

/** What is to say of an answer, by the answers to the sums above it too. */
function judged(sum, written) {
  try {
    const answers = Object.fromEntries([...answerOf].map(([name, input]) => [name, input.value.trim()]));
    const { verdict, says, carriedFrom } = sum.judge(written, { answers, locale: navigator.language });
    const { value, slips, pairs } = verdict;
    const two = value === "wrong" && slips.length === 0 && carriedFrom.length === 0 ? pairs() : null;
    return two !== null && two.fitting > 0 && two.fitting <= 3 ? [...says, ...two.says] : says;
  } catch (error) {
    if (!isThrumError(error)) throw error;
    return refused(error, "your answer");
  }
}

/** The boxes of the answers, by the names of their sums. */
const answerOf = new Map();
const isTeacher = location.hash === "#teacher";

/** What is to say of the lines a pupil filled in: the first that is wrong. */
function judgedLines(problem, lines) {
  const figures = Object.fromEntries(
    [...lines].flatMap(([line, input]) => (input.value.trim() === "" ? [] : [[line, input.value]])),
  );
  if (Object.keys(figures).length === 0) return [];
  try {
    const { unit } = problem.wanted;
    const judgedOnes = firstWrongLine(problem.calculation, problem.input, figures, { unit });
    const wrong = judgedOnes.find(({ verdict }) => verdict === "wrong");
    return [wrong === undefined ? "The lines are right." : `The first line to look at: ${wrong.line}.`];
  } catch (error) {
    if (!isThrumError(error)) throw error;
    return refused(error, "your lines");
  }
}

function lineInputs(problem) {
  const names = problem.calculation.declaration.lines.slice(0, -1).map(({ name }) => name);
  return new Map(names.map((name) => [name, made("input", { autocomplete: "off", maxLength: 30 })]));
}

function opened(title, html) {
  const inside = made("div");
  inside.innerHTML = html;
  return made("details", {}, [made("summary", { textContent: title }), inside]);
}

function article(problem, at) {
  const symbol = problem.wanted.unit?.symbol ?? "";
  const answer = made("input", { id: `answer-${at}`, autocomplete: "off", maxLength: 40 });
  answerOf.set(problem.name, answer);
  const verdict = made("div", { className: "verdict" });
  verdict.setAttribute("role", "status");
  const mark = made(
    "select",
    { id: `mark-${at}` },
    ["as judged", "right", "wrong"].map((text) => made("option", { text })),
  );
  const lines = lineInputs(problem);
  const working = opened("Working", asHtml(problem.key.working));
  working.hidden = !isTeacher;
  const form = made("form", {}, [
    ...[...lines.values()].map((input, index) => {
      const { line, unit } = problem.question.blanks[index];
      return made("p", { className: "line" }, [made("label", {}, [`${line} = `, input, ` ${unit}`])]);
    }),
    made("label", { htmlFor: answer.id, textContent: "Your answer " }),
    answer,
    ` ${symbol} `,
    made("button", { textContent: "Check" }),
  ]);
  const show = () => {
    const says =
      mark.value === "as judged"
        ? [...judged(problem, answer.value.trim()), ...judgedLines(problem, lines)]
        : [`The teacher says: ${mark.value}.`];
    verdict.replaceChildren(...says.map((textContent) => made("p", { textContent })));
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    show();
    working.hidden = false;
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
    made("p", { textContent: problem.question.says.find((line) => line.startsWith("Write the answer")) }),
    form,
    verdict,
    opened("Hint", `<p>${problem.hint}</p>`),
    working,
    made("div", { className: "room" }),
    made("p", { className: "teacher", hidden: !isTeacher }, [
      made("label", { htmlFor: mark.id, textContent: "Teacher’s mark " }),
      mark,
    ]),
  ]);
}

document.querySelector("main").append(...jobOf(SEED).sums.map(article));
