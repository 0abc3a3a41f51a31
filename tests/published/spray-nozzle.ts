import { nozzleWear, pulseWidth, pumpCapacity, quantity, readTip } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const slides = {
  title: "Nozzles and pumps (teaching slides)",
  publisher: "unnamed extension slide set",
  url: "http://slideplayer.com/slide/4179859/",
} as const;

/** Examples of single nozzles, pulsed nozzles and pumps that were read after the first collections. */
export const sprayNozzleChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-145",
    kind: "worked example",
    formulas: ["pumpCapacity"],
    source: {
      title: "GrowNotes, Spray Application Manual, video on pump capacity",
      publisher: "Grains Research and Development Corporation, Australia",
      where: "as spoken: 6,500 L, 3 % a minute; 72 nozzles at a liter a minute",
      url: "https://grdc.com.au/resources-and-publications/grownotes/technical-manuals/spray-application-manual/spray-manual-videos?current_result_page=9&mode=results&results_per_page=6",
    },
    reached: "read",
    given: "a tank of 6,500 L, 3 % of it moved each minute; 72 nozzles of 1 L/min",
    answers: [
      { of: "L/min of agitation, about", printed: 200, to: 10 },
      { of: "L/min to the boom, about", printed: 70, to: 10 },
      { of: "the pump of 250 L/min is under capacity (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => {
      const need = pumpCapacity({
        boom: quantity(1, "L/min", "spray").times(72),
        tank: quantity(6500, "L", "spray"),
        agitation: quantity(3, "%"),
        reserve: quantity(0, "%"),
        pump: quantity(250, "L/min", "spray"),
      });
      return [need.agitation.in("L/min"), need.boom.in("L/min"), need.findings.length];
    },
  },
  {
    entry: "spray-146",
    kind: "worked example",
    formulas: ["pulseWidth"],
    source: {
      title: "Nozzle selection for PWM sprayers, Circular 1305",
      publisher: "University of Georgia Extension",
      where: "Duty Cycle and Ground Speed",
    },
    reached: "read",
    given: "a nozzle at a duty of 20 %: a fifth of its full flow",
    answers: [{ of: "% duty at a fifth of the full flow", printed: 20, to: 1 }],
    compute: () => [
      // 5940 gal/min is 1 gal/acre on 1 in at 1 mph: a fifth of 5 gal/min is 1, at 4 mph, 20 in and 74.25 gal/acre.
      pulseWidth({
        full: quantity(5, "gal/min", "spray"),
        applicationVolume: quantity(5940 / 80, "gal/acre", "spray"),
        speed: quantity(4, "mi/h"),
        width: quantity(20, "in"),
      }).duty.in("%"),
    ],
  },
  {
    entry: "spray-147",
    kind: "transcription",
    formulas: ["nozzleWear"],
    source: { ...slides, where: "slide 17: compare with a new tip, replace above 10 %" },
    reached: "read",
    given: "flows 10 and 11 % above that of a new tip",
    answers: [
      { of: "replace at 10 % (1 = yes)", printed: 0, to: 1 },
      { of: "replace at 11 % (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () =>
      [110, 111].map((percent) => {
        const { verdict } = nozzleWear({
          caught: quantity(percent, "mL", "water"),
          time: quantity(1, "min"),
          rated: quantity(0.1, "L/min", "water"),
        });
        return verdict === "replace" ? 1 : 0;
      }),
  },
  {
    entry: "spray-148",
    kind: "transcription",
    formulas: ["readTip"],
    source: { ...slides, where: "slide 16: 8002 flat fan, 80 degrees at 40 psi" },
    reached: "read",
    given: "a tip stamped 8002",
    answers: [
      { of: "degrees", printed: 80, to: 1 },
      { of: "psi", printed: 40, to: 1 },
    ],
    compute: () => {
      const tip = readTip("8002");
      return [tip.angle?.in("deg") ?? Number.NaN, tip.pressure.in("psi")];
    },
  },
];
