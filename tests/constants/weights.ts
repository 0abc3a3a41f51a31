// Atomic weights of IUPAC (2021, abridged to five digits), and formula weights added up by hand from the formula.

/** g/mol. */
const H = 1.008;
const C = 12.011;
const N = 14.007;
const O = 15.999;
const Mg = 24.305;
const Al = 26.982;
const Si = 28.085;
const P = 30.974;
const S = 32.06;
const Cl = 35.45;
const K = 39.098;
const Na = 22.99;
const Ca = 40.078;
const Fe = 55.845;

const water = H + H + O;
const carbonateIon = C + O + O + O;
const sulfateIon = S + O + O + O + O;

/** Weights of a mole. */
export const moles = {
  H,
  C,
  N,
  O,
  Mg,
  Al,
  P,
  S,
  Cl,
  K,
  Na,
  Ca,
  Fe,
  CaCO3: Ca + carbonateIon,
  MgCO3: Mg + carbonateIon,
  dolomite: Ca + Mg + carbonateIon + carbonateIon,
  slakedLime: Ca + O + H + O + H,
  burntLime: Ca + O,
  magnesiumHydroxide: Mg + O + H + O + H,
  magnesia: Mg + O,
  wollastonite: Ca + Si + O + O + O,
  carbonateIon,
  sulfateIon,
  bicarbonateIon: H + carbonateIon,
  nitrateIon: N + O + O + O,
  sulfuricAcid: H + H + sulfateIon,
  nitricAcid: H + N + O + O + O,
  phosphoricAcid: H + H + H + P + O + O + O + O,
  anhydrite: Ca + sulfateIon,
  gypsum: Ca + sulfateIon + water + water,
  calciumChloride: Ca + Cl + Cl + water + water,
  copperas: Fe + sulfateIon + 7 * water,
  alum: Al + Al + 3 * sulfateIon + 18 * water,
} as const;
