/** Why the hub closed a socket. 4400 to 4499 are final; after any other the page comes back. */
export const CLOSE = {
  badFrames: 4400,
  revoked: 4403,
  gone: 4404,
  clientTaken: 4409,
  otherGeneration: 4410,
  shutOut: 4423,
  newerVersion: 4426,
  going: 4503,
  slowReader: 4513,
  crowded: 4529,
} as const;

/** Is it pointless to connect again after this code? */
export function isFinal(code: number): boolean {
  return code >= 4400 && code < 4500;
}
