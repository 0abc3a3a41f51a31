export { isAsPrinted } from "./check.js";

import { calciumTableConstants } from "./calcium-table.js";
import { calendarConstants } from "./calendar.js";
import type { ConstantCheck } from "./check.js";
import { confidenceConstants } from "./confidence.js";
import { degreeDayConstants } from "./degree-days.js";
import { eventWindowConstants } from "./event-windows.js";
import { imperialChecks } from "./imperial.js";
import { indicatorConstants } from "./indicator.js";
import { intervalConstants } from "./interval.js";
import { lateConstants } from "./late-figures.js";
import { limeTableConstants } from "./lime-tables.js";
import { limitConstants } from "./limits.js";
import { nozzleDerivedConstants } from "./nozzle-derived.js";
import { numericConstants } from "./numeric.js";
import { nutrientBoundConstants } from "./nutrient-bounds.js";
import { nutrientClassConstants } from "./nutrient-classes.js";
import { nutrientDerivedConstants } from "./nutrient-derived.js";
import { nutrientKineticConstants } from "./nutrient-kinetics.js";
import { nutrientLateConstants } from "./nutrient-late.js";
import { nutrientReleaseConstants } from "./nutrient-release.js";
import { nutrientTableConstants } from "./nutrient-tables.js";
import { pestConstants, priceConstants } from "./pest-price.js";
import { planConstants } from "./plan.js";
import { regulatorConstants } from "./regulators.js";
import { saltAcidityConstants } from "./salt-acidity.js";
import { siteConstants } from "./site.js";
import { siteDerivedConstants } from "./site-derived.js";
import { soilChemistryConstants } from "./soil-chemistry.js";
import { soilCoreConstants } from "./soil-core.js";
import { soilIntakeConstants } from "./soil-intake.js";
import { soilTableConstants } from "./soil-tables.js";
import { sprayConstants } from "./spray.js";
import { sprayDerivedConstants } from "./spray-derived.js";
import { spreadConstants } from "./spread.js";
import { spreadPatternConstants } from "./spread-patterns.js";
import { standConstants } from "./stand.js";
import { standDerivedConstants } from "./stand-derived.js";
import { tankConstants } from "./tank.js";
import { tankDerivedConstants } from "./tank-derived.js";
import { tankFactConstants } from "./tank-facts.js";
import { tankWaterConstants } from "./tank-water.js";
import { teachConstants } from "./teach.js";
import { unitChecks } from "./units.js";
import { waterConstants } from "./water.js";
import { waterReferenceConstants } from "./water-reference.js";
import { waterRunoffConstants } from "./water-runoff.js";
import { weatherConstants } from "./weather.js";
import { wetBulbConstants } from "./wet-bulb.js";

/** Every figure that is transcribed a second time, by room in a file of its own. */
export const constantChecks: readonly ConstantCheck[] = [
  ...numericConstants,
  ...unitChecks,
  ...imperialChecks,
  ...calendarConstants,
  ...indicatorConstants,
  ...intervalConstants,
  ...eventWindowConstants,
  ...regulatorConstants,
  ...degreeDayConstants,
  ...wetBulbConstants,
  ...saltAcidityConstants,
  ...nutrientTableConstants,
  ...nutrientClassConstants,
  ...nutrientDerivedConstants,
  ...nutrientBoundConstants,
  ...nutrientKineticConstants,
  ...nutrientLateConstants,
  ...nutrientReleaseConstants,
  ...tankWaterConstants,
  ...nozzleDerivedConstants,
  ...spreadPatternConstants,
  ...sprayConstants,
  ...sprayDerivedConstants,
  ...spreadConstants,
  ...tankConstants,
  ...tankDerivedConstants,
  ...tankFactConstants,
  ...confidenceConstants,
  ...limeTableConstants,
  ...limitConstants,
  ...planConstants,
  ...calciumTableConstants,
  ...soilChemistryConstants,
  ...soilTableConstants,
  ...soilCoreConstants,
  ...soilIntakeConstants,
  ...waterConstants,
  ...weatherConstants,
  ...teachConstants,
  ...siteConstants,
  ...siteDerivedConstants,
  ...standConstants,
  ...standDerivedConstants,
  ...pestConstants,
  ...priceConstants,
  ...waterReferenceConstants,
  ...waterRunoffConstants,
  ...lateConstants,
];
