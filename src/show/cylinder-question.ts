/** Asked where a cylinder holds another gas than the unit, by the office's list. */
export function otherGas(found: {
  readonly number: string;
  readonly holds: string;
  readonly gas: string;
}): string {
  return `Cylinder ${found.number} holds ${found.holds} by the list, this unit has ${found.gas}: which cylinder was it?`;
}
