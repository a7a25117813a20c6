/**
 * What is mutated, by folder: the files left out hold tables alone, and the tests are those that
 * reach the folder in their own process and take seconds. "judge-c*" is every test whose name begins so,
 * "!judge-cases" none of that name; "each-case" and "each-note" stand beside this file and try the labelled
 * material one by one, so that no whole file of it is tried again for one mutant.
 */
const bot = [
  "closing",
  "conversations",
  "days",
  "due-times",
  "opening",
  "peers",
  "places",
  "repeats",
];

export const folders = {
  physics: {
    leftOut: ["tables/", "constants.ts"],
    tests: ["physics-*", "judge-examples", "judge-electrical", "judge-gas", "judge-kinds"],
  },
  judge: {
    leftOut: ["list.ts", "words.ts"],
    tests: [
      ...["each-case", "judge-*", "!judge-cases", "box-limits", "company-limits"],
      ...["places", "repeats"],
    ],
  },
  record: {
    leftOut: ["schema.ts"],
    tests: [
      ...bot,
      "asides",
      "chain",
      "clock-rules",
      "company-limits",
      "corrections-kept",
      "folding",
      "clocks",
      "erase",
      "import*",
      "machine*",
      "record-*",
      "rest",
      "routing",
      "store",
    ],
  },
  read: {
    leftOut: ["words/", "list.ts"],
    tests: [
      ...["each-note", "read-*", "gas-names", "odds", "context-so-far", "each-case"],
      ...["conversations", "days"],
    ],
  },
};

/** What is told of the folder that a part ("record", "record/import", "record/clocks.ts") lies in. */
export const folderOf = (part) => folders[part.split("/")[0]];
