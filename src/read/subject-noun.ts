/** "compressor" of "compressor 2": what is counted, without its number. */
export const nounOf = (subject: string): string => subject.replace(/ \S+$/, "");
