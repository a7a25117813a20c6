/** A pin or a plug of a board's harness that does not reach its mate. */
export const loosePin =
  /\b(?:pins?|harness|ribbon|(?:board|edge|molex|wire) (?:plug|connector)|connector|plug)\b.{0,20}\b(?:pushed (?:out|back)|backed out|popped out|pulled out|half (?:in|out|seated)|not seated|un-?seated|hanging (?:out|off))\b/;
