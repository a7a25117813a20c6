import { readFileSync } from "node:fs";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import { keyOf } from "./draw.mjs";

/** A range of lines holds more mutants than the one that was drawn: lets that one alone be tried. */
class DrawnOnly {
  async init() {
    this.drawn = new Set(JSON.parse(readFileSync(process.env.READBACK_MUTANTS, "utf8")));
  }

  async check(mutants) {
    return Object.fromEntries(
      mutants.map((mutant) => [
        mutant.id,
        this.drawn.has(keyOf(mutant))
          ? { status: "passed" }
          : { status: "compileError", reason: "not drawn" },
      ]),
    );
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Checker, "drawn-only", DrawnOnly)];
