// The flow of tips by size and pressure.
import { axisY, lineY, ruleX, ruleY, text } from "@observablehq/plot";
import { flowAtPressure, quantity, ratedFlow } from "../../src/index.js";
import { type Figure, first, ink, second, soft } from "./frame.js";

const sizes = ["015", "02", "025", "03", "04", "05", "06", "08"] as const;
const [lowest, highest] = [quantity(15, "psi"), quantity(90, "psi")];

/** Flow against pressure of the sizes from 015 to 08, from their flow at 40 psi. */
export const nozzleChart = (): Figure => {
  const rows = sizes.flatMap((size) => {
    const tip = { ...ratedFlow(size, "40 psi"), lowest, highest };
    return Array.from({ length: 76 }, (_, i) => {
      const psi = 15 + i;
      const flow = flowAtPressure(
        { flow: tip.flow, pressure: tip.pressure, lowest, highest },
        quantity(psi, "psi"),
      );
      return { size, psi, flow: flow.in("gal/min") };
    });
  });
  const perGallon = quantity(1, "gal/min", "water").in("L/min");
  return {
    name: "nozzle-chart",
    title: "Flow of nozzle tips against pressure, by size",
    description:
      "Eight curves, one for each size from 015 to 08, from 15 to 90 psi. Each grows with the square root of the pressure: size 04 gives 0.4 gallons a minute at 40 psi, 0.25 at 15 psi and 0.6 at 90 psi. The right axis has liters a minute.",
    options: {
      height: 400,
      marginRight: 104,
      x: { label: "pressure, psi →", domain: [15, 90] },
      y: { label: "↑ gal/min", grid: true, domain: [0, 1.3] },
      marks: [
        axisY({ anchor: "left" }),
        axisY({
          anchor: "right",
          label: "L/min ↑",
          ticks: [0, 1, 2, 3, 4].map((liters) => liters / perGallon),
          tickFormat: (gallons: number) => (gallons * perGallon).toFixed(0),
          dx: 46,
          color: soft,
        }),
        ruleX([40], { stroke: second, strokeDasharray: "6 4" }),
        text([40], {
          x: (psi: number) => psi,
          y: 1.25,
          text: () => "rated at 40 psi",
          dx: 6,
          textAnchor: "start",
          fill: second,
        }),
        lineY(rows, { x: "psi", y: "flow", z: "size", stroke: first, strokeWidth: 2 }),
        text(
          rows.filter(({ psi }) => psi === 90),
          { x: "psi", y: "flow", text: "size", dx: 8, textAnchor: "start", fill: ink },
        ),
        ruleY([0], { stroke: ink }),
      ],
    },
  };
};
