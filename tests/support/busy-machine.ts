import { Worker } from "node:worker_threads";

/**
 * Asks for 4 ms naps and notes how late it is woken: on a quiet machine that is a fraction of one. At every
 * tenth it times a fixed amount of plain work, which tells a machine that is slow at everything.
 */
const napper = `
const { parentPort } = require("node:worker_threads");
const late = [];
const pace = [];
const words = Array.from({ length: 2000 }, (_, at) => "lead " + (at % 90) + " to ground");
function plainWork() {
  const found = new Map();
  for (const word of words) for (const part of word.split(" ")) found.set(part, (found.get(part) ?? 0) + 1);
  return found.size;
}
for (let warm = 0; warm < 200; warm++) plainWork();
let asked = performance.now();
const timer = setInterval(() => {
  const now = performance.now();
  late.push(now - asked - 4);
  if (late.length % 10 === 0) {
    const from = performance.now();
    plainWork();
    pace.push(performance.now() - from);
  }
  asked = performance.now();
}, 4);
parentPort.on("message", () => { clearInterval(timer); parentPort.postMessage({ late, pace }); parentPort.close(); });
`;

export interface Machine {
  /** how late one nap in a hundred ended, ms */
  readonly late: number;
  /** the fixed piece of plain work, ms, at the median */
  readonly pace: number;
}

export interface Napper {
  readonly stop: () => Promise<Machine>;
}

interface Told {
  readonly late: readonly number[];
  readonly pace: readonly number[];
}

/** Watches from a thread of its own how busy others keep the machine meanwhile, and how quick it is. */
export function watchMachine(): Napper {
  const worker = new Worker(napper, { eval: true });
  const at = (times: readonly number[], share: number): number =>
    [...times].sort((a, b) => a - b)[Math.floor(times.length * share)] ?? 0;
  return {
    stop: () =>
      new Promise((resolve) => {
        worker.once("message", ({ late, pace }: Told) =>
          resolve({ late: at(late, 0.99), pace: at(pace, 0.5) }),
        );
        worker.postMessage("stop");
      }),
  };
}
