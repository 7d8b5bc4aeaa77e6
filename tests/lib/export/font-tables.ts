/**
 * Reads advance widths out of a TrueType file, by the OpenType specification 1.9: table directory,
 * `hhea.numberOfHMetrics`, `hmtx`, `cmap` format 4. For tests: small and only for our three files.
 */
export function advancesOf(font: Buffer): ReadonlyMap<number, number> {
  const tables = new Map<string, number>();
  for (let index = 0; index < font.readUInt16BE(4); index += 1) {
    const entry = 12 + 16 * index;
    tables.set(font.toString("latin1", entry, entry + 4), font.readUInt32BE(entry + 8));
  }
  const at = (name: string) => tables.get(name) ?? 0;
  const metrics = font.readUInt16BE(at("hhea") + 34);
  const widthOf = (glyph: number) =>
    font.readUInt16BE(at("hmtx") + 4 * Math.min(glyph, metrics - 1));
  return new Map([...glyphs(font, format4(font, at("cmap")))].map(([c, g]) => [c, widthOf(g)]));
}

function format4(font: Buffer, cmap: number): number {
  for (let index = 0; index < font.readUInt16BE(cmap + 2); index += 1) {
    const table = cmap + font.readUInt32BE(cmap + 8 + 8 * index);
    if (font.readUInt16BE(table) === 4) return table;
  }
  throw new Error("no cmap of format 4");
}

function* glyphs(font: Buffer, table: number): Generator<[code: number, glyph: number]> {
  const segments = font.readUInt16BE(table + 6) / 2;
  const [ends, starts] = [table + 14, table + 16 + 2 * segments];
  const [deltas, offsets] = [starts + 2 * segments, starts + 4 * segments];
  for (let segment = 0; segment < segments; segment += 1) {
    const first = font.readUInt16BE(starts + 2 * segment);
    const last = font.readUInt16BE(ends + 2 * segment);
    const delta = font.readInt16BE(deltas + 2 * segment);
    const offset = font.readUInt16BE(offsets + 2 * segment);
    for (let code = first; code <= last && code < 0xffff; code += 1) {
      const spot = offsets + 2 * segment + offset + 2 * (code - first);
      const glyph = offset === 0 ? code : font.readUInt16BE(spot);
      if (glyph !== 0) yield [code, (glyph + delta) & 0xffff];
    }
  }
}
