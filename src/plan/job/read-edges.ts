import type { ApplicationFacts } from "../../limits/index.js";
import { type Checks, fail, outOfRange } from "../../quantity/index.js";
import type { SiteShape } from "../../site/index.js";
import type { ReadSite } from "./read-site.js";
import type { ReadTreatment } from "./treatments.js";

/** How many edges a shape has that can be told by number; none where it has no corners in order. */
export const edgesOfShape = (shape: SiteShape): number =>
  shape.shape === "rectangle" || shape.shape === "square"
    ? 4
    : shape.shape === "polygon"
      ? shape.points.length
      : 0;

/** Whether the parts that facts name are parts of the site, and their edges are there; what is wrong goes to `problems`. */
const checkEdges = (facts: ApplicationFacts, path: string, site: ReadSite, problems: Checks): void => {
  const named = (part: string | undefined, at: string): void => {
    if (part === undefined || site.parts.has(part)) return;
    problems.run(() =>
      fail("missing", at, part, "the name of a part of the site", { choices: [...site.parts.keys()] }),
    );
  };
  facts.runoff?.forEach(({ part }, i) => {
    named(part, `${path}.runoff[${i}].part`);
  });
  facts.edges?.forEach(({ part, edges }, i) => {
    const at = `${path}.edges[${i}]`;
    named(part, `${at}.part`);
    if (edges === undefined || (part !== undefined && !site.parts.has(part))) return;
    const all = [...site.shapes.values()];
    const shape = part === undefined ? (new Set(all).size === 1 ? all[0] : undefined) : site.shapes.get(part);
    problems.run(() => {
      if (shape === undefined)
        return fail("missing", `${at}.part`, undefined, "the part these edges belong to");
      const count = edgesOfShape(shape);
      if (count === 0)
        return fail(
          "conflict",
          `${at}.edges`,
          shape.shape,
          "along: how long the edge is, for a part of this shape",
        );
      const wrong = edges.findIndex((edge) => edge >= count);
      return wrong < 0
        ? undefined
        : outOfRange(`${at}.edges[${wrong}]`, edges[wrong], { step: 1, min: 0, max: count - 1 });
    });
  });
};

/** The same of the facts of a job and of its treatments, where all of them could be read. */
export const checkAllEdges = (
  facts: ApplicationFacts,
  treatments: readonly ReadTreatment[],
  site: ReadSite | undefined,
  problems: Checks,
): void => {
  if (site === undefined || problems.count() > 0) return;
  checkEdges(facts, "facts", site, problems);
  for (const { facts: own, path } of treatments) checkEdges(own, `${path}.facts`, site, problems);
};
