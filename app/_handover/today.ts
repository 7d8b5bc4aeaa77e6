/** The day, as the reader of this page writes it. */
export function today(): string {
  return new Date().toLocaleDateString(undefined, {
    day: "numeric",
    month: "long",
    year: "numeric",
  });
}
