import type { QuizAnswer, QuizProblem } from "../../../src/teach/index.js";

// What learners write, as a trainer imagines it, with the verdict that a fair teacher gives.

const asked = (answer: QuizAnswer, units: "US" | "metric" = "US"): QuizProblem => ({
  type: "quiz-problem",
  version: 1,
  topic: "nutrient/product-rate",
  title: "A problem",
  level: 1,
  seed: 0,
  units,
  text: "How much? Answer as asked.",
  answer,
  steps: [],
  choices: [
    { letter: "A", text: answer.text },
    { letter: "B", text: "another", mistake: "one unit of area only" },
    { letter: "C", text: "a third", mistake: "units upside down" },
    { letter: "D", text: "a fourth", mistake: "forgot to convert" },
  ],
  letter: "A",
  mistakes: [],
});
const of = (
  value: number,
  unit: string,
  stuff: QuizAnswer["of"],
  decimals: number,
  text: string,
): QuizAnswer => ({
  value,
  unit,
  of: stuff,
  decimals,
  tolerance: 0.5 * 10 ** -decimals,
  text,
});
const whole = (value: number, one: string, many: string): QuizAnswer => ({
  ...of(value, "count", "none", 0, `${value} ${many}`),
  tolerance: 0,
  noun: [one, many],
});

const pounds = asked(of(12.5, "lb", "product", 1, "12.5 lb"));
const rate = asked(of(3.6, "lb/1000 ft2", "product", 1, "3.6 lb per 1,000 sq ft"));
const volume = asked(of(43.5, "gal/acre", "spray", 1, "43.5 gal per acre"));
const ounces = asked(of(6.4, "fl oz", "product", 1, "6.4 fl oz"));
const gallons = asked(of(3.5, "gal", "spray", 1, "3.5 gal"));
const area = asked(of(1250, "ft2", "none", 0, "1,250 sq ft"));
const bags = asked(whole(7, "bag", "bags"));
const speed = asked(of(3.4, "mi/h", "none", 1, "3.4 mph"));
const minutes = asked(of(45, "min", "none", 0, "45 minutes"));
const price = asked(of(18.5, "money:USD", "none", 2, "$18.50"));
const nitrogenPrice = asked(of(0.75, "money:USD/lb", "none", 2, "$0.75 per lb"));
const live = asked(of(74.8, "%", "none", 1, "74.8 %"));
const half = asked(of(0.5, "in", "none", 1, "0.5 inches"));
const heat = asked(of(14, "°F d", "none", 0, "14 °F degree-days"));
const bare = asked(of(8.4, "1", "none", 1, "8.4"));
const grubs = asked(of(37.2, "count/ft2", "none", 1, "37.2"));
const liters = asked(of(1.25, "L", "product", 2, "1.25 L"), "metric");
const hectare = asked(of(1250, "kg/ha", "product", 0, "1,250 kg per ha"), "metric");
const nitrogen = asked(of(0.9, "lb/1000 ft2", "N", 1, "0.9 lb per 1,000 sq ft"));
const pressure = asked(of(40, "psi", "none", 0, "40 psi"));

type Row = readonly [
  problem: QuizProblem,
  verdict: "right" | "close" | "wrong" | "unread",
  answers: readonly string[],
];

export const learnerAnswers: readonly Row[] = [
  [
    pounds,
    "right",
    [
      "12.5",
      "12.5 lb",
      "12.5lb",
      "12.5lbs",
      "12.5 lbs.",
      "12.5 pounds",
      "12.5#",
      "12.5 #",
      "12 1/2",
      "12-1/2 lb",
      "12 1/2#",
      "12½ lbs of fertilizer",
      "about 12.5 lb of product",
      "approx. 12.5 pounds",
      "~12.5",
      "≈ 12.5 lb",
      "= 12.5 lb",
      "12.50 lb",
      "It takes 12.5 pounds of 20-0-10",
      "I'd say 12.5 lb",
      "12.5 lb total",
      "answer: 12.5 lb",
      "twelve and a half pounds? 12.5",
      "12 lb 8 oz",
      "200 oz",
      "12.5 LB",
      "A",
      "a)",
      "A. 12.5 lb",
      "12.5 lb of granular product",
      "12.5 lb fert",
    ],
  ],
  [
    pounds,
    "wrong",
    ["12.5 lb of N", "12.5 gal", "125 lb", "1.25 lb", "B", "12.5 lb/1000", "-12.5 lb", "30 lb"],
  ],
  [pounds, "close", ["12.4 lb", "12.6#"]],
  [pounds, "unread", ["", "dunno", "?", "12 or 13 lb", "lb"]],
  [
    rate,
    "right",
    [
      "3.6",
      "3.6 lb/1000",
      "3.6#/1000",
      "3.6 lb/M",
      "3.6 lbs per 1000 sq ft",
      "3.6 lb/1,000 ft2",
      "3.6 lb per 1000 sq. ft.",
      "about 3.6 lb of product per thousand",
      "3.6 pounds per thousand square feet",
      "3.6 lb per K",
      "3.6 lbs/1000sqft",
      "3.6 lb product/1000 ft²",
      "3.6 pounds per 1,000",
      "156.8 lb/acre",
      "3.6 lb / 1000 square feet",
      "3 3/5 lb per 1000",
    ],
  ],
  [rate, "wrong", ["3.6 lb", "3.6 lb/acre", "3.6 lb N per 1000", "36 lb/1000", "3.6 gal/1000"]],
  [
    volume,
    "right",
    [
      "43.5",
      "43.5 gpa",
      "43.5 GPA",
      "43.5 gal/ac",
      "43.5 gal/acre",
      "43.5 gallons per acre",
      "43.5 gallons/A",
      "43 1/2 gpa",
      "43.5 gal an acre",
      "1 gal/1000 sq ft",
      "43.5 gallons of water per acre",
      "43-1/2 gal/acre",
    ],
  ],
  [volume, "wrong", ["43.5 gal", "43.5 gpm", "43.5 fl oz/acre", "435 gpa"]],
  [
    ounces,
    "right",
    [
      "6.4 fl oz",
      "6.4 fl. oz",
      "6.4 fluid ounces",
      "6.4 floz",
      "6.4",
      "0.05 gal",
      "about 6.4 fluid oz of product",
    ],
  ],
  [ounces, "wrong", ["6.4 oz", "6.4 ounces", "6.4 lb", "64 fl oz"]],
  [
    gallons,
    "right",
    [
      "3-1/2 gal",
      "3 1/2 gallons",
      "3.5gal",
      "3 gal 2 qt",
      "3 gallons and 2 quarts",
      "14 qt",
      "448 fl oz",
      "3½ gal",
    ],
  ],
  [
    area,
    "right",
    [
      "1,250",
      "1250",
      "1,250 sq ft",
      "1250 sq. ft.",
      "1250 square feet",
      "1250 ft2",
      "1250 ft^2",
      "1250 ft²",
      "1,250 sqft",
      "1250 SF",
    ],
  ],
  [area, "wrong", ["1250 ft", "12,500", "1250 sq yd"]],
  [
    bags,
    "right",
    [
      "7",
      "7 bags",
      "seven bags, 7",
      "7 full bags",
      "7 sacks",
      "7 sack",
      "7.0",
      "7 bags of fertilizer",
      "7 packages",
    ],
  ],
  [bags, "wrong", ["6 bags", "6.4", "7 lb", "8"]],
  [speed, "right", ["3.4 mph", "3.4", "3.4 miles per hour", "3.4 mi/h", "3.4 MPH", "5.5 km/h"]],
  [speed, "wrong", ["3.4 ft/s", "3.4 km/h"]],
  [
    minutes,
    "right",
    ["45", "45 min", "45 min.", "45 minutes", "0.75 h", "3/4 hour", "0.75 hours", "45 mins"],
  ],
  [minutes, "wrong", ["45 h", "45 s"]],
  [price, "right", ["$18.50", "18.50", "18.5", "$18.5", "18.50 dollars", "18.50 USD", "$ 18.50"]],
  [price, "wrong", ["$185", "€18.50"]],
  [
    nitrogenPrice,
    "right",
    [
      "$0.75",
      "$.75/lb",
      ".75",
      "75 cents",
      "75 cents per pound",
      "$0.75 per lb of N",
      "75¢/lb",
      "$0.75 a pound",
    ],
  ],
  [live, "right", ["74.8 %", "74.8%", "74.8 percent", "74.8", "74.8 % PLS"]],
  [half, "right", [".5", "0.5", "1/2", "½ in", "1/2 inch", "half an inch, 0.5", '0.5"', ".5 in."]],
  [heat, "right", ["14", "14 GDD", "14 degree days", "14 degree-days", "14 DD", "14 growing degree days"]],
  [bare, "right", ["8.4", "about 8.4", "SAR = 8.4", "8.4 (no unit)"]],
  [bare, "wrong", ["84", "2.5"]],
  [
    grubs,
    "right",
    [
      "37.2",
      "37.2 grubs",
      "37.2 per sq ft",
      "37.2 grubs per square foot",
      "37.2 grubs/sq ft",
      "about 37.2 grubs per ft2",
    ],
  ],
  [
    liters,
    "right",
    ["1,25 L", "1.25 L", "1,25", "ca. 1,25 Liter", "1250 mL", "1250 ml", "1,25 l", "1.25 litres", "1 1/4 L"],
  ],
  [liters, "wrong", ["125 L", "1,25 kg"]],
  [
    hectare,
    "right",
    [
      "1250 kg/ha",
      "1 250 kg/ha",
      "1.250 kg/ha",
      "1,250 kg per hectare",
      "125 g/m2",
      "12.5 kg/100 m2",
      "1.25 t/ha",
    ],
  ],
  [
    nitrogen,
    "right",
    [
      "0.9 lb N/1000",
      ".9 lb of N per 1000 sq ft",
      "0.9# N/M",
      "0.9 lb nitrogen per thousand",
      "0.9 lb of actual N / 1000",
    ],
  ],
  [nitrogen, "wrong", ["0.9 lb of fertilizer per 1000", "0.9 lb P2O5/1000"]],
  [
    pressure,
    "right",
    ["40 psi", "40", "40 PSI", "40 lb/in2", "40 pounds per square inch", "40 lbs", "2.76 bar"],
  ],
];
