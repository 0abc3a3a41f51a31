/** A computation of the trade's year: the checks that read a published figure of it, or why there is none. */
export interface TradeItem {
  readonly name: string;
  readonly entries?: readonly string[];
  readonly without?: string;
}

const noFunction = "no function: it was left for later";

/**
 * What a business computes beyond one visit, item by item. An item without a check says why, and so does the part of one
 * that its checks leave out.
 */
export const tradeItems: readonly TradeItem[] = [
  { name: "wind at the height that a label means", entries: ["weather-001", "weather-002"] },
  {
    name: "rotation of resistance groups",
    entries: [
      "rotation-001",
      "rotation-002",
      "rotation-003",
      "rotation-004",
      "rotation-005",
      "rotation-006",
      "rotation-007",
      "rotation-008",
    ],
    without:
      "the counting, of which no worked example was found; the insecticide list, of which no page could be opened far enough",
  },
  {
    name: "purchase list of a season",
    without: "no worked example was found; laws stand in tests/plan/purchase",
  },
  { name: "route of a day", without: "no worked example was found; laws stand in tests/plan/route" },
  {
    name: "runs of soil temperatures",
    without: "the sources state rules (54 °F for seven days), and no figure to compute",
  },
  { name: "dollar spot", entries: ["pest-003"] },
  { name: "brown patch", entries: ["pest-001"] },
  { name: "Pythium blight", entries: ["pest-004", "pest-005"] },
  {
    name: "degree-day targets of insects",
    entries: ["pest-002"],
    without: "the other records are data whose sources print no count of a season",
  },
  {
    name: "coring",
    entries: ["stand-022", "stand-023", "stand-024", "stand-025", "stand-026", "stand-027"],
  },
  { name: "clippings", entries: ["stand-030", "stand-031", "stand-032", "stand-033"] },
  { name: "dose of a body of water", entries: ["site-127", "site-128", "site-161"] },
  {
    name: "buffers and points against runoff",
    entries: ["site-133", "limits-001", "limits-002", "limits-003", "limits-004"],
    without:
      "the tables of the agency's menu, which could not be opened: the points that only they state are asked of the caller",
  },
  { name: "price of a visit", entries: ["price-001", "price-002", "price-003"] },
  { name: "treatments at full rate", entries: ["indicator-002"] },
  { name: "environmental impact quotient", entries: ["indicator-001"] },
  { name: "leaching score", entries: ["indicator-003"] },
  {
    name: "sand against organic matter, topdressing",
    entries: ["stand-028"],
    without: "sand against organic matter: its equation was read, and no worked example",
  },
  { name: "frequency of clip", entries: ["stand-029"] },
  {
    name: "green speed on a slope",
    without: "its equation was read, and no worked example: stand-035 is worked by hand",
  },
  { name: "daily light integral", entries: ["weather-007", "weather-008"] },
  { name: "sunrise and day length", entries: ["weather-005", "weather-006"] },
  { name: "leaf wetness", entries: ["weather-010"] },
  { name: "heat index", entries: ["weather-003", "weather-004"] },
  {
    name: "inversion by two thermometers",
    without:
      "the sources state the sign and the heights, and no figure to compute; the stability ratio was not read",
  },
  { name: "first and last frost", entries: ["weather-009"] },
  { name: "dose by trunk diameter", without: noFunction },
  { name: "pest count to density", entries: ["stand-034"] },
  { name: "runoff of a storm, load of a year", without: noFunction },
  { name: "gravel under a root zone", without: noFunction },
  { name: "sand to a sand share", without: noFunction },
  { name: "drain spacing", without: noFunction },
  { name: "pump and agitation", entries: ["pump-001"] },
  { name: "day's work with turns and fills", entries: ["price-006"] },
  {
    name: "ownership and running cost of a machine",
    entries: ["price-004"],
    without: "capital recovery: the figures of price-005 are from memory",
  },
  {
    name: "labor hours of a site",
    without:
      "the note that was found has no title or address, and one of its two figures is wrong; a law walks the site",
  },
  { name: "containment", entries: ["site-132", "site-160"] },
  { name: "de-icing", entries: ["ice-001"] },
  { name: "tee size by rounds", without: noFunction },
  { name: "nitrogen of clippings and soil over a year", without: noFunction },
  { name: "reorder point", entries: ["plan-040"] },
  { name: "greenhouse gas of nitrogen and fuel", without: noFunction },
  { name: "color and cover from an image", without: noFunction },
];
