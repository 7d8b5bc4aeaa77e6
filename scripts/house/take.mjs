import { NOTHING } from "./tally.mjs";

/** Two processors are what the smallest machine has that people host on; a third step would only wait. */
const HANDS = 2;

/**
 * Takes every step, whatever the ones before it answered, so that one run shows all there is. Steps run
 * side by side as far as there are hands, begun in their order; each is told of when it is done, whole.
 *
 * @returns what the tests of all steps add up to; a step that failed outside its tests is one failed
 */
export async function take(steps, tell = console.log) {
  const total = { ...NOTHING };
  const [waiting, under, done] = [[...steps], new Map(), new Set()];
  const isReady = ({ after = [] }) =>
    after.every((step) => done.has(step) || !steps.includes(step));
  const free = () => HANDS - [...under.keys()].reduce((sum, { hands = 1 }) => sum + hands, 0);
  while (waiting.length + under.size > 0) {
    const at = waiting.findIndex((step) => isReady(step) && (step.hands ?? 1) <= free());
    if (at >= 0) {
      const [step] = waiting.splice(at, 1);
      tell(`· ${step.name} …`);
      under.set(step, takeOne(step));
      continue;
    }
    if (under.size === 0) throw new Error(`nothing lets ${waiting[0].name} begin`);
    const { step, tally, told } = await Promise.race(under.values());
    under.delete(step);
    done.add(step);
    for (const line of told) tell(line);
    for (const kind of Object.keys(total)) total[kind] += tally[kind];
  }
  return total;
}

async function takeOne(step) {
  const started = performance.now();
  const { code, output, tally = NOTHING } = await step.work();
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  // tests all green and yet a bad exit: something failed outside them
  const failed = tally.failed > 0 ? tally.failed : Number(code !== 0);
  const counted = { ...tally, failed };
  const line = `${failed > 0 ? "✗" : "✓"} ${step.name}: ${seconds} s${inWords(tally)}`;
  return { step, tally: counted, told: failed > 0 ? [output.trimEnd(), line] : [line] };
}

function inWords({ passed, failed, skipped }) {
  const count = passed + failed + skipped;
  return count === 0 ? "" : ` (${passed} of ${count} tests passed)`;
}
