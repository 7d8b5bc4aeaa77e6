/** @type {import("next").NextConfig} */
export default {
  // Both are loaded by the server as well: one copy of each, or Yjs warns and instanceof fails.
  serverExternalPackages: [
    "yjs",
    "y-protocols",
    "lib0",
    "y-websocket",
    "libsql",
    "@resvg/resvg-js",
  ],
  typescript: { ignoreBuildErrors: true }, // types, those of the tests too, are verify's to check
  poweredByHeader: false,
  reactStrictMode: true,
};
