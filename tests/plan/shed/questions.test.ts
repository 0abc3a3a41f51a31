// What a crew member, a supervisor and a developer ask of a sheet who have nothing but the paper, and the line that answers.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOrderHtml, workOrderText } from "../../../src/plan/index.js";
import { parkJob, soundOrder } from "../helpers.js";

type Asked = readonly [
  who: "crew" | "supervisor" | "developer",
  question: string,
  line: string,
  copy?: "office",
];

const jobAt = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), "utf8"));

/** A sheet with its lines joined: where a line is broken is no matter of the answer. */
const joined = (text: string): string => text.replace(/\s+/g, " ");

/** The text of a page to print, without its markup. */
const pageText = (html: string): string =>
  joined(
    html
      .replace(/<style>[\s\S]*<\/style>/, "")
      .replace(/<[^>]+>/g, " ")
      .replace(/&nbsp;/g, " ")
      .replace(/&#39;/g, "'")
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, "&"),
  );

const demo: readonly Asked[] = [
  ["crew", "Which day, and where?", "Mon Jun 8, 2015 (2015-06-08), Alder Bank Park: SHED COPY"],
  ["crew", "What comes first?", "JOB 1 SPREAD feed 24-0-11"],
  ["crew", "What is the spreader set for?", "SET THE SPREADER FOR 1.67 lb per 1,000 sq ft: 2 passes"],
  ["crew", "May I put it all down in one pass?", "NOT 3.33 in one."],
  [
    "crew",
    "How much for the south pitch on each pass?",
    "south pitch, trapezoid, side a 47,025 sq ft 78.4 lb 156.8 lb",
  ],
  ["crew", "How do I know that I stand on the north pitch?", "north pitch, 330 x 180 ft"],
  ["crew", "How long does the irrigation run on the feed?", "run the irrigation 25 min."],
  [
    "crew",
    "How much water goes in before load 2 gets a product?",
    "Clean water up to half the 5 gal 2.2 gal tank marks",
  ],
  [
    "crew",
    "How much urea goes into load 2, and on what is it measured?",
    "ADD soluble urea 46-0-0. 2 lb 3.2 oz 15.5 oz wt SCALE",
  ],
  ["crew", "How far does load 2 reach?", "covers 10,000 sq ft 4,400 sq ft"],
  ["crew", "What if the air is calm?", "the air is dead calm (often a temperature inversion);"],
  ["crew", "What if the jar test curdles?", "the jar test clumps, curdles, separates, foams or heats up."],
  [
    "crew",
    "What do I wear to pour?",
    "Before you pour: wear what each label requires for mixing, at least gloves and eye protection.",
  ],
  ["crew", "How many bags, and what goes back?", "feed 24-0-11 8 x 50 lb = 400.0 lb 354.8 lb 45.2 lb"],
  [
    "crew",
    "Until when does the bowling green stay dry?",
    "NO WATER for 1 h from the end (until Mon Jun 8, noon): irrigation off.",
  ],
  [
    "crew",
    "Somebody swallowed some: what now?",
    "follow the first-aid part of the label at once, call the emergency number",
  ],
  [
    "supervisor",
    "Whose rate was not compared with a label?",
    "LABEL RATE NOT CHECKED for feed 24-0-11; soluble urea 46-0-0",
  ],
  [
    "supervisor",
    "When are the pitches due again?",
    "feed the pitches: not before Mon Jul 20, 2015 by the stated rule, reapply by Mon Aug 17, 2015",
  ],
  [
    "supervisor",
    "How much nitrogen is left of the year's limit?",
    "N in a calendar year: 1.544 of 3 lb per 1,000 sq ft, 1.456 left.",
    "office",
  ],
  [
    "developer",
    "Which ounces are these, and do the loads add up?",
    "soluble urea 46-0-0 1 x 10 lb 3 lb 2.7 oz 6 lb 13.3 oz non-ionic surfactant ____ 136 mL",
  ],
];

const granules: readonly Asked[] = [
  ["crew", "Who does it?", "Applicator Crew B"],
  ["crew", "Whom do I call?", "Supervisor, phone ____"],
  [
    "crew",
    "What is the spreader set for?",
    "SET THE SPREADER FOR 10 g per m²: 2 passes in different directions",
  ],
  ["crew", "May I put it all down in one pass?", "NOT 20 in one."],
  ["crew", "How much for the east pitch on each pass?", "east pitch, 100 x 60 m 6,000 m² 60.0 kg 120.0 kg"],
  ["crew", "How much for the bowling green in all?", "bowling green, 36 x 36 m 1,296 m² 13.0 kg 26.0 kg"],
  ["crew", "How large is the bowling green?", "bowling green, 36 x 36 m"],
  [
    "crew",
    "Which spreader, which setting, how fast?",
    "Spreader drop, 0.9 m Setting 5.5 Swath 0.9 m Speed 4 km/h",
  ],
  ["crew", "How many bags come out, and what goes back?", "8 x 20 kg = 160.0 kg 146.0 kg 14.0 kg"],
  ["crew", "May the leaf be wet?", "Leaf dry, unless the label wants it wet."],
  ["crew", "What if heavy rain is due?", "heavy rain is due, or the ground is frozen or waterlogged;"],
  [
    "crew",
    "How much water afterward, by when?",
    "WATER IN with 5 mm or more of water within 48 h of the end (by Wed 17 Jun, 10:00)",
  ],
  ["crew", "How long does the irrigation run?", "run the irrigation 25 min."],
  [
    "crew",
    "Granules lie on the path: what now?",
    "Sweep or blow granules off paths, drives and drains onto the turf.",
  ],
  [
    "crew",
    "When may people come back?",
    "Keep people and pets off until the label's re-entry time has passed",
  ],
  ["supervisor", "How do we know that the spreader puts that down?", "Test catch ____"],
  [
    "supervisor",
    "When again?",
    "summer feed: not before Mon 10 Aug 2026 by the stated rule, reapply by Mon 7 Sep 2026",
  ],
  [
    "supervisor",
    "Is the rate within the label?",
    "slow-release feed 20-0-8: 20 g per m², within the label rate that the job states",
    "office",
  ],
  ["supervisor", "How much of the nitrogen is slow?", "slow-release N 0 2 2", "office"],
  [
    "developer",
    "For how much nitrogen is that, and of what is the figure?",
    "SPREAD slow-release feed 20-0-8, for 4 g per m² of N in all",
  ],
];

const liquid: readonly Asked[] = [
  [
    "crew",
    "How large, how much spray, how many loads?",
    "3 acres at 40 gal per acre: 120 gal of spray in 2 loads.",
  ],
  ["crew", "How far does load 1 reach?", "covers 2 acres 1 acre"],
  ["crew", "How much water first, in load 2?", "Clean water up to half the load 40 gal 20 gal tank marks"],
  ["crew", "What goes in first?", "ADD quinclorac 75 % in packets, 2 packets 1 packet COUNT"],
  ["crew", "May I open a packet?", "Dry gloves, whole packets, never cut."],
  [
    "crew",
    "How long until the packets are gone?",
    "until the packets are fully dissolved: up to 5 minutes, longer in cold or hard water.",
  ],
  [
    "crew",
    "How much regulator in load 2, in which ounces?",
    "ADD trinexapac-ethyl 120 g/L 44.0 fl oz 22.0 fl oz JUG",
  ],
  ["crew", "Up to where is load 2 filled?", "Clean water up to 80 gal 40 gal tank marks"],
  ["crew", "When may I mix load 2?", "Only then mix the next load."],
  ["crew", "Nobody measured the wind: where does it go?", "start end wind mph, from temp °F used left"],
  [
    "crew",
    "What if it blows toward the pond?",
    "the wind is over the label's limit, or blows toward people, water or sensitive plants;",
  ],
  [
    "crew",
    "What was in the sprayer last?",
    "nobody knows what was in the sprayer last, or that it is clean;",
  ],
  ["crew", "Which pressure, which nozzle?", "Nozzle ____________ Pressure 30 psi Speed ____"],
  ["crew", "How long does it stay dry?", "NO WATER for 24 h from the end (until ____): irrigation off."],
  ["crew", "When may we mow?", "Do not mow until the label's waiting time for uptake is over."],
  ["crew", "What goes back to the store?", "take out 1 x 4 lb; use 3 lb in 3 packets; goes back 1 lb"],
  [
    "supervisor",
    "What do we file: registration number and lot?",
    "trinexapac-ethyl 120 g/L EC 0000-11 L-204",
  ],
  ["supervisor", "When again?", "lower meadow spray: not before Mon Jun 15, 2026 by the stated rule"],
  [
    "supervisor",
    "Are both rates within their labels?",
    "quinclorac 75 % in packets: 1 lb per acre, within the label rate that the job states",
    "office",
  ],
  [
    "developer",
    "Why this order?",
    "quinclorac 75 % in packets before trinexapac-ethyl 120 g/L EC: 5 published orders for, 0 against",
    "office",
  ],
];

describe.each([
  ["the visit of the demo", demo, parkJob()],
  ["granules alone, metric", granules, jobAt("granules-metric")],
  ["a liquid by the acre with packets and a part tank", liquid, jobAt("liquid-by-the-acre")],
] as const)("%s", (_, questions, job) => {
  const paper = (copy: "shed" | "office"): string => workOrderText(soundOrder(job), { copy });

  test("is asked twenty questions", () => expect(questions.length).toBe(20));

  test.each(questions)("%s: %s", (_who, _question, line, copy = "shed") => {
    expect(joined(paper(copy as "shed"))).toContain(line);
  });

  test("has on its page all that the text of a table or a list says", () => {
    const page = pageText(workOrderHtml(soundOrder(job)));
    for (const section of ["STOP and call", "STORE", "AFTERWARD", "RECORD"]) expect(page).toContain(section);
    for (const [, , line, copy] of questions)
      if (copy === undefined && /^(SET|NOT|WATER|NO WATER|Only then)/.test(line))
        expect(page).toContain(line);
  });

  test("says nothing that claims a leave to apply", () => {
    expect(joined(paper("shed"))).toMatch(/it does not authori[sz]e an application/);
  });
});
