const LONGEST = 40; // characters of a text that are shown

/** A value as an error message shows it after "got": short, on one line, whatever it is. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") {
    const start = value.length > LONGEST ? `${value.slice(0, LONGEST)}…` : value;
    return JSON.stringify(start);
  }
  if (Array.isArray(value)) {
    const plain = value.length <= 4 && value.every((item) => typeof item !== "object");
    return plain ? `[${value.map(shown).join(", ")}]` : `a list of ${value.length}`;
  }
  return typeof value === "object" && value !== null ? "an object" : String(value);
}
