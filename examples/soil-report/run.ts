/**
 * A soil report turned into a plan, product rates and dates, from one job file. The report, the park and its products
 * are invented.
 */
import { readFileSync } from "node:fs";
import {
  type AmendmentConventions,
  type AmendmentSite,
  amendmentPlan,
  amendmentPlanText,
  type FertilizerInput,
  fertilizer,
  problemText,
  productRates,
  RatewrightError,
  type SeasonProgramInput,
  type SoilReport,
  seasonProgram,
} from "ratewright";

interface SoilJob {
  readonly report: SoilReport;
  readonly site: AmendmentSite;
  readonly conventions: AmendmentConventions;
  /** A product for each nutrient that may be needed. */
  readonly products: Readonly<Record<string, FertilizerInput>>;
  readonly season: Omit<SeasonProgramInput, "total">;
}

const job = JSON.parse(readFileSync(new URL("job.json", import.meta.url), "utf8")) as SoilJob;

try {
  const plan = amendmentPlan(job.report, job.site, job.conventions);
  const rates = productRates({
    steps: plan.targets.map((target) => ({
      target,
      product: fertilizer(job.products[target.of] as FertilizerInput),
    })),
  });
  const season = seasonProgram({ ...job.season, total: plan.nitrogen });
  if (process.argv.includes("--json")) {
    process.stdout.write(JSON.stringify({ plan, rates, season }, null, 2));
  } else {
    const lines = [
      amendmentPlanText(plan),
      "Products for the season",
      ...rates.steps.map(
        ({ product, nutrient, rate }) =>
          `  - ${product} for ${nutrient}: ${rate.in("lb/1000 ft2").toFixed(2)} lb/1000 ft2`,
      ),
      "",
      "Nitrogen by date",
      ...season.applications.map(
        ({ date, nitrogen }) => `  - ${date}: ${nitrogen.in("lb/1000 ft2").toFixed(2)} lb N/1000 ft2`,
      ),
    ];
    process.stdout.write(`${lines.join("\n")}\n`);
  }
} catch (error) {
  if (!(error instanceof RatewrightError)) throw error;
  process.stderr.write(`${error.problems.map(problemText).join("\n")}\n`);
  process.exitCode = 1;
}
