import type { Draw } from "./topic.js";

// The park of the problems is invented: two practice pitches, a bowling green, a meadow that is being grown in.

const places = ["the north practice pitch", "the south practice pitch", "the bowling green", "the meadow"];

const anyPlace = new RegExp(places.join("|"), "gi");

/** A text without the parts of the park that it names: the same figures in another place are the same problem. */
export const withoutPlaces = (text: string): string => text.replace(anyPlace, "");

/** Some part of the park: `the bowling green`. */
export const place = (draw: Draw): string => draw.pick(places);

/** Where a machine runs far, or the area is large: a bowling green is some 120 ft square, and level. */
export const openGround = (draw: Draw): string =>
  draw.pick(["the north practice pitch", "the south practice pitch", "the meadow"]);

/** Turf that is played on, and so gets sand. */
export const playedTurf = (draw: Draw): string =>
  draw.pick(["the north practice pitch", "the south practice pitch", "the bowling green"]);

/** The area of some part of the park, in sq ft or m²: no more than a bowling green has. */
export const areaOf = (draw: Draw, us: boolean): number =>
  us ? draw.step(4000, 14_000, 500) : draw.step(400, 1400, 50);

/** The grade of a fertilizer, as a label prints it, with nitrogen and potash. */
export const gradeWithNitrogen = (
  draw: Draw,
): { readonly n: number; readonly k: number; readonly text: string } => {
  const n = draw.pick([12, 15, 16, 18, 20, 22, 24, 25, 28, 30, 32]);
  const k = draw.pick([4, 5, 8, 10, 11]);
  return { n, k, text: `${n}-0-${k}` };
};

/** A grade behind its article: `a 16-0-8`, `an 18-0-8`. */
export const aGrade = (grade: string): string => `${/^(?:8|11|18)-/.test(grade) ? "an" : "a"} ${grade}`;

/** A target of nitrogen per area. */
export const nitrogenTarget = (draw: Draw, us: boolean): number =>
  us ? draw.step(0.5, 1, 0.05) : draw.step(25, 50, 5);
