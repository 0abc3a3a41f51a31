import { nutrientElements } from "../application/nutrient-elements.js";
import { nutrientLiquids } from "../application/nutrient-liquids.js";
import { nutrientRates } from "../application/nutrient-rates.js";
import { saltAndLiquids } from "../application/salt-index.js";
import { sprayBoom } from "../application/spray-boom.js";
import { nozzles, sprayCalibrations } from "../application/spray-nozzle.js";
import { sprayVolume } from "../application/spray-volume.js";
import { spreading } from "../application/spread.js";
import { spreadPasses } from "../application/spread-passes.js";
import { tankMixes } from "../application/tank.js";
import { amountsForArea, packages } from "../application/tank-amounts.js";
import { activeIngredient, tankWater } from "../application/tank-water.js";
import type { FormulaSpec } from "../entry/formula.js";
import { decay, humidAir, moistAir, soilBases } from "../ground/air-and-decay.js";
import { money, stock } from "../ground/money.js";
import { rootZone } from "../ground/root-zone.js";
import { siteGround } from "../ground/site-ground.js";
import { siteAreas, siteLengths } from "../ground/site-lengths.js";
import { siteMaterials } from "../ground/site-materials.js";
import { siteShapes } from "../ground/site-shapes.js";
import { soilCores } from "../ground/soil-core.js";
import { mowing } from "../ground/stand.js";
import { planting } from "../ground/stand-planting.js";
import { clippings, turfWork } from "../ground/stand-work.js";
import { waterDepths } from "../ground/water-depth.js";
import { waterSupply, waterUse } from "../ground/water-use.js";
import { diseaseWeather, growth, release } from "../soil-and-air/growth.js";
import { catchCans, indicators, readings } from "../soil-and-air/readings.js";
import { saltyWater, sulfateForHardness } from "../soil-and-air/salty-water.js";
import { limeAndSulfur, nutrientInLeaf, soilContents } from "../soil-and-air/soil-report.js";
import { lightOfDay, radiationOfDay, sunByDate, windNearGround } from "../soil-and-air/sun-and-wind.js";

/** The formulas by room, in the order of the chapters of a course. */
export const formulasByRoom = (): Readonly<Record<string, readonly FormulaSpec[]>> => ({
  spray: [...sprayVolume, ...sprayBoom, ...nozzles, ...sprayCalibrations, ...activeIngredient],
  nutrient: [
    ...nutrientRates,
    ...nutrientElements,
    ...nutrientLiquids,
    ...packages,
    ...saltAndLiquids,
    ...release,
  ],
  spread: [...spreading, ...spreadPasses],
  site: [...siteShapes, ...siteLengths, ...siteAreas, ...siteGround, ...siteMaterials],
  tank: [...amountsForArea, ...tankMixes, ...tankWater, ...sulfateForHardness],
  water: [
    ...waterDepths,
    ...catchCans,
    ...rootZone,
    ...waterUse,
    ...waterSupply,
    ...moistAir,
    ...sunByDate,
    ...radiationOfDay,
  ],
  stand: [...mowing, ...clippings, ...planting, ...turfWork],
  price: money,
  plan: stock,
  soil: [...soilBases, ...soilCores, ...soilContents, ...nutrientInLeaf, ...limeAndSulfur, ...saltyWater],
  interval: [...growth, ...decay],
  weather: [...humidAir, ...lightOfDay, ...windNearGround],
  pest: diseaseWeather,
  indicator: indicators,
  numeric: readings,
});
