// The package in a browser without a window: it loads over HTTP, and gives what it gives under node.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import test from "node:test";
import { promisify } from "node:util";
import { folder, tauten } from "./module.js";

const browser = process.env.TAUTEN_BROWSER;
const job = { thread: "M16", class: "8.8", torque: "130N.m", condition: "oiled" };
const types = { ".js": "text/javascript", ".wasm": "application/wasm", ".html": "text/html; charset=utf-8" };

// Every formula at the examples of its inputs, a whole answer, an error. Runs here and on the page.
function answers(tauten, job) {
  const found = { clamp: tauten.ask("clamp", job) };
  for (const [name, { inputs }] of Object.entries(tauten.catalogue.formulas)) {
    const given = Object.fromEntries(Object.entries(inputs).map(([key, { example }]) => [key, example]));
    try {
      found[name] = tauten.evaluate(name, given);
    } catch (error) {
      found[name] = error.message;
    }
  }
  return JSON.stringify(found);
}

const page = `<!doctype html><title>tauten</title><p id="result">waiting</p><script type="module">
import { load } from "./index.js";
const answers = ${answers};
const show = (text) => { document.getElementById("result").textContent = text; };
load().then((tauten) => show("found " + btoa(unescape(encodeURIComponent(answers(tauten, ${JSON.stringify(job)}))))))
  .catch((error) => show("failed: " + error));
</script>`;

test("a page in a browser", { skip: !browser && "no browser was found", timeout: 120_000 }, async () => {
  const server = createServer((request, response) => {
    const name = request.url.slice(1);
    if (name !== "" && !/^[a-z]+\.(js|wasm)$/.test(name)) return response.writeHead(404).end();
    response.writeHead(200, { "content-type": types[extname(name) || ".html"] });
    response.end(name === "" ? page : readFileSync(join(folder, name)));
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  const profile = mkdtempSync(join(tmpdir(), "tauten-"));
  try {
    const { stdout } = await promisify(execFile)(browser, ["--headless", "--no-sandbox", "--disable-gpu",
      "--disable-dev-shm-usage", "--no-first-run", `--user-data-dir=${profile}`, "--virtual-time-budget=20000", "--dump-dom",
      `http://127.0.0.1:${server.address().port}/`], { maxBuffer: 1 << 26, timeout: 110_000 });
    const [, result] = stdout.match(/<p id="result">([^<]*)</);
    assert.match(result, /^found /);
    assert.equal(Buffer.from(result.slice(6), "base64").toString("utf8"), answers(tauten, job));
  } finally {
    server.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
