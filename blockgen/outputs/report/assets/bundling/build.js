// npm install && npm run build: writes ../three.js. The same versions give the same bytes.
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { build } from "esbuild";

const shaders = {
  name: "shaders without comments", // they are a tenth of the size, and full of addresses that a page ought not to hold
  setup(made) {
    made.onLoad({ filter: /src[\\/]renderers[\\/]shaders[\\/]Shader(Chunk|Lib)[\\/].*\.js$/ }, async ({ path }) => {
      const text = await readFile(path, "utf8");
      const bare = text.replace(/\/\*[^]*?\*\//g, "").replace(/\/\/.*$/gm, "").replace(/^\s+/gm, "");
      return { contents: bare, loader: "js" };
    });
  },
};

const { outputFiles } = await build({
  entryPoints: ["entry.js"], bundle: true, minify: true, write: false, format: "iife", globalName: "THREE",
  target: "es2020", charset: "ascii", legalComments: "none", plugins: [shaders],
});
const code = `${outputFiles[0].text.trimEnd()}\n`;
for (const sign of ["</script", "<!--", "]]>"]) if (code.includes(sign)) throw new Error(`the bundle holds ${sign}`);
const { version } = JSON.parse(await readFile("node_modules/three/package.json", "utf8"));
const licence = (await readFile("node_modules/three/LICENSE", "utf8")).trim();
const hash = createHash("sha256").update(code).digest("hex");
const head = `/*! three ${version}, the parts in bundling/entry.js; sha256 of what follows this comment: ${hash}\n\n${licence}\n*/\n`;
await writeFile("../three.js", `${head}${code}`);
console.log(`three ${version}: ${code.length} bytes, sha256 ${hash}`);
