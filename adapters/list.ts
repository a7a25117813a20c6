import type { Platform } from "./platform.ts";
import { terminal } from "./terminal/main.ts";

/** Every chat platform; a new one is its folder and a line here. */
export const platforms: readonly Platform[] = [terminal];
