/**
 * Names in one text: `"azoxystrobin + propiconazole"`, `"prodiamine 0.38 %"`. A comma counts with a blank behind it, for
 * there is 2,4-D; a percentage behind a name is no part of it.
 */
export const namesIn = (text: string): readonly string[] =>
  text
    .split(/[;+&\n]|,\s|\sand\s/)
    .map((name) =>
      name
        .trim()
        .replace(/\s[\d.]+ ?%$/, "")
        .trim(),
    )
    .filter((name) => name !== "");
