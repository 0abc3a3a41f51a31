import type { Dimension } from "../../../src/quantity/index.js";

interface Field {
  readonly dimension: Dimension;
  readonly of?: string;
}

/** The fields of a form that the typed texts are typed into. */
export const fields: Readonly<Record<string, Field>> = {
  "nitrogen rate": { dimension: "mass/area", of: "N" },
  "dry rate": { dimension: "mass/area", of: "product" },
  "liquid rate": { dimension: "volume/area", of: "product" },
  "spray volume": { dimension: "volume/area", of: "spray" },
  area: { dimension: "area", of: "none" },
  length: { dimension: "length", of: "none" },
  liquid: { dimension: "volume", of: "product" },
  water: { dimension: "volume", of: "water" },
  weight: { dimension: "mass", of: "product" },
  temperature: { dimension: "temperature" },
  time: { dimension: "time" },
  pressure: { dimension: "pressure" },
  speed: { dimension: "length/time" },
  share: { dimension: "1" },
  flow: { dimension: "volume/time" },
  concentration: { dimension: "volume/volume", of: "product/spray" },
  density: { dimension: "mass/volume", of: "product" },
  active: { dimension: "mass/volume", of: "ai/product" },
  content: { dimension: "mass/mass", of: "N/product" },
  money: { dimension: "money:USD" },
  price: { dimension: "money:USD/mass", of: "none/product" },
  count: { dimension: "count" },
  conductivity: { dimension: "conductivity" },
  "seed rate": { dimension: "mass/area", of: "seed" },
  "depth per time": { dimension: "length/time" },
  "water test": { dimension: "mass/volume", of: "NO3" },
  difference: { dimension: "temperature difference" },
  "seed dressing": { dimension: "volume/mass", of: "product/seed" },
  "active rate": { dimension: "mass/area", of: "ai" },
  slope: { dimension: "length/length" },
};
