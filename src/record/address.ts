/** "@readback", "readback:", "hey readback", "bot," before what is said to it. */
const before =
  /^\s*(?:(?:hey|hi|hello|ok|okay|yo)[\s,]+)?(?:@\s?readback\b|readback\b|(?:@bot\b|bot(?=\s?[,:])))[\s,:;.!-]*/i;
/** "…, readback?" behind it */
const behind = /[\s,]+@?readback\s*(?=[?.!]*\s*$)/i;

/**
 * A text with the bot's own name blanked out where it is spoken to: the rest is what was said, and
 * stands where it stood.
 */
export function withoutAddress(text: string): { readonly text: string; readonly toBot: boolean } {
  const blank = (found: string): string => " ".repeat(found.length);
  const rest = text.replace(before, blank).replace(behind, blank);
  return { text: rest, toBot: rest !== text || /\breadback\b/i.test(text) };
}
