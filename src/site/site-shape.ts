/** A number in a unit, as it stands in a JSON file; a quantity is one too. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
  readonly of?: string;
}

interface Named {
  /** What people on the site call it. */
  readonly name?: string;
}

/**
 * One shape of a site, as plain JSON: the shape by name, and its measures.
 *
 * Each shape takes the measures of the formula beside it. `"measured"` is an area that is known already:
 * from a map, a GPS walk or an earlier job.
 */
export type SiteShape = Named &
  (
    | { readonly shape: "measured"; readonly area: Measure }
    /** `rectangleArea` */
    | { readonly shape: "rectangle"; readonly length: Measure; readonly width: Measure }
    /** `triangleArea` */
    | { readonly shape: "triangle"; readonly base: Measure; readonly height: Measure }
    /** `triangleAreaFromSides` */
    | { readonly shape: "triangle from sides"; readonly a: Measure; readonly b: Measure; readonly c: Measure }
    /** `trapezoidArea` */
    | { readonly shape: "trapezoid"; readonly a: Measure; readonly b: Measure; readonly height: Measure }
    /** `circleArea`: exactly one of the three */
    | {
        readonly shape: "circle";
        readonly radius?: Measure;
        readonly diameter?: Measure;
        readonly circumference?: Measure;
      }
    /** `ellipseArea` */
    | { readonly shape: "ellipse"; readonly length: Measure; readonly width: Measure }
    /** `sectorArea` */
    | { readonly shape: "sector"; readonly radius: Measure; readonly angle: Measure }
    /** `annulusArea` */
    | { readonly shape: "annulus"; readonly outerRadius: Measure; readonly innerRadius: Measure }
    /** `polygonArea`: corners in order, as pairs of numbers of one unit of length */
    | {
        readonly shape: "polygon";
        readonly points: readonly (readonly [x: number, y: number])[];
        readonly unit: string;
      }
    /** `offsetArea`: `widths`, or `left` and `right` */
    | {
        readonly shape: "offsets";
        readonly spacing: Measure | readonly Measure[];
        readonly widths?: readonly Measure[];
        readonly left?: readonly Measure[];
        readonly right?: readonly Measure[];
        readonly rule?: "trapezoidal" | "simpson" | "average ordinate";
      }
    /** `averageRadiusArea` */
    | {
        readonly shape: "average radius";
        readonly radii: readonly Measure[];
        readonly rule?: "mean radius" | "mean square";
      }
  );
