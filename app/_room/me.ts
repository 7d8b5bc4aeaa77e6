/** Who sits at this browser: a name and a hue, kept here and nowhere else. */
export interface Me {
  readonly name: string;
  /** Degrees on the colour wheel, 0..359. */
  readonly hue: number;
}

const KEY = "heelstrip.me";
/** Hues that stay apart from each other and from the left, right and correction inks. */
export const HUES = [265, 215, 140, 95, 50, 300, 0, 190] as const;

/** Whoever introduced themselves before; null for a newcomer, and where a browser keeps nothing. */
export function keptMe(): Me | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "null");
    if (typeof kept === "object" && kept !== null && "name" in kept && "hue" in kept) {
      const { name, hue } = kept;
      if (typeof name === "string" && name.trim() !== "" && typeof hue === "number") {
        return { name: name.slice(0, 40), hue: ((Math.round(hue) % 360) + 360) % 360 };
      }
    }
  } catch {
    // Kept by another hand, or storage is shut: the person simply introduces themselves again.
  }
  return null;
}

export function newcomer(): Me {
  return { name: "Someone", hue: HUES[Math.floor(Math.random() * HUES.length)] ?? 265 };
}

export function keepMe(me: Me): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(me));
  } catch {
    // A browser that keeps nothing still draws; the name lasts as long as the tab.
  }
}
