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
  poweredByHeader: false,
  reactStrictMode: true,
};
