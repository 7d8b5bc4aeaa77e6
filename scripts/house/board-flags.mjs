/**
 * What Node is told where the board runs. V8 lets short-lived things grow to three times 16 MiB before it
 * looks again at what is needed. Measured with two hundred people on a busy machine, three pairs: 148 to
 * 153 MiB in all with 4, 163 to 170 with 16; on a quiet one, where it collects sooner, the same.
 */
export const BOARD_FLAGS = ["--max-semi-space-size=4"];
