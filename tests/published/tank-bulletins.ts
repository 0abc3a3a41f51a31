import { amountFor, calibrationByRefill, perVolume, quantity, strengthForAreaRate } from "../../src/index.js";
import type { Answer, PublishedCheck } from "./check.js";

const read = "read" as const;
const to = (of: string, printed: number, place: number): Answer => ({ of, printed, to: place });
const spray = (value: number) => quantity(value, "gal", "spray");
const perAcre = (value: number) => quantity(value, "gal/acre", "spray");

/** Worked examples of rates per area and per volume from bulletins and courses. */
export const tankBulletinChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-127",
    formulas: ["strengthForAreaRate", "amountFor"],
    source: {
      title: "Calibration of hand-held and backpack pump-up sprayers",
      publisher: "University of Georgia Extension",
      where: "the example in the newspaper column of the same authors",
      url: "http://www.commodities.caes.uga.edu/turfgrass/georgiaturf/WeedMngt/weedcontrol/BACKCALIB.htm",
    },
    reached: read,
    given: "4 pt/acre, a sprayer that puts out 25 gal/acre and holds 2 gal",
    answers: [
      to("% of the spray", 2, 1),
      to("fl oz in the sprayer", 5.1, 0.1),
      to("fl oz/1000 ft2", 1.5, 0.1),
    ],
    compute: () => {
      const rate = quantity(4, "pt/acre", "product");
      const strength = strengthForAreaRate({ rate, applicationVolume: perAcre(25) });
      return [
        strength.in("% v/v"),
        amountFor({ rate: strength, form: "liquid", sprayVolume: spray(2) }).in("fl oz"),
        rate.in("fl oz/1000 ft2"),
      ];
    },
  },
  {
    entry: "mix-128",
    formulas: ["calibrationByRefill", "strengthForAreaRate"],
    source: {
      title: "Calibrating hand-held sprayers",
      publisher: "fruit growers' mailing list, which refers to Virginia Cooperative Extension 456-502",
      year: 2009,
      url: "https://lists.ibiblio.org/sympa/nomenu/arc/nafex/2009-03/msg00314.html",
    },
    reached: read,
    given: "1.5 gal on 1000 ft2; 3 pt/acre at the 65 gal/acre that this comes to",
    answers: [to("gal/acre", 65, 1), to("pt/gal", 0.046, 0.001), to("fl oz/gal", 0.74, 0.01)],
    compute: () => {
      const { rate } = calibrationByRefill({
        refills: [quantity(1.5, "gal", "water")],
        course: quantity(40, "ft"),
        width: quantity(25, "ft"),
      });
      const strength = strengthForAreaRate({
        rate: quantity(3, "pt/acre", "product"),
        applicationVolume: perAcre(65),
      });
      return [rate.in("gal/acre"), strength.in("pt/gal"), strength.in("fl oz/gal")];
    },
  },
  {
    entry: "mix-129",
    formulas: ["perVolume", "amountFor"],
    source: {
      title: "Pesticides calculations for homeowners",
      publisher: "University of Kentucky Research and Education Center, Princeton",
      where: "dry formulations",
      url: "http://docplayer.net/24213662-Pesticides-calculations-for-homeowners.html",
    },
    reached: read,
    given: "1 lb in 100 gal of water: in 10 gal, in 1 gal, and in 1 gal by grams",
    answers: [to("oz in 10 gal", 1.6, 0.1), to("oz in 1 gal", 0.16, 0.01), to("g in 1 gal", 4.5, 0.1)],
    compute: () => {
      const rate = perVolume(quantity(1, "lb", "product"), spray(100));
      const small = amountFor({ rate, form: "dry", sprayVolume: spray(1) });
      return [
        amountFor({ rate, form: "dry", sprayVolume: spray(10) }).in("oz"),
        small.in("oz"),
        small.in("g"),
      ];
    },
  },
];
