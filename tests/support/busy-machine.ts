import { Worker } from "node:worker_threads";

/** Asks for 4 ms naps and notes how late it is woken: on a quiet machine that is a fraction of one. */
const napper = `
const { parentPort } = require("node:worker_threads");
const late = [];
let asked = performance.now();
const timer = setInterval(() => {
  const now = performance.now();
  late.push(now - asked - 4);
  asked = now;
}, 4);
parentPort.on("message", () => { clearInterval(timer); parentPort.postMessage(late); parentPort.close(); });
`;

export interface Napper {
  /** how late one nap in a hundred ended, ms */
  readonly stop: () => Promise<number>;
}

/** Watches from a thread of its own how busy others keep the machine meanwhile. */
export function watchMachine(): Napper {
  const worker = new Worker(napper, { eval: true });
  return {
    stop: () =>
      new Promise((resolve) => {
        worker.once("message", (late: readonly number[]) => {
          const sorted = [...late].sort((a, b) => a - b);
          resolve(sorted[Math.floor(sorted.length * 0.99)] ?? 0);
        });
        worker.postMessage("stop");
      }),
  };
}
