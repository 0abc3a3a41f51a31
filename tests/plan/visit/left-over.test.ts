// Smaller turns of a work order: each was tried by changing the program, and nothing else here noticed the change.
import { describe, expect, test } from "vitest";
import {
  type Job,
  type JobProduct,
  tryWorkOrder,
  workOrderHtml,
  workOrderSheet,
  workOrderText,
} from "../../../src/plan/index.js";
import { found, parkJob, problemsOf, smallJob, soundOrder } from "../helpers.js";
import { flat } from "../sheet/read-paper.js";

const lb = "lb/1000 ft2";
const liquid: JobProduct = { id: "liq", form: "liquid", formulation: "EC", analysis: "10-0-0" };
const sprayer = {
  tank: { value: 20, unit: "gal" },
  applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
};
const sprayed = (more: Partial<JobProduct> = {}, unit = "fl oz/1000 ft2", value = 1): Job =>
  smallJob({
    products: [{ ...liquid, ...more } as JobProduct],
    sprayer,
    treatments: [
      { id: "s", method: "spray", mix: [{ product: "liq", rate: { value, unit, of: "product" } }] },
    ],
  });

describe("nutrients of a liquid", () => {
  test("by volume need a density; per volume of spray in the log, a sprayer", () => {
    expect(soundOrder(sprayed()).notChecked).toContain(
      "Nutrients of liq: its rate is by volume, and no density is stated.",
    );
    const known = soundOrder(sprayed({ density: { value: 10, unit: "lb/gal" } }));
    expect(known.notChecked.join()).not.toContain("Nutrients of liq");
    // 1 fl oz at 10 lb/gal is 0.078125 lb, a tenth of it nitrogen
    expect(known.nutrients[0]?.visitTotal.N?.value).toBeCloseTo(0.0078125, 9);
    const log = [
      { date: "2026-04-01", product: "liq", rate: { value: 1, unit: "% v/v", of: "product/spray" } },
    ];
    const without = smallJob({
      products: [liquid, { id: "feed-a", form: "dry", analysis: "24-0-11" }],
      log,
    } as Partial<Job>);
    expect(soundOrder(without).notChecked).toContain(
      "Nutrients of liq: its rate is per volume of spray, and no sprayer is stated.",
    );
  });
  test("of this calendar year only, from its first day to its last", () => {
    const nutrients = [{ value: 1, unit: lb, of: "N" }];
    const so = (...dates: readonly string[]) =>
      soundOrder(smallJob({ log: dates.map((date) => ({ date, nutrients })) } as never)).nutrients[0]
        ?.yearSoFar.N?.value ?? 0;
    expect([so("2025-12-31"), so("2026-01-01"), so("2026-01-01", "2026-05-04")]).toEqual([0, 1, 2]);
  });
});

describe("the label's own note", () => {
  test("stands with the product in the order, and in the steps", () => {
    const order = soundOrder(sprayed({ labelNote: "Add last of all." }));
    expect(order.sprays[0]?.products[0]?.labelNote).toBe("Add last of all.");
    expect(JSON.stringify(order.sprays[0]?.order)).toContain("Add last of all.");
  });
});

describe("what is told as checked", () => {
  const checked = (job: unknown): readonly string[] => soundOrder(job).checked;
  test("only where the job gives it", () => {
    const all = checked(parkJob());
    expect(all).toEqual([
      "that every figure has the unit and the substance it needs",
      "rates against the label rates that the job states",
      "nitrogen of each application against common advice",
      "rain and irrigation against the label rules that the job states",
      "nutrients against the limits that the job states",
      "dates against the intervals that the job states",
      "growing degree days against the intervals that the job states",
    ]);
    expect(checked(smallJob())).toEqual([all[0], all[2]]);
    expect(checked({ ...parkJob(), water: undefined })).not.toContain(all[3]);
    expect(checked(smallJob({ water: { events: [], until: "2026-05-05T09:00-05:00" } }))).not.toContain(
      all[3],
    );
    expect(soundOrder(smallJob()).notChecked).toContain("Limits on nutrients: the job states none.");
  });
});

describe("cut-outs beside parts", () => {
  test("one treatment of named parts beside one of the whole site is enough to be told", () => {
    const job = parkJob();
    const [feed, spray] = job.treatments;
    const { parts: _, ...whole } = spray as Job["treatments"][number];
    const site = { ...job.site, cutOuts: [{ shape: "measured", area: { value: 400, unit: "ft2" } }] };
    expect(found({ ...job, site, treatments: [feed, whole] }, "site/")).toHaveLength(1);
    expect(found({ ...job, treatments: [feed, whole] }, "site/")).toHaveLength(0);
  });
});

describe("the sheet", () => {
  test("has no empty part of a sentence, and its back begins with what it is the back of", () => {
    const order = soundOrder(parkJob());
    const sheet = workOrderSheet(order);
    expect(sheet.front.map(({ id }) => id)).toEqual(["stop", "spread", "spray", "store", "after", "record"]);
    expect(sheet.back.map(({ id }) => id)).toEqual(["jar test", "next", "back"]);
    const html = workOrderHtml(order);
    expect(html).toContain(
      '<div class="reverse">\n<header><p>Alder Bank Park: June visit, Mon Jun 8, 2015: back</p></header>\n<section class="jar-test">',
    );
    expect(workOrderHtml(order, { copy: "office" })).toContain(
      '<div class="reverse">\n<section class="cautions">',
    );
    expect(html).toMatch(/^<!doctype html>\n<html lang="en-US">\n<head>\n<meta charset="utf-8">/);
    expect(workOrderHtml(order, { units: "metric" })).toContain('<html lang="en">');
    expect(html).toContain(
      '<body class="shed">\n<main class="front">\n<header><h1>Alder Bank Park: June visit</h1>',
    );
    expect(html).toContain("<td>1&nbsp;&nbsp;Clean water".replace("1&nbsp;&nbsp;", "1  "));
    expect(html).toContain(' <b class="note">! Air gap at the hose; stay with the fill.</b></td>');
    expect(html).not.toMatch(/<b class="note">! <\/b>|undefined|Stryker/);
    expect(html).toContain('<span class="blank">Remarks <i style="min-width:48mm"></i></span>');
    expect(html).toContain('<span class="blank">Nozzle <b>flat fan 11004</b></span>');
    expect(html).toContain('<td class="pen"></td>');
    expect(html).toContain("<td>&#9744;</td>");
    expect(html).toContain('<th scope="col">MEASURE&nbsp;BY</th>');
    expect(html).toContain('<ul class="dash"><li>a label in your hand');
    expect(html).toContain('<ul class="box"><li>Leaf dry');
  });
  test("a long caution is cut after a sentence for the crew, and whole for the office", () => {
    const word = "x".repeat(60);
    const names = ["a", "b"].map((id) => ({
      ...liquid,
      analysis: undefined,
      id,
      name: `${word} ${id}`,
      groups: ["ALS"],
      labelProhibits: ["ALS"],
    }));
    const job = smallJob({
      products: names.map(({ analysis, ...rest }) => rest) as never,
      sprayer,
      treatments: [
        {
          id: "s",
          method: "spray",
          mix: names.map(({ id }) => ({
            product: id,
            rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" },
          })),
        },
      ],
    });
    const order = soundOrder(job);
    const long = order.findings.find(
      ({ severity, text, code }) => severity === "caution" && code !== "jar-test" && text.length > 160,
    );
    if (long !== undefined) {
      const shed = flat(workOrderText(order, { width: 400 }));
      expect(shed).toContain("More on the office copy.");
      expect(flat(workOrderText(order, { width: 400, copy: "office" }))).toContain(long.text);
    }
  });
  test("conditions of a limit that are not known are told together", () => {
    const limit = {
      amount: { value: 1, unit: lb, of: "N" },
      per: "application",
      scope: [{ equipment: ["rotary"] }],
      source: "plan",
    };
    const told = problemsOf(smallJob({ limits: [limit] } as never));
    if (told.length === 0)
      expect(
        flat(
          workOrderText(soundOrder(smallJob({ limits: [limit] } as never)), { copy: "office", width: 400 }),
        ),
      ).toMatch(/Applies where .+\. Stated in: plan/);
  });
});

describe("a job in words", () => {
  test("a number with commas, and measures in words of the trade", () => {
    const of = (put: object) => {
      const job = { ...smallJob(), ...put };
      return soundOrderProblems(job);
    };
    const area = (value: unknown) =>
      of({ treatments: [{ ...smallJob().treatments[0], area: { value, unit: "ft2" } }] });
    expect(area("1,200")).toEqual(["type treatments[0].area.value: a number (did you mean 1200)"]);
    expect(area("1,2,00")).toEqual(["type treatments[0].area.value: a number"]);
    expect(area("1,200 ft")).toEqual(["type treatments[0].area.value: a number"]);
    const swath = (put: unknown) => of({ spreader: { swath: put } });
    expect(swath({ value: 3, unit: "lb" })).toEqual([
      "unit/mismatch spreader.swath: a length, such as 10 ft or 3 m",
    ]);
    expect(swath(3)).toEqual([
      'type spreader.swath: a length with its unit, such as { "value": 3, "unit": "..." }',
    ]);
    const spray = (put: object) => of({ ...JSON.parse(JSON.stringify(sprayed())), ...put });
    const volume = { value: 1, unit: "gal/1000 ft2" };
    // A job file makes no calls: what to write is told as a record.
    expect(spray({ sprayer: { ...sprayer, applicationVolume: volume } })).toEqual([
      'substance/mismatch sprayer.applicationVolume: a quantity of spray, such as { "value": 1, "unit": "gal/1000 ft2", "of": "spray" }',
    ]);
    expect(spray({ sprayer: { ...sprayer, pressure: { value: 3, unit: "lb" } } })).toEqual([
      "unit/mismatch sprayer.pressure: a pressure, such as 40 psi or 3 bar",
    ]);
    expect(spray({ sprayer: { ...sprayer, speed: { value: 3, unit: "lb" } } })).toEqual([
      "unit/mismatch sprayer.speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h",
    ]);
    expect(of({ site: { name: "Park", parts: [{ shape: "square", side: 40 }] } })).toEqual([
      'type site.parts[0].side: a length, such as { "value": 40, "unit": "ft" }: a number has no unit',
    ]);
  });
  const soundOrderProblems = (job: unknown): readonly string[] =>
    tryWorkOrder(job).problems.map(
      ({ code, path, expected, suggestion }) =>
        `${code} ${path}: ${expected}${suggestion === undefined ? "" : ` (did you mean ${suggestion})`}`,
    );
});
