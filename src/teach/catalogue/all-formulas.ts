import { nutrientLiquids } from "../application/nutrient-liquids.js";
import { nutrientRates } from "../application/nutrient-rates.js";
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
import { money } from "../ground/money.js";
import { siteGround } from "../ground/site-ground.js";
import { siteLengths } from "../ground/site-lengths.js";
import { siteMaterials } from "../ground/site-materials.js";
import { siteShapes } from "../ground/site-shapes.js";
import { mowing } from "../ground/stand.js";
import { planting } from "../ground/stand-planting.js";
import { waterDepths } from "../ground/water-depth.js";
import { waterSupply, waterUse } from "../ground/water-use.js";

/** The formulas by room, in the order of the chapters of a course. */
export const formulasByRoom = (): Readonly<Record<string, readonly FormulaSpec[]>> => ({
  spray: [...sprayVolume, ...sprayBoom, ...nozzles, ...sprayCalibrations, ...activeIngredient],
  nutrient: [...nutrientRates, ...nutrientLiquids, ...packages],
  spread: [...spreading, ...spreadPasses],
  site: [...siteShapes, ...siteLengths, ...siteGround, ...siteMaterials],
  tank: [...amountsForArea, ...tankMixes, ...tankWater],
  water: [...waterDepths, ...waterUse, ...waterSupply, ...moistAir],
  stand: [...mowing, ...planting],
  price: money,
  soil: soilBases,
  interval: decay,
  weather: humidAir,
});
