import type { Slope } from "../slopes/read-slope.js";

/** A number in a unit, as it stands in a JSON file; a quantity is one too. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
  readonly of?: string;
}

interface Described {
  /** What people on the site call it. */
  readonly name?: string;
  /**
   * The slope of the ground, the same over the whole shape: a text such as `"3:1"`, `"12 %"`, `"level"`, or a
   * number in a unit. Needs `measured`, but for a plan area, which says so itself.
   */
  readonly slope?: Measure | Slope;
  /**
   * Where the measures were taken: along the `"ground"` with a tape or a wheel, or on a `"plan"`, as a map or an
   * aerial image shows it. Needed where there is a slope.
   */
  readonly measured?: "ground" | "plan";
}

/**
 * One shape of a site, as plain JSON: the shape by name, and its measures.
 *
 * Each shape takes the measures of the formula beside it. `"measured"` is an area that is known already:
 * from a map, a GPS walk or an earlier job; one of tag `plan` needs the slope of the ground beside it.
 */
export type SiteShape = Described &
  (
    | { readonly shape: "measured"; readonly area: Measure }
    /** `squareArea` */
    | { readonly shape: "square"; readonly side: Measure }
    /** `rectangleArea` */
    | { readonly shape: "rectangle"; readonly length: Measure; readonly width: Measure }
    /** `parallelogramArea` */
    | { readonly shape: "parallelogram"; readonly base: Measure; readonly height: Measure }
    /** `triangleArea` */
    | { readonly shape: "triangle"; readonly base: Measure; readonly height: Measure }
    /** `triangleAreaFromSides` */
    | { readonly shape: "triangle from sides"; readonly a: Measure; readonly b: Measure; readonly c: Measure }
    /** `trapezoidArea` */
    | { readonly shape: "trapezoid"; readonly a: Measure; readonly b: Measure; readonly height: Measure }
    /** `quadrilateralArea`: two heights, or four sides */
    | {
        readonly shape: "quadrilateral";
        readonly diagonal: Measure;
        readonly height1?: Measure;
        readonly height2?: Measure;
        readonly a?: Measure;
        readonly b?: Measure;
        readonly c?: Measure;
        readonly d?: Measure;
      }
    /** `circleArea`: exactly one of the three */
    | {
        readonly shape: "circle";
        readonly radius?: Measure;
        readonly diameter?: Measure;
        readonly circumference?: Measure;
      }
    /** `ellipseArea` */
    | { readonly shape: "ellipse"; readonly length: Measure; readonly width: Measure }
    /** `stadiumArea`: `length` over all, or `straight` */
    | {
        readonly shape: "stadium";
        readonly width: Measure;
        readonly length?: Measure;
        readonly straight?: Measure;
      }
    /** `sectorArea` */
    | { readonly shape: "sector"; readonly radius: Measure; readonly angle: Measure }
    /** `segmentArea`: chord and height, or radius and angle */
    | {
        readonly shape: "segment";
        readonly chord?: Measure;
        readonly height?: Measure;
        readonly radius?: Measure;
        readonly angle?: Measure;
      }
    /** `annulusArea`: two radii, two diameters, or a diameter and the width */
    | {
        readonly shape: "annulus";
        readonly outerRadius?: Measure;
        readonly innerRadius?: Measure;
        readonly outerDiameter?: Measure;
        readonly innerDiameter?: Measure;
        readonly width?: Measure;
      }
    /** `polygonArea`: corners in order, as pairs of numbers of one unit of length */
    | {
        readonly shape: "polygon";
        readonly points: readonly (readonly [x: number, y: number])[];
        readonly unit: string;
        readonly holes?: readonly (readonly (readonly [x: number, y: number])[])[];
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
    /** `radialArea`: from one point, the angle and the distance of each corner */
    | {
        readonly shape: "radial";
        readonly rays: readonly { readonly angle: Measure; readonly distance: Measure }[];
      }
  );
