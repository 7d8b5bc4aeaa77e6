/** The sheets this browser has opened, newest first. Only this browser remembers them. */
export interface OpenedSheet {
  readonly sheet: string;
  readonly title: string;
  /** ms since 1970. */
  readonly at: number;
}

const KEY = "heelstrip.opened";
const MOST = 40;

export function readOpened(): readonly OpenedSheet[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.filter(isOpened) : [];
  } catch {
    return []; // kept by another hand, or storage is shut
  }
}

export function rememberOpened(opened: OpenedSheet): void {
  keep([opened, ...readOpened().filter((other) => other.sheet !== opened.sheet)].slice(0, MOST));
}

export function forgetOpened(sheet: string): void {
  keep(readOpened().filter((other) => other.sheet !== sheet));
}

function keep(list: readonly OpenedSheet[]): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(list));
  } catch {
    // A browser that keeps nothing still opens sheets by their links.
  }
}

function isOpened(value: unknown): value is OpenedSheet {
  if (typeof value !== "object" || value === null) return false;
  const { sheet, title, at } = value as Record<string, unknown>;
  return typeof sheet === "string" && typeof title === "string" && typeof at === "number";
}
