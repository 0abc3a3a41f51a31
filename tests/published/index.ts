import { calendarChecks } from "./calendar.js";
import type { LeftOut, PublishedCheck } from "./check.js";
import { indicatorChecks } from "./indicator.js";
import { intervalChecks, intervalLeftOut } from "./interval.js";
import { limitChecks } from "./limits.js";
import {
  moreIntervalChecks,
  moreSoilChecks,
  moreSpreadChecks,
  moreStandChecks,
  moreWaterChecks,
} from "./more-grounds.js";
import { moreNutrientChecks, moreSprayChecks, moreTankChecks } from "./more-mixtures.js";
import { numericChecks } from "./numeric.js";
import { nutrientChecks, nutrientLeftOut } from "./nutrient.js";
import { nutrientBulletinChecks } from "./nutrient-bulletins.js";
import { nutrientInjectionChecks, nutrientInjectionLeftOut } from "./nutrient-injection.js";
import { nutrientLiquidCostChecks } from "./nutrient-liquids-cost.js";
import { nutrientRateChecks, nutrientRateLeftOut } from "./nutrient-rates.js";
import { nutrientSaltChecks, nutrientSaltLeftOut } from "./nutrient-salt.js";
import { nutrientSeasonChecks, nutrientSeasonLeftOut } from "./nutrient-season.js";
import { nutrientWorkedChecks } from "./nutrient-worked.js";
import { pestChecks } from "./pest.js";
import { planChecks, planLeftOut } from "./plan.js";
import { priceChecks } from "./price.js";
import { quantityChecks } from "./quantity.js";
import { rotationChecks } from "./rotation.js";
import { seedTableChecks } from "./seed-table.js";
import { siteChecks, siteLeftOut } from "./site.js";
import { siteFieldChecks } from "./site-field.js";
import { siteWorkedChecks } from "./site-worked.js";
import { soilCoreChecks } from "./soil-core.js";
import { soilLimeChecks } from "./soil-lime.js";
import { soilTestChecks } from "./soil-test.js";
import { soilWaterChecks } from "./soil-water.js";
import { sprayChecks, sprayLeftOut } from "./spray.js";
import { sprayActiveChecks } from "./spray-active.js";
import { sprayBulletinChecks } from "./spray-bulletins.js";
import { sprayNozzleChecks } from "./spray-nozzle.js";
import { spreadLeftOut, spreadReadChecks } from "./spread.js";
import { spreadDerivedChecks } from "./spread-derived.js";
import { spreadWorkedChecks } from "./spread-worked.js";
import { mowingChecks } from "./stand-mowing.js";
import { plantingChecks } from "./stand-planting.js";
import { seedChecks, seedLeftOut } from "./stand-seed.js";
import { turfWorkChecks } from "./stand-work.js";
import { tankChecks, tankLeftOut } from "./tank.js";
import { tankActiveChecks, tankActiveLeftOut } from "./tank-active.js";
import { tankBulletinChecks } from "./tank-bulletins.js";
import { tankJarRinseChecks, tankJarRinseLeftOut } from "./tank-jar-rinse.js";
import { tankOrderChecks, tankOrderLeftOut } from "./tank-order.js";
import { tankWaterChecks, tankWaterLeftOut } from "./tank-water.js";
import { taughtSiteChecks, taughtSoilChecks, taughtSprayChecks } from "./taught.js";
import { textbookSoilChecks, textbookWaterChecks } from "./textbook-irrigation.js";
import { waterChecks } from "./water.js";
import { waterFao56Checks } from "./water-fao56.js";
import { waterRunoffChecks } from "./water-runoff.js";
import { waterSupplyChecks } from "./water-supply.js";
import { waterTurfChecks, waterTurfLeftOut } from "./water-turf.js";
import { waterWorkedChecks } from "./water-worked.js";
import { weatherChecks } from "./weather.js";
import { deicingChecks, pumpChecks } from "./winter-and-pump.js";

/** Every published check, by room. */
export const allChecks: Readonly<Record<string, readonly PublishedCheck[]>> = {
  quantity: quantityChecks,
  numeric: numericChecks,
  calendar: calendarChecks,
  interval: [...intervalChecks, ...moreIntervalChecks],
  nutrient: [
    ...nutrientChecks,
    ...nutrientRateChecks,
    ...nutrientLiquidCostChecks,
    ...nutrientSeasonChecks,
    ...nutrientSaltChecks,
    ...nutrientInjectionChecks,
    ...nutrientWorkedChecks,
    ...nutrientBulletinChecks,
    ...moreNutrientChecks,
  ],
  indicator: indicatorChecks,
  pest: pestChecks,
  price: priceChecks,
  plan: [...planChecks, ...limitChecks, ...rotationChecks],
  site: [...siteChecks, ...siteWorkedChecks, ...siteFieldChecks, ...taughtSiteChecks],
  soil: [
    ...soilLimeChecks,
    ...soilTestChecks,
    ...soilWaterChecks,
    ...moreSoilChecks,
    ...taughtSoilChecks,
    ...soilCoreChecks,
    ...textbookSoilChecks,
  ],
  spray: [
    ...sprayChecks,
    ...sprayActiveChecks,
    ...sprayNozzleChecks,
    ...sprayBulletinChecks,
    ...pumpChecks,
    ...moreSprayChecks,
    ...taughtSprayChecks,
  ],
  spread: [
    ...spreadReadChecks,
    ...spreadDerivedChecks,
    ...spreadWorkedChecks,
    ...deicingChecks,
    ...moreSpreadChecks,
  ],
  stand: [
    ...mowingChecks,
    ...seedChecks,
    ...plantingChecks,
    ...turfWorkChecks,
    ...seedTableChecks,
    ...moreStandChecks,
  ],
  weather: weatherChecks,
  tank: [
    ...tankChecks,
    ...tankOrderChecks,
    ...tankWaterChecks,
    ...tankJarRinseChecks,
    ...tankActiveChecks,
    ...tankBulletinChecks,
    ...moreTankChecks,
  ],
  water: [
    ...waterChecks,
    ...waterTurfChecks,
    ...waterFao56Checks,
    ...waterWorkedChecks,
    ...waterSupplyChecks,
    ...waterRunoffChecks,
    ...textbookWaterChecks,
    ...moreWaterChecks,
  ],
};

/** Every published example that is left out, by room. */
export const allLeftOut: Readonly<Record<string, readonly LeftOut[]>> = {
  interval: intervalLeftOut,
  nutrient: [
    ...nutrientLeftOut,
    ...nutrientRateLeftOut,
    ...nutrientSeasonLeftOut,
    ...nutrientSaltLeftOut,
    ...nutrientInjectionLeftOut,
  ],
  plan: planLeftOut,
  site: siteLeftOut,
  spray: sprayLeftOut,
  spread: spreadLeftOut,
  stand: seedLeftOut,
  tank: [
    ...tankLeftOut,
    ...tankOrderLeftOut,
    ...tankWaterLeftOut,
    ...tankJarRinseLeftOut,
    ...tankActiveLeftOut,
  ],
  water: waterTurfLeftOut,
};
