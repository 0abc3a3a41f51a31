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
export { type PaceCalibration, paceCalibration, pacedDistance } from "./survey/pacing.js";
export { type PlanePoint, polygonArea } from "./survey/polygon-area.js";
export { type Ray, radialArea } from "./survey/radial-area.js";

// slopes: how much longer and larger the ground is than its plan.
export type { Slope } from "./slopes/read-slope.js";
export { groundLength, planLength } from "./slopes/slope-lengths.js";
export { type SlopeFigures, slopeOf } from "./slopes/slope-of.js";
export { planArea, surfaceArea } from "./slopes/surface-area.js";

// sites: what a whole site comes to, less what is cut out, and how sure that is.
export { areaEstimate, siteAreaEstimate, type TapeError } from "./sites/area-estimate.js";
export { areaOfShape } from "./sites/area-of-shape.js";
export { type AreaPart, type NamedArea, netArea, type SiteArea } from "./sites/net-area.js";
export { type SiteDescription, siteArea } from "./sites/site-area.js";
export type { Measure, SiteShape } from "./sites/site-shape.js";

// edges: how long the way around is, what passes around cover, and what a buffer takes away.
export { type BufferArea, bufferArea, type BufferEdge } from "./edges/buffer-area.js";
export type { EdgeShape, Outline } from "./edges/outlines.js";
export { type PassesAround, passesAround } from "./edges/passes-around.js";
export { perimeter } from "./edges/perimeter.js";
export { type ReducedBuffer, reducedBuffer } from "./edges/reduced-buffer.js";

// volumes: what a tank, a trench or a containment holds, by the dip stick too.
export {
  type Containment,
  containment,
  type ContainmentRule,
  containmentRules,
} from "./volumes/containment.js";
export { cuboidVolume } from "./volumes/cuboid-volume.js";
export { cylinderVolume } from "./volumes/cylinder-volume.js";
export { type DipTable, dipTable, dipTableText } from "./volumes/dip-table.js";
export { tankCapacity, tankContents, tankDepth } from "./volumes/tank-contents.js";
export type { Tank } from "./volumes/tank-shapes.js";

// ponds: how much water lies in a pond, and what doses it.
export { type CopperSulfateConcentration, copperSulfateConcentration } from "./ponds/copper-sulfate.js";
export { type MeanDepth, meanDepth } from "./ponds/mean-depth.js";
export { type ContourRule, contourVolume, pondVolume } from "./ponds/pond-volume.js";
export { type WaterDose, waterDose } from "./ponds/water-dose.js";

// materials: how much loose material covers ground, and what it weighs.
export {
  type BulkDensity,
  type BulkDensityInput,
  dryBulkDensity,
  type LooseMaterial,
  looseMaterials,
  moistBulkDensity,
  type MoistureBasis,
} from "./materials/bulk-density.js";
export { coverArea, coverDepth, coverVolume } from "./materials/cover-volume.js";
export { type LayerMaterial, layerMaterial } from "./materials/layer-material.js";
export { type MixPart, type MixPartWeight, mixWeights, type MixWeights } from "./materials/mix-weights.js";
