// A service that reads yarn counts as people type them: JSON with the count in every usual system, or what is to be chosen.
import { createServer } from "node:http";
import type { IncomingMessage } from "node:http";
import { asText, attempt, convertCount, faultText, yarnCount, yarnFromText } from "@thrum/maths";
import type { Unit } from "@thrum/maths";
import { countSystems, unitEntries } from "@thrum/maths/catalogue";

type CountUnit = Unit<"mass per length"> | Unit<"length per mass">;

const usual = unitEntries().flatMap(({ use, name }) => (use === "usual" ? [name] : []));
const systems: readonly CountUnit[] = countSystems().filter(({ name }) => usual.includes(name));

/** The answer to one text: a yarn in every system, its readings where it has several, or what is wrong. */
function answer(text: unknown, locale: string | null): { readonly status: number; readonly body: object } {
  const read = attempt(yarnFromText, text, locale === null ? {} : { locale });
  if (!read.ok) {
    const [fault] = read.faults;
    const { code, path, params } = fault;
    return { status: 422, body: { code, path, said: faultText(fault), choices: params.candidates ?? [] } };
  }
  const count = yarnCount(read.value);
  const counts = systems.map((system) => {
    const { count: inSystem } = convertCount(count, system as Unit<"mass per length">);
    return { system: system.name, data: inSystem, text: asText(inSystem, { digits: 4, locale: locale ?? "en" }) };
  });
  return { status: 200, body: { ...read.value, finished: count, counts } };
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  let body = "";
  for await (const piece of request.setEncoding("utf8")) {
    body += String(piece);
    if (body.length > 10_000) return "";
  }
  return body;
}

/** The text asked about, whatever was sent. */
function textIn(body: string): unknown {
  try {
    const sent: unknown = JSON.parse(body);
    return typeof sent === "object" && sent !== null && "text" in sent ? sent.text : sent;
  } catch {
    return undefined;
  }
}

const server = createServer((request, response) => {
  const { searchParams } = new URL(request.url ?? "/", "http://localhost");
  void bodyOf(request).then((body) => {
    const { status, body: told } = answer(textIn(body), searchParams.get("locale"));
    const head = { "content-type": "application/json; charset=utf-8", "access-control-allow-origin": "*" };
    response.writeHead(status, head).end(JSON.stringify(told));
  });
});
server.listen(Number(process.env["PORT"] ?? 0), "127.0.0.1", () => {
  process.stdout.write(`${JSON.stringify(server.address())}\n`);
});
