import { createHash } from "node:crypto";
import type { Server } from "node:http";
import type { Duplex } from "node:stream";

/** One connected client of the little WebSocket server (RFC 6455, text frames only). */
export interface SocketPeer {
  readonly send: (text: string) => void;
  /** close handshake */
  readonly close: () => void;
  /** cuts the connection without a word */
  readonly cut: () => void;
  readonly onText: (hear: (text: string) => void) => void;
  readonly onEnd: (hear: () => void) => void;
}

const magic = "258EAFA5-E914-47DA-95CA-C5AB0DC85B11";
const opcodes = { text: 1, close: 8, ping: 9, pong: 10 } as const;

/** Takes upgrade requests of an HTTP server; `accept` decides by the address whether to let one in. */
export function webSocketServer(
  server: Server,
  accept: (url: string) => boolean,
  connected: (peer: SocketPeer, url: string) => void,
): void {
  server.on("upgrade", (request, socket: Duplex) => {
    const key = request.headers["sec-websocket-key"];
    const url = request.url ?? "";
    if (key === undefined || !accept(url)) {
      socket.end("HTTP/1.1 403 Forbidden\r\nContent-Length: 0\r\n\r\n");
      return;
    }
    const proof = createHash("sha1").update(`${key}${magic}`).digest("base64");
    socket.write(
      `HTTP/1.1 101 Switching Protocols\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Accept: ${proof}\r\n\r\n`,
    );
    connected(peerOf(socket), url);
  });
}

function peerOf(socket: Duplex): SocketPeer {
  let hearText: (text: string) => void = () => {};
  const hearEnd: (() => void)[] = [];
  let waiting: Buffer = Buffer.alloc(0);
  let ended = false;
  const end = (): void => {
    if (ended) return;
    ended = true;
    for (const hear of hearEnd) hear();
  };
  const write = (opcode: number, payload: Buffer): void => {
    if (!socket.destroyed)
      socket.write(Buffer.concat([frameHead(opcode, payload.length), payload]));
  };
  socket.on("data", (chunk: Buffer) => {
    waiting = Buffer.concat([waiting, chunk]);
    for (let frame = takeFrame(waiting); frame !== undefined; frame = takeFrame(waiting)) {
      waiting = frame.rest;
      if (frame.opcode === opcodes.text) hearText(frame.payload.toString("utf8"));
      if (frame.opcode === opcodes.ping) write(opcodes.pong, frame.payload);
      if (frame.opcode === opcodes.close) {
        write(opcodes.close, frame.payload);
        socket.end();
      }
    }
  });
  socket.on("close", end);
  socket.on("error", end);
  return {
    send: (text) => write(opcodes.text, Buffer.from(text)),
    close: () => write(opcodes.close, Buffer.from([0x03, 0xe8])),
    cut: () => socket.destroy(),
    onText: (hear) => {
      hearText = hear;
    },
    onEnd: (hear) => {
      hearEnd.push(hear);
    },
  };
}

function frameHead(opcode: number, length: number): Buffer {
  if (length < 126) return Buffer.from([0x80 | opcode, length]);
  if (length < 65_536) return Buffer.from([0x80 | opcode, 126, length >> 8, length & 0xff]);
  const head = Buffer.alloc(10);
  head[0] = 0x80 | opcode;
  head[1] = 127;
  head.writeBigUInt64BE(BigInt(length), 2);
  return head;
}

interface Frame {
  readonly opcode: number;
  readonly payload: Buffer;
  readonly rest: Buffer;
}

/** The first whole frame of what has come; clients always mask theirs. */
function takeFrame(bytes: Buffer): Frame | undefined {
  if (bytes.length < 2) return undefined;
  const short = bytes.readUInt8(1) & 0x7f;
  const extra = short === 126 ? 2 : short === 127 ? 8 : 0;
  const start = 2 + extra + 4;
  if (bytes.length < start) return undefined;
  const length =
    short === 126
      ? bytes.readUInt16BE(2)
      : short === 127
        ? Number(bytes.readBigUInt64BE(2))
        : short;
  if (bytes.length < start + length) return undefined;
  const mask = bytes.subarray(2 + extra, start);
  const payload = Buffer.from(bytes.subarray(start, start + length));
  for (let i = 0; i < payload.length; i++) {
    payload[i] = payload.readUInt8(i) ^ mask.readUInt8(i % 4);
  }
  return { opcode: bytes.readUInt8(0) & 0x0f, payload, rest: bytes.subarray(start + length) };
}
