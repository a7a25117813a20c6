const board =
  /\b(?:display|board|screen|controller|remote|app|monitor|keypad|transducer|service (?:tool|checker)|laptop|software)\b/i;
const gauge = /\b(?:gauges?|manifold|hand ?held|digitals?|clamp|thermometer|stick|probes?)\b/i;
const low = /\b(?:suction|low)\b/i;
const high = /\b(?:head|discharge|high|liquid)\b/i;

/** "board has 12 on the low side, gauges say 118": what a board shows beside what was measured at the same place. */
export function comparesBoard(text: string): boolean {
  return board.test(text) && gauge.test(text) && !(low.test(text) && high.test(text));
}
