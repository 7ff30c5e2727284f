import { expect, it } from "vitest";
import { linkFaults } from "./links.js";

const HOME =
  '<a class="x" href="./start.html">Start</a> <a href="/a/b/guides/">Guides</a> <a href="https://a.example/no.html">Out</a>';
const site = {
  "index.html": HOME,
  "start.html": '<h2 id="first">First</h2> <a href="/a/b/">Home</a> <a href="#first">First</a>',
  "guides/index.html": '<a href="../start.html#first">First</a> <a href="../plan-a-warp/none.html">The app</a>',
  "404.html": "",
};
const faults = (change: object): unknown => linkFaults(new Map(Object.entries({ ...site, ...change })), "/a/b/");

it("a site whose links all lead somewhere, each page named by another, has no faults", () => {
  expect(faults({})).toEqual({ dead: [], unreached: [] });
});

it.each<[string, object, readonly string[], readonly string[]]>([
  [
    "a page that is not there",
    { "start.html": `${site["start.html"]} <a href="stop.html">Stop</a>` },
    ["start.html: stop.html"],
    [],
  ],
  ["a place that is not on its page", { "start.html": "" }, ["guides/index.html: ../start.html#first"], ["index.html"]],
  ["a page named by itself alone", { "new.html": '<a href="new.html">New</a>' }, [], ["new.html"]],
])("tells %s", (_, change, dead, unreached) => {
  expect(faults(change)).toEqual({ dead, unreached });
});
