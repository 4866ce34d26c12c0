// The package in a browser without a window: it loads over HTTP, and gives what it gives under node.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import test from "node:test";
import { folder, load, topics } from "./module.js";

const browser = process.env.TAUTEN_BROWSER;
const types = { ".js": "text/javascript", ".wasm": "application/wasm", ".html": "text/html; charset=utf-8" };

// A whole answer, every formula at the examples of its inputs, or its error, and each question by the module of its
// topic. Runs here and on the page.
async function answers(load, topics) {
  const found = {};
  for (const [topic, jobs] of Object.entries(topics)) {
    const part = await load(topic);
    for (const [question, job] of Object.entries(jobs)) found[question] = part.ask(question, job);
  }
  const tauten = await load();
  found.whole = tauten.ask("clamp", topics.clamp.clamp);
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

// The page sends what it found: how long a browser takes to get there is nobody's guess.
const page = `<!doctype html><title>tauten</title><script type="module">
import { load } from "./index.js";
const answers = ${answers};
const send = (text) => fetch("/result", { method: "POST", body: text });
answers(load, ${JSON.stringify(topics)}).then((text) => send("found " + text)).catch((error) => send("failed: " + error));
</script>`;

test("a page in a browser", { skip: !browser && "no browser was found", timeout: 120_000 }, async () => {
  let arrived;
  const result = new Promise((resolve) => (arrived = resolve));
  const server = createServer(async (request, response) => {
    if (request.method === "POST") {
      const parts = await request.setEncoding("utf8").toArray();
      response.writeHead(204).end();
      return arrived(parts.join(""));
    }
    const name = request.url.slice(1);
    if (name !== "" && !/^[a-z]+\.(js|wasm)$/.test(name)) return response.writeHead(404).end();
    response.writeHead(200, { "content-type": types[extname(name) || ".html"] });
    response.end(name === "" ? page : readFileSync(join(folder, name)));
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  const profile = mkdtempSync(join(tmpdir(), "tauten-"));
  const shown = spawn(browser, ["--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
    `--user-data-dir=${profile}`, "--remote-debugging-port=0", `http://127.0.0.1:${server.address().port}/`],
    { stdio: "ignore", detached: true });
  const ended = new Promise((resolve) => shown.on("error", resolve).on("exit", (code) => resolve(`ended with code ${code}`)));
  try {
    const found = await Promise.race([result, ended]);
    assert.match(String(found), /^found /);
    assert.equal(found.slice(6), await answers(load, topics));
  } finally {
    if (shown.exitCode === null && shown.pid) process.kill(-shown.pid, "SIGKILL");
    await ended;
    server.close();
    server.closeAllConnections();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
