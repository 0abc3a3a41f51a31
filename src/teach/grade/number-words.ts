const numberWords =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".split(
    " ",
  );
const numberWord = numberWords.join("|");
/** An amount in words that digits follow. */
const withDigits = String.raw`(?= (?:hours?|lbs?|pounds?|gal(?:lons?)?|quarts?|pints?|feet)\b.*\d)`;

/** A number in words, where there is none in digits (`six bags`) or before one that is: `two hours and 24 minutes`. */
export const inDigits = (text: string): string => {
  const hasDigits = /\d|[½¼¾⅓⅔⅛]/.test(text);
  const words = new RegExp(`\\b(?:${numberWord})\\b${hasDigits ? withDigits : ""}`, "gi");
  return text.replace(words, (word) => String(numberWords.indexOf(word.toLowerCase())));
};
