const KEY = "heelstrip.greeted";

/** Whether this browser was asked for a name before. One that keeps nothing is not asked at all. */
export function wasGreeted(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return true;
  }
}

export function keepGreeted(): void {
  try {
    localStorage.setItem(KEY, "yes");
  } catch {
    // It will not be asked again in this tab; more cannot be promised.
  }
}
