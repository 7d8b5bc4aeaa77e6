import { connect, type HubClient, openPage } from "../support/hub-client";
import { startHubProcess, startProcess } from "../support/hub-process";
import { createSheet, enter, temporaryFolder } from "../support/hub-under-test";

const ROUNDS = 3;
const WARM_UP = 50; // strokes before the counting starts
const STROKES = 250; // a round; within what one connection may send at once
const POINTS = 80; // bytes of a stroke's points: about 250 bytes on the wire with its heading

type Pair = readonly [HubClient, HubClient];

/**
 * From the moment a stroke is drawn in one page to its being in the other's document, through our hub
 * (decoded, checked, committed, passed on) and through a relay that passes frames on unread. Both run
 * in processes of their own, round by round in turn, on the loopback.
 */
export async function benchLatency(): Promise<{ what: string; figure: string }[]> {
  const folder = temporaryFolder();
  const hub = await startHubProcess(folder.path);
  const relay = await startProcess("tests/bench/bare-relay.ts");
  const ofHub: Percentiles[] = [];
  const ofRelay: Percentiles[] = [];
  for (let round = 1; round <= ROUNDS; round++) {
    ofRelay.push(await measure(await throughRelay(relay.url, round)));
    ofHub.push(await measure(await throughHub(hub.url)));
  }
  await hub.end("SIGTERM");
  await relay.end("SIGTERM");
  folder.remove();
  return [
    { what: `stroke to the other page, hub, ${STROKES} strokes`, figure: shown(ofHub) },
    { what: "the same through a bare relay", figure: shown(ofRelay) },
    { what: `hub − relay, median of ${ROUNDS} rounds`, figure: differences(ofHub, ofRelay) },
    { what: `hub ÷ relay, each of ${ROUNDS} rounds`, figure: ratios(ofHub, ofRelay) },
  ];
}

interface Percentiles {
  readonly p50: number;
  readonly p95: number;
}

async function throughHub(url: string): Promise<Pair> {
  const { sheet, links } = await createSheet(url);
  const cookie = await enter(url, sheet, links.draw);
  return [await openPage({ url, sheet, cookie }), await openPage({ url, sheet, cookie })];
}

async function throughRelay(url: string, round: number): Promise<Pair> {
  const sheet = `round-${round}`;
  return [await connect({ url, sheet }), await connect({ url, sheet })];
}

/** One stroke at a time: what one person feels of another. */
async function measure([drawing, watching]: Pair): Promise<Percentiles> {
  const times: number[] = [];
  for (let stroke = 0; stroke < WARM_UP + STROKES; stroke++) {
    const id = `stroke-${stroke}`;
    const since = performance.now();
    drawing.draw(
      id,
      Uint8Array.from({ length: POINTS * 2 }, (_, index) => (index * stroke) % 251),
    );
    await watching.until(() => watching.doc.getMap("strokes").has(id));
    if (stroke >= WARM_UP) times.push(performance.now() - since);
  }
  await Promise.all([drawing.close(), watching.close()]);
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.floor(times.length * share)] ?? Number.NaN;
  return { p50: at(0.5), p95: at(0.95) };
}

function differences(hub: readonly Percentiles[], relay: readonly Percentiles[]): string {
  const of = (which: keyof Percentiles) =>
    median(hub.map((round, index) => round[which] - (relay[index]?.[which] ?? Number.NaN)));
  return `p50 + ${of("p50").toFixed(2)} ms, p95 + ${of("p95").toFixed(2)} ms`;
}

function median(of: readonly number[]): number {
  return [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? Number.NaN;
}

function shown(rounds: readonly Percentiles[]): string {
  const p50 = median(rounds.map((round) => round.p50)).toFixed(2);
  const p95 = median(rounds.map((round) => round.p95)).toFixed(2);
  return `p50 ${p50} ms, p95 ${p95} ms`;
}

function ratios(hub: readonly Percentiles[], relay: readonly Percentiles[]): string {
  const each = (of: keyof Percentiles) =>
    hub.map((round, index) => (round[of] / (relay[index]?.[of] ?? Number.NaN)).toFixed(1));
  return `p50 × ${each("p50").join(" ")}, p95 × ${each("p95").join(" ")}`;
}
