/** Look-alike characters and what they are read as, one UTF-16 unit for one, so spans stay true. */
const lookAlikes: readonly (readonly [from: string, to: string])[] = [
  [
    "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000",
    " ",
  ],
  ["\u200b\u200c\u200d\u2060\ufeff\u00ad\ufe0f\u200e\u200f", " "],
  ["\u2028\u2029\u0085\r\u000b\u000c", "\n"],
  ["\t", " "],
  ["\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\ufe63\uff0d\u207b\u208b", "-"],
  ["\u2018\u2019\u201a\u201b\u02bc\u00b4\u2032\u0060\uff07", "'"],
  ["\u201c\u201d\u201e\u201f\u2033\u00ab\u00bb\uff02", '"'],
  ["\u2044\u2215\uff0f\u29f8", "/"],
  ["\u00b5\u03bc", "µ"],
  ["\u2126\u03a9", "ω"],
  ["\u00ba\u02da", "°"],
  ["\u0394\u2206", "δ"],
  ["\u00b7\u2022\u25cf\u25aa\u2023\u2219\u25e6", "*"],
  ["\u2236\ufe55", ":"],
  ["\u221e", "∞"],
  ["\u2248\u223c\u2243\uff5e", "~"],
  ["\u00d7\u2715\u2716", "x"],
  ["\u00b9\u2081", "1"],
  ["\u00b2\u2082", "2"],
  ["\u00b3\u2083", "3"],
  ["\u2070\u2080", "0"],
  ["\u2074\u2084", "4"],
  ["\u2075\u2085", "5"],
  ["\u2076\u2086", "6"],
  ["\u2077\u2087", "7"],
  ["\u2078\u2088", "8"],
  ["\u2079\u2089", "9"],
  ["\u2192\u279c\u2794\u21d2\u27a1", "→"],
  ["\u212a", "k"],
  ["\u212b", "å"],
];

const table = new Map<number, string>();
for (const [from, to] of lookAlikes)
  for (let i = 0; i < from.length; i++) table.set(from.charCodeAt(i), to);
for (let code = 0xff01; code <= 0xff5e; code++)
  if (!table.has(code)) table.set(code, String.fromCharCode(code - 0xfee0).toLowerCase());

function plainUnit(text: string, i: number): string {
  const code = text.charCodeAt(i);
  const known = table.get(code);
  if (known !== undefined) return known;
  const char = text.charAt(i);
  const lower = char.toLowerCase();
  return lower.length === 1 ? lower : char;
}

/** The text in lower case with look-alike signs made plain; every UTF-16 unit keeps its place. */
export function plain(text: string): string {
  let ascii = true;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code > 126 || (code < 32 && code !== 10)) {
      ascii = false;
      break;
    }
  }
  if (ascii) return text.toLowerCase();
  let out = "";
  for (let i = 0; i < text.length; i++) out += plainUnit(text, i);
  return out;
}
