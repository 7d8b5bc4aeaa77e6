/**
 * A person's hue as a colour that keeps apart from paper and desk in both themes.
 *
 * Units:   degrees on the colour wheel
 */
export function hueColour(hue: number): string {
  const lightness = isLightHue(hue) ? 38 : 48; // yellow and green look lighter than they measure
  return `hsl(${hue} 58% ${lightness}%)`;
}

const isLightHue = (hue: number): boolean => hue >= 40 && hue <= 200;
