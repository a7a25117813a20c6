import type { CautionRule } from "../caution.ts";
import { nearest, said } from "./fits.ts";

export const bypass: CautionRule = {
  id: "bypass",
  severity: "warning",
  says: "A bypassed safety is for a short test with you beside it, then off and proven. Not for leaving.",
  source: "29 CFR 1910.333(c)(10)",
  fits: (scene) =>
    nearest([
      3,
      said(
        scene,
        /(?<!(?:took|pulled|removed|remove|no) (?:the |my |off the )?)jump(?:ed|er|ered|ing)(?: out)?\b(?!['’]?s?(?: is| are| wire| cable| now| all)* (?:off|removed|pulled|gone)\b)|bypass|defeat|overrid|tape[d]? the (?:door )?switch/,
      ),
    ]),
};
