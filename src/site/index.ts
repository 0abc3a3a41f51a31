// From a tape, a compass or a map to areas and volumes.

// shapes: how large a plain shape is, and what length makes an area.
export { type Annulus, annulusArea } from "./shapes/annulus-area.js";
export { type Circle, circleArea, sectorArea } from "./shapes/circle-area.js";
export { ellipseArea } from "./shapes/ellipse-area.js";
export {
  annulusWidth,
  circleDiameter,
  ellipseLength,
  rectangleLength,
  squareSide,
  triangleHeight,
} from "./shapes/length-for-area.js";
export { type Quadrilateral, quadrilateralArea } from "./shapes/quadrilateral-area.js";
export { rectangleArea } from "./shapes/rectangle-area.js";
export { type Segment, segmentArea } from "./shapes/segment-area.js";
export { parallelogramArea, squareArea } from "./shapes/square-area.js";
export { type Stadium, stadiumArea } from "./shapes/stadium-area.js";
export { trapezoidArea } from "./shapes/trapezoid-area.js";
export { triangleArea, triangleAreaFromSides } from "./shapes/triangle-area.js";

// survey: how large an irregular shape is, from offsets, rays, coordinates or paces.
export { averageRadiusArea, type RadiusRule } from "./survey/average-radius-area.js";
export { type OffsetRule, type Offsets, offsetArea } from "./survey/offset-area.js";
export { type PlanePoint, polygonArea } from "./survey/polygon-area.js";
export { type Ray, radialArea } from "./survey/radial-area.js";

// slopes: how much longer and larger the ground is than its plan.
export type { Slope } from "./slopes/read-slope.js";
export { groundLength, planLength } from "./slopes/slope-lengths.js";
export { type SlopeFigures, slopeOf } from "./slopes/slope-of.js";
export { planArea, surfaceArea } from "./slopes/surface-area.js";

// sites: what a whole site comes to, less what is cut out, and how sure that is.
export { areaOfShape } from "./sites/area-of-shape.js";
export { type AreaPart, type NamedArea, netArea, type SiteArea } from "./sites/net-area.js";
export { type SiteDescription, siteArea } from "./sites/site-area.js";
export type { Measure, SiteShape } from "./sites/site-shape.js";

// volumes: what a tank, a trench or a containment holds, by the dip stick too.
export { cuboidVolume } from "./volumes/cuboid-volume.js";
export { cylinderVolume } from "./volumes/cylinder-volume.js";

// materials: how much loose material covers ground, and what it weighs.
export { coverArea, coverDepth, coverVolume } from "./materials/cover-volume.js";
