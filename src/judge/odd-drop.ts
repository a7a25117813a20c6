/** A pole or joint that loses so many V, and so many times what the others lose, is burnt. Common practice, no source. */
export const oddOne = { fromV: 2, times: 10 } as const;

/** One of several loses volts where the others lose next to none under the same load; V. */
export function isOddDrop(across: readonly number[]): boolean {
  const [most, next] = [...across].sort((a, b) => b - a);
  return (
    most !== undefined && next !== undefined && most >= oddOne.fromV && most >= oddOne.times * next
  );
}
