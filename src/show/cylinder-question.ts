/** Asked where a cylinder holds another gas than the unit, by the office's list. */
export function otherGas(found: {
  readonly number: string;
  readonly holds: string;
  readonly gas: string;
}): string {
  return `Cylinder ${found.number} holds ${found.holds} by the list, this unit has ${found.gas}: which cylinder was it?`;
}

/** Asked before a charge of another gas than the unit's is filed as one. */
export function mixedGas(found: { readonly said: string; readonly own: string }): string {
  const { said, own } = found;
  return `${said} into a unit with ${own}? Mixed, it fits no chart and can't be reclaimed: valves shut, no more in. Not filed as charged until you say yes, or which gas it was.`;
}
