import { impactQuotient, leachingScore } from "../../src/indicator/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const room = "indicator";
const ratings = {
  chronic: 2,
  dermal: 3,
  bird: 1.5,
  fish: 4,
  bee: 2.5,
  beneficial: 3.5,
  soilHalfLife: 1,
  plantHalfLife: 4.5,
  systemicity: 2.2,
  leaching: 1.7,
  surfaceLoss: 3.2,
};
/** `EIQ = {C[(DT*5)+(DT*P)] + [(C*((S+P)/2)*SY)+(L)] + [(F*R)+(D*((S+P)/2)*3)+(Z*P*3)+(B*P*5)]}/3`, with the letters of its author. */
const byHand = (): { readonly worker: number; readonly consumer: number; readonly ecology: number } => {
  const { chronic: C, dermal: DT, bird: D, fish: F, bee: Z, beneficial: B } = ratings;
  const { soilHalfLife: S, plantHalfLife: P, systemicity: SY, leaching: L, surfaceLoss: R } = ratings;
  return {
    worker: C * (DT * 5 + DT * P),
    consumer: C * ((S + P) / 2) * SY + L,
    ecology: F * R + D * ((S + P) / 2) * 3 + Z * P * 3 + B * P * 5,
  };
};
const found = () => impactQuotient({ ratings, source: "invented" });
const score = (days: number, koc: number) =>
  leachingScore({ halfLife: quantity(days, "d"), koc: quantity(koc, "mL/g") });
/** At a Koc of 100 mL/g the score is twice the logarithm of the half-life. */
const halfLifeFor = (value: number): number => 10 ** (value / 2);

/** Scores, by their equations in their authors' letters. */
export const indicatorConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      source: "J. Kovach et al., New York's Food and Life Sciences Bulletin 139 (1992), the EIQ equation",
    },
    [
      ["EIQ, farm worker", byHand().worker, () => found().worker],
      ["EIQ, consumer and groundwater", byHand().consumer, () => found().consumer],
      ["EIQ, ecology", byHand().ecology, () => found().ecology],
      ["EIQ", (byHand().worker + byHand().consumer + byHand().ecology) / 3, () => found().quotient],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "D. I. Gustafson, Environmental Toxicology and Chemistry 8 (1989), 339-357: log10(t) (4 - log10(Koc)), 1.8 and 2.8",
    },
    [
      ["score of 100 days and a Koc of 10", 2 * (4 - 1), () => score(100, 10).score],
      [
        "score from which it is moderate",
        1.8,
        () =>
          2 *
          Math.log10(
            edge((d) => ["low", "extremely low"].includes(score(d, 100).potential), 1.5, halfLifeFor(2.4)),
          ),
      ],
      [
        "score above which it is high",
        2.8,
        () => 2 * Math.log10(edge((d) => score(d, 100).potential === "high", 1000, halfLifeFor(2))),
      ],
      [
        "Koc at which the equation turns, mL/g: 10 to the 4",
        10 ** 4,
        () =>
          edge(
            (koc) => score(0.5, koc).findings.some(({ code }) => code === "leaching/score-turns"),
            50_000,
            100,
          ),
      ],
    ],
  ),
];
