import { dice } from "../support/dice";
import { proveFuzz } from "../support/hostile/fuzz-proof";
import { temporaryFolder } from "../support/hub-under-test";
import { proveModel } from "../support/model/model-proof";
import { partition, TROUBLES } from "../support/partition-proof";
import { setup } from "../support/programs";

const LOG_BYTES = 64 * 1024;
const GROWN_MIB = 64; // of a process that has taken some thousand strokes meanwhile
const HEALED_MS = 3000;
const BREAKERS = 12;
const LONG_MS = 35_000; // longer than a page waits on a silent line
const A_ROUND_MS = 5000;

function seeded(): number {
  return Number(process.env.SEED ?? Date.now() % 1e6);
}

/** So many frames that no page would send, and what came of them. */
export async function soakFuzz(frames: number): Promise<readonly string[]> {
  const folder = temporaryFolder();
  const seed = seeded();
  try {
    await setup();
    const proof = await proveFuzz({ folder: folder.path, frames, seed, breakers: BREAKERS });
    const [early, late] = proof.memory;
    console.error(
      `fuzz (SEED=${seed}): ${proof.frames} frames of ${Object.keys(proof.kinds).length} kinds over ${proof.sockets} sockets, ${proof.strokes} honest strokes, ${proof.strikes.sent} breaks, ${proof.logged} bytes of log, ${early.toFixed(0)} to ${late.toFixed(0)} MiB, ${proof.faults.length} faults`,
    );
    return [
      ...proof.faults.map((fault) => `fuzz (SEED=${seed}): ${fault}`),
      ...(proof.logged < LOG_BYTES ? [] : [`fuzz: ${proof.logged} bytes of log`]),
      ...(late - early < GROWN_MIB ? [] : [`fuzz: grew from ${early} to ${late} MiB`]),
    ];
  } finally {
    folder.remove();
  }
}

/** So many schedules of what may happen to three pages and their hub. */
export async function soakModel(schedules: number): Promise<readonly string[]> {
  const folder = temporaryFolder();
  const seed = seeded();
  try {
    const { fault, steps, committed } = await proveModel({
      ...{ folder: folder.path, schedules, longest: 40, seed },
    });
    console.error(
      `model (SEED=${seed}): ${schedules} schedules, ${steps} steps, ${committed} strokes committed`,
    );
    return fault === null ? [] : [`model: ${fault}`];
  } finally {
    folder.remove();
  }
}

/** So many rounds of every trouble a network can have, and one that is longer than a page's patience. */
export async function soakPartitions(rounds: number): Promise<readonly string[]> {
  const folder = temporaryFolder();
  const seed = seeded();
  const roll = dice(seed);
  try {
    const short = Array.from({ length: rounds }, () => TROUBLES).flat();
    const found = [
      await partition({ folder: folder.path, troubles: short, lastsMs: A_ROUND_MS, roll }),
      await partition({ folder: folder.path, troubles: ["half-open"], lastsMs: LONG_MS, roll }),
    ];
    const drawn = found.reduce((sum, each) => sum + each.drawn, 0);
    const slowest = Math.max(...found.map(({ slowestMs }) => slowestMs));
    console.error(
      `partitions (SEED=${seed}): ${short.length + 1} troubles, ${drawn} strokes, together again ${slowest.toFixed(0)} ms after healing at the latest`,
    );
    return [
      ...found.flatMap(({ faults }) => faults).map((fault) => `partitions: ${fault}`),
      ...(slowest < HEALED_MS ? [] : [`partitions: ${slowest} ms after healing`]),
    ];
  } finally {
    folder.remove();
  }
}
