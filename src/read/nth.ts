/** First, second and third, as they are said and typed. */
export const nth: ReadonlyMap<string, number> = new Map([
  ["first", 1],
  ["1st", 1],
  ["second", 2],
  ["2nd", 2],
  ["third", 3],
  ["3rd", 3],
]);
