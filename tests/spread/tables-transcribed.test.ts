import { expect, test } from "vitest";
import { throwRules, uniformityLimit, uniformityLimits } from "../../src/spread/index.js";

// The rules and limits of other publishers, written down a second time from what was read.

test("shares of the thrown width", () => {
  expect(
    throwRules.map(({ id, least, most, source }) => [id, least, most, source.publisher, source.title]),
  ).toEqual([
    ["half", 0.5, 0.5, "Purdue University", "Spacing between passes with a rotary spreader"],
    [
      "shared strips",
      0.65,
      0.7,
      "NC State Extension",
      "Hand-cranked spreaders in container nurseries, AG-826",
    ],
    ["manure", 25 / 45, 30 / 45, "Iowa State University manure extension", "Picking the right swath width"],
    ["slides", 0.6, 0.6, "turf fertilizer training", "Broadcast spreader calibration (slides)"],
  ]);
  expect(throwRules.map(({ text }) => text)).toEqual([
    "50 % overlap of the whole thrown width: the edge lands on the wheel track of the pass before.",
    "30 to 35 % of the thrown width is shared on each side (60 to 70 % in total): read as a spacing of 65 to 70 %.",
    "A throw of 45 ft makes 25 to 30 ft of effective width: dry manure.",
    "A throw of 20 ft makes 12 ft of effective width.",
  ]);
});

test("limits on the CV of a pattern", () => {
  const bout = "the bout width is the one at which the CV does not pass this";
  const zealand = "LandWISE, New Zealand, citing Lawrence 2007";
  const press = "Irish and UK farm press";
  expect(
    uniformityLimits.map(({ id, limit, appliesTo, meaning, reached, source }) => [
      id,
      limit.in("%"),
      appliesTo,
      meaning,
      reached,
      source.publisher,
    ]),
  ).toEqual([
    ["nz-nitrogen", 15, "nitrogenous fertilizer", bout, "read", zealand],
    ["nz-low-analysis", 25, "low-analysis fertilizer", bout, "read", zealand],
    [
      "australia",
      15,
      "fertilizer",
      "swaths at or below this pass the test scheme",
      "read",
      "Fertilizer Australia",
    ],
    ["ireland-test-hall", 5, "fertilizer", "below this only in a test hall, not in the field", "read", press],
    [
      "ireland-field",
      15,
      "fertilizer",
      "up to this the source calls a CV in the field acceptable",
      "read",
      press,
    ],
    ["ireland-loss", 20, "fertilizer", "above this yield and money are lost", "read", press],
    [
      "brazil-lime",
      20,
      "lime",
      "the effective width is the one at which the CV comes to this",
      "read",
      "International Society of Precision Agriculture",
    ],
    [
      "en-13739",
      15,
      "broadcasters and full-width distributors",
      "largest CV of the transverse distribution",
      "from memory",
      "CEN",
    ],
  ]);
});

test("limits on the CV of a pattern are cited by title", () => {});

test("where the limits on the CV of a pattern stand", () => {
  const titles = Object.fromEntries(uniformityLimits.map(({ id, source }) => [id, source.title]));
  expect(titles).toEqual({
    "nz-nitrogen": "On-farm fertiliser spreading test project",
    "nz-low-analysis": "On-farm fertiliser spreading test project",
    australia: "What do the Australian test-scheme graphs mean?",
    "ireland-test-hall": "Fertiliser spreader CV reports",
    "ireland-field": "Fertiliser spreader CV reports",
    "ireland-loss": "Fertiliser spreader CV reports",
    "brazil-lime": "Static and kinematic tests for determining spreaders effective width (Maldaner et al.)",
    "en-13739": "EN 13739",
  });
  expect(uniformityLimit("australia").source.where).toBe("figure 1");
});
