/** What a verdict rests on where the company set the limit itself. */
export const ownBasis = "company's own limit";

/** Where such a limit stands, and what the verdict would rest on without it. */
export const ownSource = (usual: string): string =>
  `the company's own list of limits, in place of: ${usual}`;
