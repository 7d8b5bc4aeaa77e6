import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A disk of a few MiB that can be filled to its last byte. */
export interface SmallDisk {
  readonly place: string;
  /** Nothing more fits; undone by what it answers. */
  fill(): () => void;
  remove(): void;
}

/** Where this machine lets us have one; else null. */
export function smallDisk(mib: number): SmallDisk | null {
  const place = mkdtempSync(join(tmpdir(), "heelstrip-disk-"));
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", `size=${mib}m`, "tmpfs", place]);
  if (mounted.status !== 0) {
    rmSync(place, { recursive: true });
    return null;
  }
  const ballast = join(place, "ballast");
  return {
    place,
    fill() {
      const { bavail, bsize } = statfsSync(place);
      writeFileSync(ballast, new Uint8Array(bavail * bsize));
      return () => rmSync(ballast);
    },
    remove() {
      spawnSync("umount", ["-l", place]);
      rmSync(place, { recursive: true, force: true });
    },
  };
}
