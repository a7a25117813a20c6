/** What lies in a case that is kept above freezing. */
export const fresh = /^(?:dairy|meat|produce|deli|fish|seafood|bakery|beer|cheese|poultry)$/;
/** "produce", "frozen": what lies in a case. */
export const isGoods = (text: string): boolean =>
  text === "frozen" || text === "icecream" || fresh.test(text);
