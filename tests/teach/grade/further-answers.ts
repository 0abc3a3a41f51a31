import type { QuizAnswer, QuizProblem } from "../../../src/teach/index.js";

// What learners write, a second list: the verdict of each was written down before it was graded. A text in which two numbers
// could be meant is asked back, and a share as a decimal is not the percent that was asked for.

const asked = (
  value: number,
  unit: string,
  of: QuizAnswer["of"],
  decimals: number,
  text: string,
  units: "US" | "metric" = "US",
  noun?: readonly [string, string],
): QuizProblem => ({
  type: "quiz-problem",
  version: 1,
  topic: "nutrient/product-rate",
  title: "A problem",
  level: 1,
  seed: 0,
  units,
  text: "How much? Answer as asked.",
  answer: {
    value,
    unit,
    of,
    decimals,
    tolerance: noun === undefined ? 0.5 * 10 ** -decimals : 0,
    text,
    ...(noun && { noun }),
  },
  steps: [],
  choices: [
    { letter: "A", text },
    { letter: "B", text: "another", mistake: "one unit of area only" },
    { letter: "C", text: "a third", mistake: "units upside down" },
    { letter: "D", text: "a fourth", mistake: "forgot to convert" },
  ],
  letter: "A",
  mistakes: [],
});

const flow = asked(0.51, "gal/min", "spray", 2, "0.51 gal per minute");
const sand = asked(27.5, "yd3", "none", 1, "27.5 cu yd");
const tons = asked(37.1, "US ton", "none", 1, "37.1 tons");
const acres = asked(1.67, "acre", "none", 2, "1.67 acres");
const hours = asked(2.4, "h", "none", 1, "2.4 hours");
const days = asked(5.1, "d", "none", 1, "5.1 days");
const sixBags = asked(6, "count", "none", 0, "6 bags", "US", ["bag", "bags"]);
const jugs = asked(3, "count", "none", 0, "3 jugs", "US", ["jug", "jugs"]);
const rate = asked(2.5, "lb/1000 ft2", "product", 2, "2.50 lb per 1,000 sq ft");
const perAcre = asked(108.9, "lb/acre", "product", 1, "108.9 lb per acre");
const potash = asked(15.4, "lb", "K2O", 1, "15.4 lb");
const phosphorus = asked(2.18, "lb", "P", 2, "2.18 lb");
const nit = asked(22.5, "lb", "N", 1, "22.5 lb");
const depth = asked(1.44, "in", "none", 2, "1.44 inches");
const flOz = asked(96.8, "fl oz", "product", 1, "96.8 fl oz");
const psi = asked(23.1, "psi", "none", 1, "23.1 psi");
const pct = asked(20, "%", "none", 0, "20 %");
const water = asked(1870, "gal", "water", 0, "1,870 gal");
const price = asked(975, "money:USD", "none", 2, "$975.00");
const euro = asked(3.75, "money:EUR/kg", "none", 2, "€3.75 per kg", "metric");
const area = asked(12123, "ft2", "none", 0, "12,123 sq ft");
const lha = asked(380, "L/ha", "spray", 0, "380 L per ha", "metric");
const m3 = asked(6.4, "m3", "none", 1, "6.4 m³", "metric");
const kg = asked(13.5, "kg", "product", 1, "13.5 kg", "metric");
const min = asked(97, "min", "none", 0, "97 minutes");
const sec = asked(13.6, "s", "none", 1, "13.6 seconds");
const temp = asked(17, "°F d", "none", 0, "17 °F degree-days");
const seed = asked(137.5, "lb", "seed", 1, "137.5 lb");
const gpk = asked(0.75, "gal/1000 ft2", "spray", 2, "0.75 gal per 1,000 sq ft");

type Row = readonly [
  problem: QuizProblem,
  verdict: "right" | "close" | "wrong" | "unread",
  answers: readonly string[],
];

export const furtherAnswers: readonly Row[] = [
  [flow, "right", ["0.51 GPM", ".51 gallons a minute", "0.51 gal/min per nozzle"]],
  [flow, "wrong", ["0.51 gph"]],
  [flow, "unread", ["65.3 oz/min? no: 0.51 gpm"]],
  [sand, "right", ["27.5 yards", "27.5 cubic yards of sand", "27 1/2 yd", "27.5 yd³"]],
  [sand, "wrong", ["27.5 cu ft"]],
  [tons, "right", ["37.1 ton", "74,200 lbs", "about 37.1 short tons of sand"]],
  [acres, "right", ["1.67 ac", "1 2/3 acres", "72,600 sq ft"]],
  [acres, "close", ["1.7 acres"]],
  [hours, "right", ["2.4 hrs", "2 hours 24 minutes", "2:24 h", "144 min"]],
  [days, "right", ["5.1", "every 5.1 days"]],
  [days, "close", ["5 days"]],
  [sixBags, "right", ["six", "6 bags (50 lb)", "6 50-lb bags", "we need six bags"]],
  [sixBags, "wrong", ["5.6 bags", "-6 bags", "6 dozen bags"]],
  [jugs, "right", ["three jugs", "3 containers"]],
  [
    rate,
    "right",
    ["2.5 lb/1000", "2.5 pounds product per 1,000 square feet", "2½ lbs per M", "40 oz per 1000 sq ft"],
  ],
  [
    rate,
    "wrong",
    [
      "2.5 lb N per 1000",
      "2.5e3 lb/1000",
      "0 lb",
      "<script>alert(2.5)</script> lb lb",
      "2.5 lb per 1000 acres",
    ],
  ],
  [perAcre, "right", ["108.9 lb/A", "108.9 #/ac"]],
  [perAcre, "unread", ["109 lb per acre, exactly 108.9"]],
  [perAcre, "close", ["109 lb/acre"]],
  [potash, "right", ["15.4 lb of K2O", "15.4 lbs potash"]],
  [potash, "wrong", ["15.4 lb potassium"]],
  [phosphorus, "right", ["2.18 lb of elemental P", "2.18 lb phosphorous"]],
  [phosphorus, "wrong", ["2.18 lb P2O5"]],
  [nit, "right", ["22.5 lb actual N", "22 lb 8 oz of nitrogen"]],
  [nit, "wrong", ["22.5 lb of 12-0-8"]],
  [depth, "right", ['1.44"', "1.44 in. of water"]],
  [flOz, "right", ["96.8 fluid ounces", "3 qt 0.8 fl oz", "0.756 gal"]],
  [flOz, "wrong", ["96.8 oz wt"]],
  [psi, "right", ["23.1 lbs per sq inch", "23.1 pounds of pressure"]],
  [pct, "right", ["20 per cent", "one fifth, so 20%"]],
  [pct, "wrong", ["0.20"]],
  [water, "right", ["1870 gals", "1.87 thousand gallons"]],
  [price, "right", ["$975", "975 bucks"]],
  [euro, "right", ["3,75 €/kg", "€3.75 the kilo"]],
  [area, "right", ["12,123 square ft.", "12,123,"]],
  [area, "close", ["12,122 sq ft"]],
  [area, "wrong", ["12,123 ft"]],
  [lha, "right", ["380 l/ha", "380 litres per hectare"]],
  [m3, "right", ["6,4 m3", "6.4 cubic meters"]],
  [kg, "right", ["13 500 g"]],
  [min, "right", ["1 h 37 min"]],
  [sec, "right", ["13.6 s", "13.6 sec."]],
  [temp, "right", ["17 growing degree-days"]],
  [seed, "right", ["137.5 lb of seed"]],
  [seed, "wrong", ["137.5 lb PLS"]],
  [gpk, "right", ["0.75 gal/1000 ft2", "3 qt per 1000 sq ft", "3/4 gallon per thousand"]],
  [
    rate,
    "unread",
    [
      "2.5 or 3",
      "between 2 and 3 lb",
      "A or B",
      "NaN",
      "Infinity lb",
      "1/0 lb",
      "2.5 lb 2.5 lb 2.5 lb",
      "0x2.8",
      "     ",
      "٢.٥ lb",
    ],
  ],
  [sixBags, "unread", ["6/6/6"]],
  [flow, "right", ["q = 0.51", "a little over half a gallon: 0.51 gal/min"]],
  [flow, "wrong", ["0.51 gph", "51 gpm", "65 oz", "1.96 gal/min"]],
  [flow, "right", ["65.28 fl oz/min", "1.93 L/min"]],
  [
    sand,
    "right",
    ["27.5 yds", "27 1/2 cubic yards", "742.5 cu ft", "27.5yd³", "about 27.5 yards of sand", "27.5 CY"],
  ],
  [sand, "close", ["27.6 yd3", "27"]],
  [sand, "wrong", ["27.5 sq yd", "27.5 cu ft", "28 tons"]],
  [tons, "right", ["37.1 short tons", "74,200 lb", "74200 lbs.", "37.1 T"]],
  [tons, "wrong", ["37.1 lb", "41 tons"]],
  [acres, "right", ["1.67 ac", "1.67 ac.", "1 2/3 acres", "72,745 sq ft"]],
  [hours, "right", ["2 h 24 min", "2:24 h", "144 min", "2.4 hrs", "two hours and 24 minutes"]],
  [days, "right", ["5.1", "5.1 d", "every 5.1 days"]],
  [days, "close", ["5 days"]],
  [sixBags, "right", ["6", "six", "six (6) bags", "you need to buy 6", "6 sacks"]],
  [sixBags, "wrong", ["5", "5.8 bags", "7 bags to be safe", "6 pallets"]],
  [jugs, "right", ["3 jugs (2.5 gal each)", "3 containers", "three jugs"]],
  [
    rate,
    "right",
    [
      "2.5#/M",
      "2.50 lbs/1000 sq. ft.",
      "2.5 lb per thousand",
      "108.9 lb/A",
      "2.5 lbs of fertilizer per thousand square feet",
      "2.5 lbs/1,000ft²",
    ],
  ],
  [rate, "wrong", ["2.5 lb N per 1000", "2.5 lb/acre", "0.25 lb/M"]],
  [perAcre, "right", ["108.9 lbs an acre", "108.9 pounds to the acre", "2.5 lb/1000"]],
  [potash, "right", ["15.4 lb potash", "15.4 lb of K2O", "15.4 lbs K₂O"]],
  [potash, "wrong", ["15.4 lb of potassium", "15.4 lb K", "12.8 lb"]],
  [phosphorus, "right", ["2.18 lb P", "2.18 lb of actual phosphorus"]],
  [phosphorus, "wrong", ["2.18 lb phosphate", "5 lb P"]],
  [pct, "right", ["20%", "20 percent", "twenty percent", "20 pct", "one fifth = 20 %"]],
  [price, "right", ["$975", "975 dollars", "975 bucks", "USD 975.00", "$ 975.-"]],
  [euro, "right", ["3,75 €/kg", "3.75 EUR per kg", "€3,75"]],
  [euro, "wrong", ["$3.75", "3.75 €/t"]],
  [m3, "right", ["6,4 m3", "6400 L", "6.4 cubic metres", "6.4 cbm"]],
  [min, "right", ["1 h 37 min", "97 mins", "1:37 h", "1 hour 37"]],
  [temp, "right", ["17 degree days", "17 GDD", "17 DD", "17"]],
  [depth, "right", ['1.44"', "1.44 in of water", "1.44 inch"]],
  [water, "right", ["1870 gallons", "1,870 gal of water", "about 1,870 gal."]],
  [kg, "right", ["13,5 kg", "13500 g", "13.5 kilos"]],
  [area, "right", ["12123 square feet", "12,123 sf", "12.123 thousand sq ft", "0.2783 acres"]],
  [flow, "unread", ["1/2 gpm... 0.51 exactly", "0,51 gpm?"]],
  [sixBags, "unread", ["5.8 so 6 bags", "half a dozen"]],
  [jugs, "unread", ["3 x 2.5 gal jugs"]],
  [perAcre, "unread", ["109 lb/ac (108.9)"]],
  [rate, "unread", ["not 2.5 lb", "2.5 lb/10,000 sq ft"]],
  // A text that was right before it was asked what it says.
  [
    sixBags,
    "unread",
    ["not 6 bags", "fewer than 6", "six or seven bags", "between five and six bags", "6 bags or 7"],
  ],
  [sixBags, "unread", ["A or B", "all of the above", "twenty six bags", "less than 6 bags minus one"]],
  [sixBags, "right", ["+6 bags", "6!", "６", "6.0 bags", "six bags of 50 lb"]],
  [
    sixBags,
    "wrong",
    [
      "-6 bags",
      "six hundred bags",
      "0x6 bags",
      "6 dozen bags",
      "6 % bags",
      "6 thousand bags",
      "sixteen bags",
    ],
  ],
  [min, "wrong", ["97 h", "97 s", "1 h 97 min", "1 h 37 s", "1.37 h"]],
  [rate, "wrong", ["2.5 lb per 1000 acres", "2.5 lb per 100 sq ft", "2.5 kg/1000 sq ft", "2.5 lb K2O/M"]],
  [pct, "wrong", ["20 permille", "0.2 %", "20 ppm", "20 lb", "80 %"]],
  [pct, "unread", ["20 % off 40 %"]],
  [price, "wrong", ["€975", "975 cents", "$975/acre", "$97.5"]],
  [tons, "wrong", ["37.1 tonnes", "37.1 US gal"]],
  [lha, "wrong", ["380 mL/ha", "380 L/acre", "38 L/ha", "380 gal/ha"]],
  [phosphorus, "wrong", ["2.18 lb of nitrogen", "2.18 oz P", "2.18 kg phosphorus"]],
  [hours, "wrong", ["2 h 4 min", "two hours and 4 minutes", "24 h", "2.4 min"]],
  // A key that was missed in the unit, and a number as a machine writes it.
  [sixBags, "right", ["6 bgs", "6 bgas of feed", "6e0", "6e0 bags"]],
  [sixBags, "wrong", ["6 tags of", "6e1", "6 bgs plus"]],
  [jugs, "right", ["3 jgus", "0.3e1 jugs"]],
  [nit, "right", ["22.5 punds", "22.5 lsb", "2.25e1 lb", "225e-1 lb"]],
  [nit, "wrong", ["22.5 gla", "22.5 galons", "22.5 onces", "2.25e2 lb"]],
  [min, "right", ["97 mintes"]],
  [min, "wrong", ["97 horus"]],
  [rate, "right", ["2.5e0 lb/1000"]],
  [water, "right", ["1.87e3 gallns"]],
];
