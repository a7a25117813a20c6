/** A number from 0 to below 1 after another, the same ones for the same seed. */
function chanceFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** So many of all mutants, each with the same chance, in the order in which they were drawn. */
export function draw(all, count, seed) {
  const mutants = [...all];
  const next = chanceFrom(seed);
  for (let at = 0; at < Math.min(count, mutants.length); at++) {
    const other = at + Math.floor(next() * (mutants.length - at));
    [mutants[at], mutants[other]] = [mutants[other], mutants[at]];
  }
  return mutants.slice(0, count);
}
