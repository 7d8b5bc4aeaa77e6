/** Relative luminance of a colour like "#a5155e". Source: Web Content Accessibility Guidelines 2.2 */
export function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast of two colours, 1 to 21. Source: Web Content Accessibility Guidelines 2.2 */
export function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** A colour laid over another with an opacity of 0 to 1. */
export function laidOver(colour: string, under: string, opacity: number): string {
  const below = channels(under);
  const mixed = channels(colour).map((value, index) =>
    Math.round(opacity * value + (1 - opacity) * (below[index] ?? 0)),
  );
  return `#${mixed.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
}

function channels(colour: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}
