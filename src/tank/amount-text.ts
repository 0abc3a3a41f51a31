/** Units that a reader could take for another: an ounce is weighed here, and a fluid ounce says so itself. */
const spelled: Readonly<Record<string, string>> = { oz: "oz by weight" };

/** An amount as it is read off a scale or a jug: `35.2 oz by weight`, not `35.19999 oz`. */
export const amountText = (
  { value, unit }: { readonly value: number; readonly unit: string },
  digits = 6,
): string => `${Number(value.toPrecision(digits))} ${spelled[unit] ?? unit}`;
