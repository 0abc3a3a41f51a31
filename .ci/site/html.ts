// Small helps for writing HTML by hand.

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Text as it stands in HTML, also between quotes. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => entities[sign] as string);

/** The anchor of a heading: `Left out` is `left-out`, as the pages of the repository link to it. */
export const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/<[^>]*>|&\w+;/g, "")
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .trim()
    .replace(/\s/g, "-");

/** The text of a piece of Markdown, for an index of words. */
export const wordsOf = (markdown: string): string =>
  markdown
    .replace(/```[\s\S]*?```/g, " ")
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/[`*_#|>]|<!--[\s\S]*?-->/g, " ")
    .replace(/\s+/g, " ")
    .trim();
