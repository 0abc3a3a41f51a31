import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import type { ReadLimit } from "../limit/read-types.js";
import { type BufferStrip, bufferStrip, edgesFor, isStatedOf } from "./buffer-strips.js";
import type { Proposed } from "./counted-days.js";
import { lengthText, tidy } from "./length-text.js";
import { pointsOf } from "./runoff-points.js";
import { isOfAny, judged, notKnown, ofText, type TestResult } from "./test-result.js";

const stripText = (strip: BufferStrip): string => {
  const { away, untreated, distance, reduction, atFloor, stated, notListed } = strip;
  const reduced =
    reduction.value === 0
      ? ""
      : `, of ${lengthText(distance)} after ${tidy(reduction.in("%"))} % off ${lengthText(stated)}${atFloor ? ", the floor" : ""}`;
  const ignored = notListed.length === 0 ? "" : `; not listed, and no reduction: ${notListed.join(", ")}`;
  const kept =
    untreated.value > 0
      ? `${lengthText(away)} away and a strip of ${lengthText(untreated)}`
      : lengthText(away);
  return `${kept}${reduced}${ignored}`;
};

/** Puts a buffer to a proposal: the edge with the least to spare decides. */
export const bufferTest = (limit: Extract<ReadLimit, { kind: "buffer" }>, proposed: Proposed): TestResult => {
  const { date, row, part, known } = proposed;
  const of = ofText(limit.of);
  const { atLeast, floor, from } = limit;
  const edges = edgesFor(limit, known.facts, part);
  const fact = edges?.[0]?.away;
  const states = `at least ${lengthText(atLeast, fact)} from ${from}${floor === undefined ? "" : `, no less than ${lengthText(floor, fact)} after reductions`}`;
  const judge = judged(date);
  const mine = isOfAny(row, limit.of);
  if (mine === false) return judge(of, states, `no ${of}`, false);
  if (mine === undefined || edges === undefined) return notKnown(of, states);
  if (edges.length === 0) return judge(of, states, `no ${from} beside it`, false);
  const strips = edges.map((edge) => bufferStrip(limit, edge));
  const short = strips.filter((strip) => strip.short);
  const told = short.length > 0 ? short : strips;
  return judge(of, states, told.map(stripText).join("; "), short.length > 0);
};

/** Puts a limit on the points of measures against runoff to a proposal. */
export const runoffTest = (
  limit: Extract<ReadLimit, { kind: "runoff points" }>,
  proposed: Proposed,
): TestResult => {
  const { date, row, part, known } = proposed;
  const { atLeastPoints, menu } = limit;
  const of = ofText(limit.of);
  const states = `at least ${counted(atLeastPoints, "point")} of measures against runoff`;
  const judge = judged(date);
  const mine = isOfAny(row, limit.of);
  if (mine === false) return judge(of, states, `no ${of}`, false);
  const { runoff } = known.facts;
  if (mine === undefined || runoff === undefined) return notKnown(of, states);
  const { points, measures, unknown } = pointsOf(
    runoff.filter((fact) => isStatedOf(fact, part)),
    menu,
  );
  const short = exceeds(atLeastPoints, points);
  // Measures without points may make up for what is short.
  if (short && unknown.length > 0) return notKnown(of, states);
  const list = measures.map(({ measure, points: each }) => `${measure} ${each}`);
  const found = measures.length === 0 ? "no points" : `${counted(tidy(points), "point")}: ${list.join(", ")}`;
  return judge(of, states, found, short);
};
