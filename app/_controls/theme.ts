/** `day` and `dim` are chosen by hand; without a choice the page follows the system. */
export type Theme = "day" | "dim";

export const THEME_COOKIE = "heelstrip-theme";

export function readTheme(value: string | undefined): Theme | null {
  return value === "day" || value === "dim" ? value : null;
}
