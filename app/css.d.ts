// Next writes the same into next-env.d.ts, which is not kept; types are checked without it too.
declare module "*.module.css" {
  const classes: Readonly<Record<string, string>>;
  export default classes;
}
