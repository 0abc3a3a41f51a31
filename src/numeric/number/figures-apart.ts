/**
 * How many figures it takes for two numbers that differ to read differently, `least` at the fewest. A sentence that
 * says that one is over the other would be untrue as printed where both read alike: 1.00003 over 1.
 */
export const figuresApart = (one: number, other: number, least: number): number => {
  let figures = least;
  // Seventeen figures tell any two doubles apart.
  while (figures < 17 && one.toPrecision(figures) === other.toPrecision(figures)) figures++;
  return one === other ? least : figures;
};

/** The same with so many decimals, `least` at the fewest: 5.0003 is not "5.0", where 5 is what it is over. */
export const fixedApart = (one: number, other: number, least: number): ((value: number) => string) => {
  let decimals = least;
  // Twelve tell apart whatever `exceeds` does.
  while (decimals < 12 && one.toFixed(decimals) === other.toFixed(decimals)) decimals++;
  return (value) => value.toFixed(one === other ? least : decimals);
};

/** The shorter way to write both, and the figures that go with them, so that they read apart. */
export const roundedApart = (one: number, other: number, least = 4): ((value: number) => number) => {
  const figures = figuresApart(one, other, least);
  return (value) => Number(value.toPrecision(figures));
};
