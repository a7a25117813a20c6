import { mkdtempSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deserialize } from "node:v8";
import Database from "better-sqlite3";
import { IDBKeyRange } from "fake-indexeddb";
import fc from "fast-check";
import { expect, test } from "vitest";
import { z } from "zod";
import { completed, factory, settled } from "../adapters/matrix/keys/indexed-db.ts";
import { openKeyFile } from "../adapters/matrix/keys/key-file.ts";
import { mirrored, release } from "../adapters/matrix/keys/mirror.ts";

const freshPath = (): string => join(mkdtempSync(join(tmpdir(), "keys-")), "keys.db");

/** The browser's object store, as far as the operations below use it. */
interface Store {
  put(value: unknown, key: unknown): void;
  add(
    value: unknown,
    key: unknown,
  ): { addEventListener(type: string, then: (event: { preventDefault(): void }) => void): void };
  delete(key: unknown): void;
  clear(): void;
  openCursor(range: unknown): {
    readonly result: { value: unknown; update(value: unknown): void; delete(): void } | null;
    addEventListener(type: string, then: () => void): void;
  };
}
const key = fc.oneof(
  fc.constantFrom("a", "b", "c", "d"),
  fc.constantFrom(["a", 1], ["b", 2], ["b", 3]),
);
const value = fc.oneof(
  fc.string(),
  fc.uint8Array({ maxLength: 20 }),
  fc.record({ pickle: fc.string(), sent: fc.boolean() }),
);
const operation = fc.oneof(
  fc.record({ do: fc.constant("put" as const), key, value }),
  fc.record({ do: fc.constant("delete" as const), key }),
  fc.record({ do: fc.constant("delete range" as const), key }),
  fc.record({ do: fc.constant("cursor update" as const), key, value }),
  fc.record({ do: fc.constant("cursor delete" as const), key }),
  fc.record({ do: fc.constant("clear" as const) }),
);
type Operation = typeof operation extends fc.Arbitrary<infer T> ? T : never;

function carryOut(store: Store, op: Operation): void {
  if (op.do === "put") store.put(op.value, op.key);
  if (op.do === "delete") store.delete(op.key);
  if (op.do === "delete range") store.delete(IDBKeyRange.lowerBound(op.key));
  if (op.do === "clear") store.clear();
  if (op.do === "cursor update" || op.do === "cursor delete") {
    const asked = store.openCursor(op.key);
    let moved = false;
    asked.addEventListener("success", () => {
      if (asked.result === null || moved) return;
      moved = true;
      if (op.do === "cursor update") asked.result.update(op.value);
      else asked.result.delete();
    });
  }
}

test("whatever a transaction does stands in the file when it is complete, and comes back from there", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.array(operation, { minLength: 1, maxLength: 6 }), { maxLength: 6 }),
      async (transactions) => {
        const path = freshPath();
        const file = openKeyFile(path);
        const open = () => {
          const opening = factory.open("machine", 3);
          opening.addEventListener("upgradeneeded", () => {
            if (!opening.result.objectStoreNames.contains("rows"))
              opening.result.createObjectStore("rows", {});
          });
          return settled(opening);
        };
        const db = await mirrored(file, open);
        for (const operations of transactions) {
          const transaction = db.transaction(["rows"], "readwrite");
          const done = completed(transaction);
          for (const op of operations)
            carryOut(z.custom<Store>().parse(transaction.objectStore("rows")), op);
          await done;
          expect(inFile()).toEqual(await inMemory());
        }
        function inFile(): unknown {
          const rows = file
            .rows("machine", "rows")
            .map((row) => [row.key, deserialize(row.value)] as const);
          return Object.fromEntries(rows);
        }
        async function inMemory(): Promise<unknown> {
          const rows = db.transaction(["rows"], "readonly").objectStore("rows");
          const [keys, values] = await Promise.all([
            settled(rows.getAllKeys()),
            settled(rows.getAll()),
          ]);
          const all = z.array(z.unknown());
          return Object.fromEntries(
            all.parse(keys).map((one, index) => [JSON.stringify(one), all.parse(values)[index]]),
          );
        }
        const before = await inMemory();
        db.close();
        await release();
        const again = await mirrored(file, open);
        expect(again.version).toBe(3);
        const rows = again.transaction(["rows"], "readonly").objectStore("rows");
        const count = z.array(z.unknown()).parse(await settled(rows.getAllKeys())).length;
        expect(count).toBe(Object.keys(z.record(z.string(), z.unknown()).parse(before)).length);
        again.close();
        await release();
        file.close();
      },
    ),
    { numRuns: 60 },
  );
});

test("the key file is its owner's alone, and good for one program at a time", () => {
  const path = freshPath();
  const file = openKeyFile(path);
  expect(statSync(path).mode & 0o777).toBe(0o600);
  file.setNote("encrypted:!a:b", "{}");
  expect(() => openKeyFile(path)).toThrow(/locked|busy/i);
  file.close();
  const again = openKeyFile(path);
  expect(again.note("encrypted:!a:b")).toBe("{}");
  again.close();
});

test("another program's database is refused and left as it is", () => {
  const path = freshPath();
  const other = new Database(path);
  other.exec("CREATE TABLE theirs (a)");
  other.close();
  expect(() => openKeyFile(path)).toThrow("is not a key file");
  const text = join(mkdtempSync(join(tmpdir(), "keys-")), "notes.txt");
  writeFileSync(text, "no database at all, only text, and long enough to be looked at as one");
  expect(() => openKeyFile(text)).toThrow();
});
