import { createRequire } from "node:module";

/** Files of the one type face that reports and pictures are set in: open licence, letters of most of Europe. */
const locate = createRequire(import.meta.url).resolve;

export const fontFiles = {
  regular: locate("@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf"),
  bold: locate("@expo-google-fonts/noto-sans/600SemiBold/NotoSans_600SemiBold.ttf"),
} as const;

/** What the font files call the face. */
export const fontFamily = "Noto Sans";
