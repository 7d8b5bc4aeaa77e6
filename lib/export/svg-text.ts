/**
 * A text as it may stand in an SVG file, between tags or in a quoted attribute. What XML 1.0 cannot
 * hold at all (control characters, halves of surrogate pairs) becomes a space.
 *
 * Source:  Extensible Markup Language 1.0, fifth edition, productions [2] Char and [66] CharRef
 *
 * @example
 * svgText('Brindle <"up"> & down'); // => "Brindle &lt;&quot;up&quot;&gt; &amp; down"
 */
export function svgText(text: string): string {
  let safe = "";
  for (const letter of text) safe += ESCAPES.get(letter) ?? (isXmlLetter(letter) ? letter : " ");
  return safe;
}

const ESCAPES: ReadonlyMap<string, string> = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
  ["'", "&#39;"],
]);

function isXmlLetter(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  if (code >= 0x7f && code <= 0x9f) return false; // allowed, but discouraged, and never seen
  return code < 0xd800 || (code > 0xdfff && code !== 0xfffe && code !== 0xffff);
}
