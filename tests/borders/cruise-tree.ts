import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import {
  cruise,
  type ICruiseOptions,
  type ICruiseResult,
  type IFlattenedRuleSet,
} from "dependency-cruiser";

export const ROOT = fileURLToPath(new URL("../..", import.meta.url));
export const FOLDERS = ["app", "lib", "server", "shared", "bin", "tests", "scripts"];

interface Config {
  readonly forbidden: NonNullable<IFlattenedRuleSet["forbidden"]>;
  readonly options: ICruiseOptions;
}
const config = createRequire(import.meta.url)(`${ROOT}/.dependency-cruiser.cjs`) as Config;

/** The names of all rules in the list, in its order. */
export const RULES: readonly string[] = config.forbidden.map((rule) => rule.name ?? "unnamed");

export interface Seen {
  /** Paths of our own modules that were read in. */
  readonly modules: readonly string[];
  readonly breaches: readonly {
    readonly rule: string;
    readonly from: string;
    readonly to: string;
  }[];
}

/** Reads the folders of a tree that are there and holds them against the list of rules. */
export async function cruiseTree(baseDir: string, folders: readonly string[]): Promise<Seen> {
  const { enhancedResolveOptions, tsConfig: _, ...options } = config.options;
  const { output } = await cruise(
    [...folders],
    { ...options, baseDir, validate: true, ruleSet: { forbidden: config.forbidden } },
    { ...enhancedResolveOptions },
  );
  const { modules, summary } = output as ICruiseResult;
  return {
    modules: modules
      .filter((module) => module.coreModule !== true && module.couldNotResolve !== true)
      .map((module) => module.source)
      .filter((source) => !source.includes("node_modules/")),
    breaches: summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to })),
  };
}
