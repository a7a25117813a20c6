import { partWords } from "../words/parts.ts";

const nouns = partWords.flatMap(([words]) => words.split("|")).join("|");
/** A part by its name or by a number with a digit in it: "the drive board", "61-04E7". */
const named = `(?:the |my |our |that |those |any )?(?:[a-z]+ ){0,2}(?:${nouns}|parts?|order|delivery|(?=[a-z-]*\\d)[a-z\\d-]{3,})(?: (?:for|at|on) (?:the )?[a-z\\d -]+?)?`;
const comes =
  "(?:come|comes|coming|arrive|arrives|arriving|due|due in|here|in|be here|be in|get here|get in|land|ship|expected|supposed to (?:be here|come|arrive)|going to (?:be here|come|arrive))";

/** "When does the drive board come", "is the board in yet", "any word on 61-04E7", "what's on order". */
export const partAsked = new RegExp(
  `^(?:(?:so|ok|okay|and|hey) )*(?:` +
    `when (?:does|do|is|are|will) (?:it|they|that|those) ${comes}(?: in)?` +
    `|when(?:'s|s)? (?:(?:does|do|is|are|will|should|did|was) )?${named} ${comes}(?: in)?` +
    `|(?:is|are|did|has|have|was) ${named} (?:here|in|arrived|ordered|on order|come in|arrive|get ordered|ship(?:ped)?|get here)(?: yet)?` +
    `|(?:any|got any) (?:word|news|eta|update) (?:on|about|of|for) ${named}` +
    `|what(?:'s|s| is) the (?:eta|status) (?:on|of|for) ${named}` +
    `|(?:where(?:'s|s| is| are)|did (?:we|you|anyone|anybody|somebody|the office) (?:order|get)) ${named}(?: yet)?` +
    `|(?:what(?:'s|s| is)|what parts are|anything|which parts are) (?:still )?(?:on order|ordered|backordered)(?: .{0,30})?` +
    `|any parts (?:due|open|coming|on order|ordered|missing)(?: .{0,30})?` +
    `|what parts (?:are (?:we|you) (?:still )?waiting (?:on|for)|do we (?:still )?need|are (?:still )?open)(?: .{0,30})?` +
    `|parts? (?:that were )?(?:used|fitted|installed|put in|changed)(?: .{0,30})?` +
    `|what (?:all )?did (?:we|i|you|he|she|they) use(?: (?:here|on .{2,20}|at .{2,20}))?` +
    `|(?:what|which) parts (?:did|have) (?:we|i|you|he|she|they) (?:use|used|fit|fitted|install|installed|put in)(?: .{0,30})?` +
    `|(?:what|which) parts (?:went in|were (?:used|fitted|put in|installed))(?: .{0,30})?` +
    `)$`,
);
