// Each part of a site gets its own water: what is told of each, and what the sheet has the crew do.
import { describe, expect, test } from "vitest";
import { soundOrder } from "../helpers.js";
import { calm, hours, inch, label, paper, tank, told, water, wet } from "./watering-job.js";

describe("water on the parts of a site", () => {
  const side = { value: 100, unit: "ft" };
  const site = { name: "Park", parts: ["east", "west"].map((name) => ({ name, shape: "square", side })) };
  test("each part of the ground has its own water, and the driest is told", () => {
    const on = (list: readonly (readonly [depth: number, parts?: readonly string[]])[], treatment = {}) => {
      const { until } = water().water;
      const events = list.flatMap(([depth, parts]) =>
        water(["04T15:00", depth, "irrigation", "planned"]).water.events.map((event) => ({
          ...event,
          ...(parts && { parts }),
        })),
      );
      return told(tank(wet, calm, { site, water: { until, events } }, treatment)).map(([, , , text]) => text);
    };
    const short = (depth: string, part = "", others = "") => [
      `A${part}: irrigation and rain are ${depth} in short of the 0.25 in that the label wants by 2026-05-05 09:00: plan irrigation.${others}`,
    ];
    expect(on([[0.25, ["east"]]])).toEqual(short("0.25", ", west"));
    // 0.15 in on each side is 0.1 in short on both, not 0.3 in in all
    expect(
      on([
        [0.15, ["east"]],
        [0.15, ["west"]],
      ]),
    ).toEqual(short("0.1"));
    expect(on([[0.15], [0.1, ["west"]]])).toEqual(short("0.1", ", east"));
    expect(on([[0.15], [0.05, ["west"]]])).toEqual(short("0.1", ", east", " Also west: 0.05 in."));
    expect(
      on([
        [0.25, ["east"]],
        [0.25, ["west"]],
      ]),
    ).toEqual([]);
    expect(on([[0.25, ["east", "west"]]])).toEqual([]);
    expect(on([[0.25]])).toEqual([]);
    expect(on([[0.25, ["east"]]], { parts: ["east"] })).toEqual([]);
    expect(on([[0.25, ["west"]]], { parts: ["east"] })).toEqual(short("0.25"));
  });
  test("the sheet says on which part water is missing", () => {
    const { events, until } = water(["04T15:00", 0.25, "irrigation", "planned"]).water;
    const lines = (parts: readonly string[]) =>
      paper(
        tank(wet, calm, { site, water: { until, events: events.map((event) => ({ ...event, parts })) } }),
      );
    expect(lines(["east"])).toContain(
      "On top of what is planned, water 0.25 in on west. What is planned is enough for east.",
    );
    expect(lines(["east", "west"])).toContain("what is planned is enough. Check that it ran.");
  });
  test("each part with its own depth and run time", () => {
    const events = [
      ...water(["04T15:00", 0.15, "irrigation", "planned"]).water.events.map((event) => ({
        ...event,
        parts: ["east"],
      })),
      ...water(["04T15:00", 0.05, "irrigation", "planned"]).water.events.map((event) => ({
        ...event,
        parts: ["west"],
      })),
    ];
    const irrigationRate = { value: 0.4, unit: "in/h" };
    const job = tank(wet, calm, { site, water: { until: water().water.until, events } }, { irrigationRate });
    // 0.25 - 0.15 = 0.1 in and 0.25 - 0.05 = 0.2 in, at 0.4 in/h: a quarter and half an hour
    expect(paper(job)).toContain(
      "On top of what is planned, water 0.1 in on east (run the irrigation 15 min); 0.2 in on west (run the irrigation 30 min).",
    );
    const { byPart, remaining, runTime } = soundOrder(job).sprays[0]?.watering ?? {};
    expect(remaining?.in("in")).toBeCloseTo(0.2, 12);
    expect(runTime?.in("min")).toBeCloseTo(30, 9);
    expect(byPart?.map((one) => [one.parts, one.runTime?.in("min")])).toEqual([
      [["east"], expect.closeTo(15, 9)],
      [["west"], expect.closeTo(30, 9)],
    ]);
  });
  test("what is too soon, too much, or rests on a forecast on one part alone", () => {
    const one = (labels: object, part: string, event: readonly [string, number, string, string]) => {
      const { events, until } = water(event).water;
      const parts = [part];
      return told(
        tank(labels, calm, {
          site,
          water: { until, events: events.map((each) => ({ ...each, parts })) },
        }),
      ).map(([code, , , text]) => `${code} ${text}`);
    };
    expect(one(label({ notBefore: hours(6) }), "east", ["04T12:00", 0.1, "irrigation", "planned"])).toEqual([
      "warning too-soon A, east: 0.1 in of water is expected before 2026-05-04 15:00, but the label wants the leaf dry. Postpone the irrigation or the application.",
    ]);
    const most = label({ most: inch(0.5), within: hours(24) });
    expect(one(most, "west", ["04T15:00", 0.6, "irrigation", "planned"])).toEqual([
      "warning too-much A, west: 0.1 in more water is expected than the label maximum of 0.5 in: product may leach or run off.",
    ]);
    expect(one(wet, "east", ["04T15:00", 0.3, "rain", "forecast"])).toEqual([
      "caution by-forecast-only A, east: the 0.25 in of water that the label wants by 2026-05-05 09:00 depends on forecast rain. If it stays dry, water 0.25 in.",
      "caution not-planned A, west: irrigation and rain are 0.25 in short of the 0.25 in that the label wants by 2026-05-05 09:00: plan irrigation.",
    ]);
  });
  test("rain that is forecast for one part is no water for the other", () => {
    const job = (parts: readonly string[]) => {
      const { events, until } = water(["04T15:00", 0.2, "rain", "forecast"]).water;
      const rain = events.map((event) => ({ ...event, parts }));
      return paper(tank(wet, calm, { site, water: { until, events: rain } }));
    };
    expect(job(["east"])).not.toContain("Rain forecast");
    expect(job(["east", "west"])).toContain(
      "Rain forecast 0.2 in: water that much less once it is in the gauge.",
    );
  });
  test("names in a row, and what has no name is the rest", () => {
    const on = (names: readonly (string | undefined)[], parts: readonly string[]) => {
      const ground = names.map((name) => ({ ...(name !== undefined && { name }), shape: "square", side }));
      const { events, until } = water(["04T15:00", 0.25, "irrigation", "planned"]).water;
      const job = tank(wet, calm, {
        site: { name: "Park", parts: ground },
        water: { until, events: events.map((event) => ({ ...event, parts })) },
      });
      const [[, , , text = ""] = []] = told(job);
      return [String(text).split(":")[0], /water 0\.25 in on .*/.exec(paper(job))?.[0].split(" NO MORE")[0]];
    };
    expect(on(["east", "west", "north", "yard"], ["yard"])[0]).toBe("A, east, west and north");
    const [finding, line] = on(["east", undefined], ["east"]);
    expect(finding).toBe("A, the rest");
    expect(line).toContain("water 0.25 in on the rest. What is planned is enough for east.");
  });
  type Fall = readonly [depth: number, known: string, part: string];
  const events = (...list: readonly Fall[]) =>
    list.flatMap(([depth, known, part]) =>
      water(["04T15:00", depth, known === "forecast" ? "rain" : "irrigation", known]).water.events.map(
        (event) => ({ ...event, parts: [part] }),
      ),
    );
  const on = (list: ReturnType<typeof events>, names: readonly string[] = ["east", "west"]) =>
    tank(wet, calm, {
      site: { name: "Park", parts: names.map((name) => ({ name, shape: "square", side })) },
      water: { until: water().water.until, events: list },
    });
  test("parts that lack the same are told what is short where the least rain is forecast", () => {
    const said = (...list: readonly Fall[]) => told(on(events(...list))).map(([, , , text]) => text);
    const short =
      "A: irrigation and rain are 0.25 in short of the 0.25 in that the label wants by 2026-05-05 09:00";
    // Rain on one part is none on the other: without irrigation both may lack all of the 0.25 in.
    expect(said([0.1, "forecast", "east"])).toEqual([`${short}: plan irrigation.`]);
    expect(said([0.1, "forecast", "west"])).toEqual([`${short}: plan irrigation.`]);
    // 0.25 - 0.05 on the one, 0.25 - 0.1 on the other
    const both = `${short} (0.2 in if the forecast rain falls): plan irrigation.`;
    expect(said([0.05, "forecast", "east"], [0.1, "forecast", "west"])).toEqual([both]);
    expect(said([0.1, "forecast", "east"], [0.05, "forecast", "west"])).toEqual([both]);
  });
  test("parts that get the same water in another order lack the same: 1 - 0.1 - 0.2 - 0.3 = 0.4 in", () => {
    const at = ["04T10:30", "04T11:30", "04T12:30"];
    const list = [
      ["east", 0.1, 0.2, 0.3],
      ["west", 0.3, 0.2, 0.1],
    ] as const;
    const watered = list.flatMap(([part, ...depths]) =>
      depths.flatMap((depth, i) =>
        water([at[i] as string, depth, "irrigation", "planned"]).water.events.map((event) => ({
          ...event,
          parts: [part],
        })),
      ),
    );
    const job = tank(label({ least: inch(1), within: hours(24) }), calm, {
      site,
      water: { until: water().water.until, events: watered },
    });
    expect(told(job).map(([, , , text]) => text)).toEqual([
      "A: irrigation and rain are 0.4 in short of the 1 in that the label wants by 2026-05-05 09:00: plan irrigation.",
    ]);
    expect(paper(job)).toContain("On top of what is planned, water 0.4 in.");
    expect(soundOrder(job).sprays[0]?.watering.byPart).toBeUndefined();
  });
  test("the forecast of the driest part alone, and each other part by its depth", () => {
    // West lacks 0.25 - 0.15, and no rain is forecast there; east lacks all of it, and 0.1 in is forecast.
    const one = soundOrder(on(events([0.15, "planned", "west"], [0.1, "forecast", "east"]))).sprays[0];
    expect(one?.watering.forecast?.in("in")).toBeCloseTo(0.1, 12);
    const three = told(
      on(events([0.1, "planned", "west"], [0.2, "planned", "north"]), ["east", "west", "north"]),
    );
    expect(three.map(([, , params]) => params)).toEqual([expect.objectContaining({ parts: "east" })]);
    expect(String(three[0]?.[3])).toMatch(/plan irrigation\. Also west: 0\.15 in\. Also north: 0\.05 in\.$/);
  });
});
