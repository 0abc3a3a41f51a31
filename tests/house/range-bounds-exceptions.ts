// Refusals with the code `range` that carry neither a bound nor choices, by what they expect, and why.

const leavesNumbers =
  "A result beyond what a number holds, or a difference below its last digit: where that begins depends on all of the inputs together.";
const geometry = "The shape of an outline or a list, which no pair of bounds says.";
const allButOne = "Every number but 0 is right.";

/** What is expected, and why no bound can be told. */
export const withoutBounds: readonly (readonly [expected: RegExp, why: string])[] = [
  [/finite number|finite ratio|finite sum|a finite$/, leavesNumbers],
  [/^a share that is left some day$/, leavesNumbers],
  [/^an interval in which something decays$/, leavesNumbers],
  [/^an interval that goes into the degree-days/, leavesNumbers],
  [/that the measured one can be compared with$/, leavesNumbers],
  [/^a cover that a patch of some width makes$/, leavesNumbers],
  [/^a share that gets it down in 60 cuts$/, leavesNumbers],
  [/^an index that leaves some nitrogen to come$/, "It depends on the insoluble share beside it."],
  [/density above zero$/, "It depends on the density and its slope."],
  [/^figures that a linear program can be made of$/, "The solver tells no bound."],
  [/a language tag and a number of digits/, "The engine of the language tells no bound."],
  [/^the smaller amount first$/, "Two amounts of one text against each other."],
  [/^(anything but|a number other than) 0/, allButOne],
  [/^at most three decimals$/, "A count of decimals, which no bound of the value says."],
  [/^two positions or more/, "It counts positions, which come of the swath and the pans."],
  [/^a number of columns that divides/, "A divisor of the number of cells."],
  [/^no hole: none was given$/, "No number at all is right."],
  [/^an outline that bends one way/, geometry],
  [/^a polygon cut in two there/, geometry],
  [/^distances of a plane/, geometry],
  [/^a shape with its measures/, "A known area is another kind of input."],
  [/^measures that leave room for an error$/, "No measure can change without breaking the shape."],
];
