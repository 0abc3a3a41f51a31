export { type CleanPositions, cleanPositions, type DroppedPosition } from "./clean-positions.js";
export {
  type GeodesicArea,
  type GeoFeature,
  type GeoMultiPolygon,
  type GeoPolygon,
  geodesicArea,
} from "./geodesic-area.js";
