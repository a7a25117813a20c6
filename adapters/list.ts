import type { ChatKind } from "./chat-platform.ts";
import { matrix } from "./matrix/main.ts";
import { slack } from "./slack/main.ts";
import { terminal } from "./terminal/main.ts";

/** Every chat platform; a new one is its folder and a line here. */
export const platforms: readonly ChatKind[] = [terminal, matrix, slack];
