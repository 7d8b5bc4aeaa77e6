/**
 * A link as it is handed on. The secret stands behind the #, so that no server along the way, and
 * no log, gets to see it.
 *
 * @example
 * linkAddress("https://board.example", "AbCdEfGhIjKl", "s3cret"); // => "https://board.example/sheet/AbCdEfGhIjKl#s3cret"
 */
export function linkAddress(origin: string, sheetId: string, secret: string): string {
  return `${origin}/sheet/${sheetId}#${secret}`;
}
