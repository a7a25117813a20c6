/** Said where a message is longer than is read at once. */
export function tooLong(letters: number): string {
  return `That is ${letters} letters, more than I read at once. Kept, not read: can you send it in parts?`;
}
