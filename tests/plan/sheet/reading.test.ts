// Three jobs, each asked twenty questions whose answers were reckoned by hand from the job file before a sheet was printed.
// A person has the paper alone: an answer is looked up under the heading of its column in the row of its name, or in the
// sentence that begins with its words; nothing here knows the fields of a work order.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOrderText } from "../../../src/plan/index.js";
import { soundOrder } from "../helpers.js";
import { cell, flat, type Look, line, under } from "./read-paper.js";

type Who = "crew" | "supervisor" | "developer";
/** A figure with what half of its last printed place is, or words. */
type Answer = RegExp | { readonly near: number; readonly within: number; readonly unit: string };
type Asked = readonly [who: Who, question: string, look: Look, answer: Answer, copy?: "office"];

const jobAt = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), "utf8"));

const top: Look = (paper) => flat(paper.split("\n").slice(0, 5).join(" "));
const figure = (near: number, within: number, unit: string): Answer => ({ near, within, unit });

const numberIn = (text: string): number => Number(/-?[\d,]*\.?\d+/.exec(text)?.[0].replace(/,/g, ""));

// Croquet court 105 x 70 = 7,350 sq ft, putting lawn pi x 40 x 40 = 5,026.5: 12,376.5 sq ft at 2 gal per 1,000 is 24.753 gal,
// more than one tank of 20: two even loads of 12.377 gal, 6,188.3 sq ft each. 0.4 oz per 1,000 is 4.951 oz, 2.475 each; 2 fl oz
// per 1,000 is 24.753 fl oz, 12.377 each. 16 oz of a pound less 4.951 is 11.05; 128 fl oz less 24.753 is 103.25.
// In 500 mL: 4.951 x 28.35 g / (24.753 x 3,785.4 mL) x 500 = 0.749 g. 9:15 am and the longer of 2 h and 6 h: 3:15 pm.
const spray: readonly Asked[] = [
  ["crew", "How large is all that I spray?", line("JOB 1", "of spray in"), figure(12_377, 1, "sq ft")],
  ["crew", "How do I know the croquet court by the tape?", line("JOB 1", "croquet court"), /105 x 70 ft/],
  ["crew", "And the putting lawn?", line("JOB 1", "putting lawn"), /putting lawn circle, radius 40 ft/],
  ["crew", "How many loads do I mix?", line("JOB 1", "of spray in"), /24\.8 gal of spray in 2 loads/],
  ["crew", "How much ground does load 2 do?", cell("JOB 1", "covers", "EACH"), figure(6_188, 1, "sq ft")],
  [
    "crew",
    "How much water before any product in load 2?",
    cell("JOB 1", "1  Clean water", "EACH"),
    figure(6.188, 0.05, "gal"),
  ],
  [
    "crew",
    "Which product goes in first?",
    (paper) => flat(under(paper, "JOB 1").find((one) => /ADD |Stir |Pour in /.test(one)) ?? ""),
    /azoxystrobin/,
  ],
  [
    "crew",
    "How much azoxystrobin in load 2?",
    cell("JOB 1", "Stir azoxystrobin", "EACH"),
    figure(2.475, 0.005, "oz wt"),
  ],
  ["crew", "On what do I measure it?", cell("JOB 1", "Stir azoxystrobin", "MEASURE BY"), /^SCALE$/],
  [
    "crew",
    "How much propiconazole in load 2?",
    cell("JOB 1", "ADD propiconazole", "EACH"),
    figure(12.377, 0.05, "fl oz"),
  ],
  ["crew", "On what do I measure that?", cell("JOB 1", "ADD propiconazole", "MEASURE BY"), /^JUG$/],
  [
    "crew",
    "Up to which mark is load 2 filled?",
    cell("JOB 1", "Clean water up to  ", "EACH"),
    figure(12.377, 0.05, "gal"),
  ],
  [
    "crew",
    "When do I mix load 2?",
    line("JOB 1", "next load"),
    /Keep agitating until the tank is .*sprayed out.*Only then mix the next load/,
  ],
  [
    "crew",
    "What if the air is calm?",
    line("STOP and call the supervisor if", "calm"),
    /the air is dead calm/,
  ],
  [
    "crew",
    "How much azoxystrobin goes into the jar?",
    cell("JAR TEST", "azoxystrobin", "amount"),
    figure(0.749, 0.005, "g"),
  ],
  ["crew", "The jar has flakes. And now?", line("JAR TEST", "flakes"), /BAD, do not mix/],
  [
    "crew",
    "Until when does the irrigation stay off?",
    line("JOB 1", "NO WATER"),
    /6 h from the end \(until Thu Sep 3, 3:15 pm\)/,
  ],
  [
    "crew",
    "How much propiconazole goes back?",
    cell("STORE", "propiconazole", "goes back"),
    figure(103.25, 0.1, "fl oz"),
  ],
  [
    "supervisor",
    "Whose rate did nobody compare with a label?",
    line("STOP", "LABEL RATE NOT CHECKED"),
    /for propiconazole 14\.3 % EC: read/,
  ],
  [
    "supervisor",
    "When is the next time?",
    line("NEXT APPLICATION", "fungicide"),
    /not before Thu Sep 17, 2026.*reapply by Thu Oct 1, 2026/,
  ],
];

// 0.75 lb of N from 32 % is 2.34375 lb per 1,000 sq ft, 1.171875 each pass. Soccer field 345 x 225 = 77,625 sq ft: 90.97 and
// 181.93 lb; warm-up area 120 x 90 / 2 = 5,400: 6.33 and 12.66 lb. In all 194.59 lb: 4 bags of 50 lb, 5.41 lb go back.
// 0.2 in at 0.4 in/h is 30 min, within 48 h of Tue Sep 8, 7:40 am. 35 and 56 days on: Oct 13 and Nov 3. N: 0.9 + 0.75 of 3.
const spread: readonly Asked[] = [
  [
    "crew",
    "What do I set the spreader for?",
    line("JOB 1", "SET THE SPREADER"),
    figure(1.171875, 0.005, "lb per 1,000 sq ft"),
  ],
  [
    "crew",
    "Somebody says 2.34 in one pass. May I?",
    line("JOB 1", "SET THE SPREADER"),
    /2 passes in different directions, NOT 2\.34 in one/,
  ],
  ["crew", "Which setting?", line("JOB 1", "Setting"), /Setting M/],
  ["crew", "How wide is a pass?", line("JOB 1", "Swath"), /Swath 10 ft/],
  [
    "crew",
    "How much for the soccer field, first pass?",
    cell("JOB 1", "soccer field", "each pass"),
    figure(90.967, 0.05, "lb"),
  ],
  ["crew", "And in both passes?", cell("JOB 1", "soccer field", "both passes"), figure(181.934, 0.1, "lb")],
  [
    "crew",
    "How much for the warm-up area, first pass?",
    cell("JOB 1", "warm-up area", "each pass"),
    figure(6.328, 0.05, "lb"),
  ],
  [
    "crew",
    "How do I know the warm-up area?",
    line("JOB 1", "warm-up area"),
    /triangle, base 120 5,400 sq ft .* ft, height 90 ft/,
  ],
  ["crew", "How large is it?", cell("JOB 1", "warm-up area", "area"), figure(5_400, 0.5, "sq ft")],
  [
    "crew",
    "How much do I need in all?",
    cell("JOB 1", "whole job", "both passes"),
    figure(194.59, 0.2, "lb"),
  ],
  ["crew", "How many bags do I take?", cell("STORE", "fall feed", "take out"), /^4 x 50 lb/],
  ["crew", "What goes back?", cell("STORE", "fall feed", "goes back"), figure(5.41, 0.2, "lb")],
  ["crew", "There is dew. Do I start?", line("JOB 1", "Leaf dry"), /Leaf dry, unless the label wants it wet/],
  [
    "crew",
    "How much water afterward, by when?",
    line("JOB 1", "WATER IN"),
    /0\.2 in or more of water within 48 h of the end \(by Thu Sep 10, 7:40 am\)/,
  ],
  ["crew", "How long does the irrigation run?", line("JOB 1", "WATER IN"), /run the irrigation 30 min/],
  ["crew", "Granules lie on the walk.", line("AFTERWARD", "granules"), /Sweep or blow granules off walks/],
  ["crew", "A storm is due at ten.", line("STOP and call the supervisor if", "rain"), /heavy rain is due/],
  ["supervisor", "Who does it?", top, /Applicator Crew 2/],
  [
    "supervisor",
    "When is the next time?",
    line("NEXT APPLICATION", "fall feed"),
    /not before Tue Oct 13, 2026.*reapply by Tue Nov 3, 2026/,
  ],
  [
    "supervisor",
    "How much nitrogen may still follow this year?",
    line("NUTRIENTS", "calendar year"),
    /1\.65 of 3 lb per 1,000 sq ft, 1\.35 left/,
    "office",
  ],
];

// 37 x 37 = 1,369 m2 at 500 L/ha is 68.45 L: a tank of 60 L does 1,200 m2, 8.45 L are left for 169 m2, less than the 10 L that
// can be agitated. 1.6 L/ha is 219.0 mL: 192.0 and 27.04; 10 L/ha is 1,369 mL: 1,200 and 169. A liter less 219 is 781 mL, 10 L
// less 1,369 mL are 8,631. In 500 mL: 1.6 / 500 x 500 = 1.6 mL. 08:00 and 3 h: 11:00. 21 days after Tue 14 Jul: Tue 4 Aug.
const metric: readonly Asked[] = [
  ["crew", "Whose sheet is this?", top, /Applicator Team 1 Certificate no\. PA2-0001/],
  ["crew", "How large is the green?", line("JOB 1", "of spray in"), /1,369 m²/],
  ["crew", "How long is a side of it?", line("JOB 1", "of spray in"), /37 x 37 m/],
  ["crew", "How many loads?", line("JOB 1", "of spray in"), /68\.5 L of spray in 2 loads/],
  ["crew", "How far does load 1 reach?", cell("JOB 1", "covers", "LOAD 1"), figure(1_200, 0.5, "m²")],
  ["crew", "And load 2?", cell("JOB 1", "covers", "LOAD 2"), figure(169, 0.5, "m²")],
  [
    "crew",
    "What goes into the empty tank?",
    cell("JOB 1", "1  Clean water", "LOAD 1"),
    figure(30, 0.05, "L"),
  ],
  ["crew", "And in load 2?", cell("JOB 1", "1  Clean water", "LOAD 2"), figure(4.225, 0.05, "L")],
  [
    "crew",
    "How much regulator in load 1?",
    cell("JOB 1", "ADD trinexapac", "LOAD 1"),
    figure(192, 0.5, "mL"),
  ],
  [
    "crew",
    "How much regulator in load 2?",
    cell("JOB 1", "ADD trinexapac", "LOAD 2"),
    figure(27.04, 0.5, "mL"),
  ],
  ["crew", "How much iron in load 2?", cell("JOB 1", "ADD iron", "LOAD 2"), figure(169, 0.5, "mL")],
  [
    "crew",
    "Up to where is load 2 filled?",
    cell("JOB 1", "Clean water up to  ", "LOAD 2"),
    figure(8.45, 0.05, "L"),
  ],
  [
    "crew",
    "Is anything the matter with load 2?",
    line("STOP", "Load 2"),
    /Load 2 is smaller than the sprayer can agitate/,
  ],
  ["crew", "When may I mow?", line("AFTERWARD", "mow"), /Do not mow until the label's waiting time/],
  [
    "crew",
    "Until when is it kept dry?",
    line("JOB 1", "NO WATER"),
    /3 h from the end \(until Tue 14 Jul, 11:00\)/,
  ],
  ["crew", "How much regulator goes back?", cell("STORE", "trinexapac", "goes back"), figure(781, 0.5, "mL")],
  ["crew", "How much iron goes back?", cell("STORE", "iron 6 %", "goes back"), figure(8_631, 0.5, "mL")],
  [
    "crew",
    "Somebody swallowed some.",
    line("CAUTIONS", "swallows"),
    /first-aid part of the label at once, call the emergency number or the poisons service/,
  ],
  [
    "supervisor",
    "When may we come again?",
    line("NEXT APPLICATION", "regulate"),
    /not before Tue 4 Aug 2026/,
  ],
  [
    "developer",
    "Is the jar the mix of the tank?",
    cell("JAR TEST", "trinexapac", "amount"),
    figure(1.6, 0.005, "mL"),
  ],
];

describe.each([
  ["spray-two-parts", spray],
  ["spread-two-passes", spread],
  ["regulator-metric", metric],
] as const)("%s", (name, questions) => {
  const paper = (copy: "shed" | "office"): string => workOrderText(soundOrder(jobAt(name)), { copy });

  test("is asked twenty questions", () => expect(questions.length).toBe(20));

  for (const [who, question, look, answer, copy = "shed"] of questions) {
    test(`${who}: ${question}`, () => {
      const found = look(paper(copy));
      if (answer instanceof RegExp) return expect(found).toMatch(answer);
      expect(found).toContain(answer.unit);
      const read = numberIn(found.replace(/^[A-Z ]+/, ""));
      expect(Math.abs(read - answer.near), found).toBeLessThanOrEqual(answer.within);
    });
  }
});
