import { readFileSync } from "node:fs";

const TICKS_A_SECOND = 100; // the kernel's USER_HZ
const KIB_A_MIB = 1024;

/** What a process has cost so far, as the kernel counts it. Linux alone says so; NaN elsewhere. */
export function cpuSeconds(pid: number): number {
  const said = read(`/proc/${pid}/stat`);
  const fields = said.slice(said.lastIndexOf(")") + 2).split(" ");
  return (Number(fields[11]) + Number(fields[12])) / TICKS_A_SECOND;
}

/** Resident memory now and at its most, MiB. */
export function memory(pid: number): { readonly now: number; readonly most: number } {
  const said = read(`/proc/${pid}/status`);
  const of = (name: string) =>
    Number(new RegExp(`^${name}:\\s+(\\d+) kB`, "m").exec(said)?.[1]) / KIB_A_MIB;
  return { now: of("VmRSS"), most: of("VmHWM") };
}

function read(file: string): string {
  try {
    return readFileSync(file, "latin1");
  } catch {
    return "";
  }
}
