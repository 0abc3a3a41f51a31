// Three visits whose sheets stand beside them as they have to read, line by line. Every figure was reckoned by hand first:
//
// us: 0.75 lb of N from 30 % is 2.5 lb per 1,000 sq ft, 1.25 a pass. 300 x 150 = 45,000 sq ft: 56.25 and 112.5 lb; 90 x 40 / 2 =
// 1,800: 2.25 and 4.5 lb; 117 lb in all, 3 bags, 33 lb back. 120 x 120 = 14,400 sq ft at 2 gal: 28.8 gal, 12 + 12 + 4.8 (6,000,
// 6,000 and 2,400 sq ft): 2 oz per 1,000 is 12, 12 and 4.8 oz, 28.8 of 32 oz; 4 fl oz is 24, 24 and 9.6, 57.6 of 128. The jar:
// 28.8 oz (816.5 g) in 28.8 gal (109,020 mL) is 3.74 g in 500 mL; 4 fl oz in 256 fl oz is 7.81 mL. 4 oz on 4,000 sq ft is 16 oz,
// 2 packets, in 8 gal. Water: 0.2 in less the 0.05 that are planned, 0.15 at 0.5 in/h is 18 min; 24 h after Mon Sep 14, 10:15.
// 28 and 42 days after Sep 14: Oct 12, Oct 26; 14 days after Sep 1: Sep 15, after Sep 14: Sep 28. N: 2 lb of 30 % before is 0.6, half of
// it slow; 0.75 now, 1.35 of 1.5. Potash: 10 % of 2 and of 2.5.
//
// metric: 36 kg of N from 20 % is 180 kg/ha, 60 a pass. pi x 20 x 20 = 1,256.64 m2: 7.54 and 22.62 kg; (30 + 20) / 2 x 40 = 1,000:
// 6 and 18; 40.62 of 3 x 20 kg. 2,256.64 m2 at 400 L/ha is 90.27 L, with 2 L in the tank and 1 in the hoses 93.27: three even loads of
// 31.09 L. Of the first 28.09 reach the ground (702 m2), of the others all (777 m2), which are filled on top of 2 L. 0.8 L in 400 L: 62.18 mL
// a load, 186.5 in all; 25 g in 400 L: 1.943 g, 5.83 in all; in 500 mL 1 mL and 0.03125 g. 5 mm at 7.5 mm/h: 40 min. 9:30 and 2 h.
// 2 % P is 3.6 kg/ha, x 2.29137 = 8.249 of P2O5; 8 % K is 14.4, x 1.2046 = 17.346 of K2O.
//
// both: 12 acres at 150 lb: 1,800 lb, 36 bags (150 lb/acre are 168 kg/ha). 480 gal in 4 x 100 and 80: 2.5 acres x 13 = 32.5 fl oz on a jug
// that reads whole ones, 33, 32, 33, 32; 26; in all 156, 4.61 L, of 2 gal. 10 acres: 4 x 50 lb of iron sulfate, 4 bags.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOrderText } from "../../../src/plan/index.js";
import { soundOrder } from "../helpers.js";

const read = (name: string): string =>
  readFileSync(new URL(`whole-${name}`, import.meta.url), "utf8").replaceAll("\r", "");

describe.each(["us", "metric", "both"])("the visit %s", (name) => {
  test.each(["shed", "office"] as const)("reads as it has to on the copy for the %s", (copy) => {
    const lines = workOrderText(soundOrder(JSON.parse(read(`${name}.json`))), { copy }).split("\n");
    expect(lines).toEqual(read(`${name}-${copy}.txt`).split("\n"));
  });
});
