/**
 * The upper end of a count that scatters as chance does: the mean of the Poisson distribution under which so few or fewer
 * come up with the stated chance.
 *
 * Source: F. Garwood 1936, whose limits for the mean of a Poisson distribution J. A. Hanley tells (Statistics in Medicine,
 * 2019, doi:10.1002/sim.8354; its summary was read): `sum over x = 0 to counted of exp(-mean) mean^x / x! = chance`, as the
 * manual of the NAG library has it (g07ab).
 */
export const chanceUpper = (counted: number, chance: number): number => {
  let low = counted;
  // Ten times the scatter of chance: beyond it lies nothing that a confidence can ask for.
  let high = counted + 10 + 10 * Math.sqrt(counted + 1);
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (soFewOrFewer(counted, middle) > chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** The chance of `counted` or fewer where `mean` are due, the mean being the larger: each term less than the one before. */
const soFewOrFewer = (counted: number, mean: number): number => {
  let term = 1;
  let sum = 1;
  for (let i = counted; i > 0 && term > sum * Number.EPSILON; i--) {
    term *= i / mean;
    sum += term;
  }
  return sum * Math.exp(counted * Math.log(mean) - mean - logFactorial(counted));
};

/** Stirling's series from ten on, where its next term is less than 1e-10; the product below. */
const logFactorial = (n: number): number => {
  if (n < 10) {
    let product = 1;
    for (let i = 2; i <= n; i++) product *= i;
    return Math.log(product);
  }
  return (
    n * Math.log(n) -
    n +
    Math.log(2 * Math.PI * n) / 2 +
    1 / (12 * n) -
    1 / (360 * n ** 3) +
    1 / (1260 * n ** 5)
  );
};
