/** Two legs changed over: what a compressor that ran backward is mended by. */
export const legsTurned =
  /(?:swap|chang|revers|roll|flip|turn)\w*(?: over| around)? (?:two|2|any two|a pair)(?: of)?(?: the)? (?:legs|leads|phases|wires|lines)/i;
