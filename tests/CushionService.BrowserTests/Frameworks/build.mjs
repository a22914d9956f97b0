// Each fixture as one script that a page takes as it is.

import { build } from "esbuild";
import { readFile } from "node:fs/promises";
import { compile } from "svelte/compiler";

const svelte = {
  name: "svelte",
  setup: ({ onLoad }) =>
    onLoad({ filter: /\.svelte$/ }, async ({ path }) => ({
      contents: compile(await readFile(path, "utf8"), { filename: path, generate: "client" }).js.code,
    })),
};

await build({
  entryPoints: ["angular.js", "react.js", "svelte.js", "vue.js"],
  bundle: true,
  format: "iife",
  conditions: ["browser"],
  define: { "process.env.NODE_ENV": '"production"' },
  plugins: [svelte],
  outdir: "dist",
});
