// Where a reader begins: the first page, and the search.
import { catalogue } from "../../src/teach/index.js";
import { escaped } from "./html.js";
import { labelRules, type Page } from "./layout.js";

const searchBox = (
  id: string,
): string => `<form id="search-form" class="big-seek" role="search" action="search.html" method="get">
<label for="${id}">What do you want to work out?</label>
<div class="amount"><input id="${id}" type="search" name="q" autocomplete="off" placeholder="how much fertilizer, gallons per acre, bags"><button type="submit">Find</button></div>
</form>`;

/** The page of the search. */
export const searchPage = (): Page => ({
  path: "search.html",
  title: "Search",
  kind: "text",
  scripts: ["search-index.js", "search.js"],
  body: `<h1>Search</h1>\n${searchBox("search")}\n<p id="count" role="status"></p>\n<ol id="found" class="pages"></ol>
<noscript><p>The search runs as a script. <a href="formulas/index.html">All formulas</a> are listed by room.</p></noscript>`,
});

/** What people ask first, and the page that answers it. */
const firstQuestions: readonly (readonly [question: string, path: string])[] = [
  ["How much product for this lawn?", "formulas/product-rate.html"],
  ["How many bags?", "formulas/packages-for-need.html"],
  ["What does my sprayer put down?", "formulas/calibration-by-catch.html"],
  ["What does my spreader put down?", "formulas/spread-rate.html"],
  ["How much goes into each load, and in what order?", "rooms/tank.html"],
  ["When do we come back?", "rooms/interval.html"],
  ["Is it under the limit, and how much is left?", "rooms/limits.html"],
  ["What goes on paper for the crew and the office?", "rooms/plan.html"],
  ["What went down this year?", "rooms/ledger.html"],
  ["How do I build a quiz?", "rooms/teach.html"],
];

/** The first page. */
export const homePage = (cases: readonly Page[]): Page => {
  const entries = catalogue();
  const rooms = [...new Set(entries.map(({ room }) => room))];
  const tiles = rooms
    .map((room) => {
      const own = entries.filter((entry) => entry.room === room);
      return `<li><a href="formulas/index.html#${room}">${room}</a> <span class="count">${own.length}</span></li>`;
    })
    .join("");
  const questions = firstQuestions
    .map(([question, path]) => `<li><a href="${path}">${question}</a></li>`)
    .join("");
  const list = cases.map(({ path, title }) => `<li><a href="${path}">${escaped(title)}</a></li>`).join("\n");
  return {
    path: "index.html",
    title: "ratewright: arithmetic for turf care",
    kind: "home",
    description: "Formulas of turf care with forms, worked steps, sources and published checks.",
    body: `<h1>Arithmetic for turf care, worked out line by line</h1>
<p class="lead">${entries.length} formulas with a form on each page, in US customary and metric units: product from a nutrient rate,
tank loads, calibration, areas, water, seed, prices. For the developer, the library behind them: <a href="start.html">start here</a>.</p>
${searchBox("home-search")}
<p class="caution"><strong>Label first.</strong> ${labelRules}</p>
<h2 id="first">What people ask first</h2>
<ul class="columns">${questions}</ul>
<h2 id="formulas">Formulas by room</h2>
<ul class="rooms">${tiles}</ul>
<h2 id="cases">Worked cases</h2>
<ul class="columns">${list}</ul>
<h2 id="more">More</h2>
<ul class="columns"><li><a href="rooms/units.html">Units and substances</a></li><li><a href="rooms/errors.html">Errors and findings</a></li><li><a href="rooms/disagreements.html">Where sources disagree</a></li><li><a href="rooms/accuracy.html">How accurate each kind of answer can be</a></li><li><a href="rooms/batch.html">Many sites at once</a></li><li><a href="evidence/index.html">Evidence: published figures beside computed ones</a></li><li><a href="changelog.html">What changed</a></li><li><a href="developers.html">For contributors</a></li></ul>`,
  };
};
