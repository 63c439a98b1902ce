// Checks a report in a headless browser: that it is whole by itself, fits narrow
// and wide windows, is accessible, and prints on A4 with no picture cut. It needs
// pdftotext of poppler-utils.
//
//   node check.mjs REPORT.html [--text TEXT] [--keep FOLDER]
//
// --text asks that TEXT be read on the page, as text; --keep leaves screenshots and
// the printed pages in a folder. CHROMIUM names the browser.
import { execFileSync } from "node:child_process";
import { readFileSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { chromium } from "playwright-core";

const widths = [360, 768, 1280];
const largestBytes = 2_000_000;
const axeRules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
// A4 less the margins of the page, in CSS pixels (96 to the inch).
const millimetre = 96 / 25.4;
const printed = { width: Math.floor((210 - 28) * millimetre), height: Math.floor((297 - 28) * millimetre) };

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { text: { type: "string" }, keep: { type: "string" } },
});
if (positionals.length !== 1) {
  console.error("usage: node check.mjs REPORT.html [--text TEXT] [--keep FOLDER]");
  process.exit(2);
}
const file = resolve(positionals[0]);
const address = pathToFileURL(file).href;
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const problems = [];
const fail = (text) => problems.push(text);

if (options.keep) mkdirSync(options.keep, { recursive: true });
if (statSync(file).size >= largestBytes) fail(`the page has ${statSync(file).size} bytes, ${largestBytes} or more`);

// A home of its own keeps the browser out of the user's.
const home = mkdtempSync(join(tmpdir(), "browser-"));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
  env: { ...process.env, HOME: home },
});
try {
  for (const width of widths) await atWidth(width);
  await inPrint();
} finally {
  await browser.close();
  rmSync(home, { recursive: true, force: true });
}
if (problems.length > 0) {
  console.error(problems.map((p) => `- ${p}`).join("\n"));
  console.error(`${file}: ${problems.length} problems`);
  process.exit(1);
}
console.log(`${file}: good`);

// open gives a page that reports errors and requests.
async function open(width, height) {
  const page = await browser.newPage({ viewport: { width, height } });
  page.on("console", (m) => fail(`${width} px: the console says: ${m.text()}`));
  page.on("pageerror", (e) => fail(`${width} px: error: ${e.message}`));
  page.on("dialog", (d) => { fail(`${width} px: a dialog opened: ${d.message()}`); d.dismiss(); });
  page.on("request", (r) => { if (r.url() !== address) fail(`${width} px: asks for ${r.url()}`); });
  await page.goto(address, { waitUntil: "load" });
  return page;
}

async function atWidth(width) {
  const page = await open(width, 900);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  if (wide > width) fail(`${width} px: the page is ${wide} px wide`);
  for (const link of await page.evaluate(linksAway)) fail(`${width} px: a link leads to ${link}`);
  for (const cut of await page.evaluate(clippedTexts)) fail(`${width} px: cut: ${cut}`);
  if (options.text !== undefined) await readsText(page, width);
  if (options.keep) await page.screenshot({ path: join(options.keep, `${width}.png`), fullPage: true });
  await page.evaluate(axe);
  const found = await page.evaluate((rules) => axe.run(document, { runOnly: rules }), axeRules);
  for (const v of found.violations) fail(`${width} px: ${v.id}: ${v.help}: ${v.nodes.map((n) => n.target.join(" ")).slice(0, 5).join(", ")}`);
  if (found.passes.length === 0) fail(`${width} px: no rule of accessibility was tried`);
  await page.close();
}

// linksAway finds what leads out of the page.
function linksAway() {
  return [...document.querySelectorAll("[href], [src]")].map((e) => e.getAttribute("href") ?? e.getAttribute("src")).filter((a) => !a.startsWith("#"));
}

// clippedTexts finds words of a picture that reach out of it.
function clippedTexts() {
  const out = [];
  for (const svg of document.querySelectorAll("svg")) {
    const frame = svg.getBoundingClientRect();
    for (const t of svg.querySelectorAll("text")) {
      const box = t.getBoundingClientRect();
      if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1) out.push(t.textContent);
    }
  }
  return out;
}

async function readsText(page, width) {
  const seen = await page.evaluate(() => ({ text: document.body.innerText, title: document.title, scripts: document.scripts.length }));
  if (!seen.text.includes(options.text)) fail(`${width} px: the page does not read ${options.text}`);
  if (!seen.title.includes(options.text)) fail(`${width} px: the title does not read ${options.text}`);
  if (seen.scripts > 0) fail(`${width} px: the page has ${seen.scripts} scripts`);
}

// inPrint lays the page out as it is printed, prints it, and reads the print back.
async function inPrint() {
  const page = await open(printed.width, printed.height);
  await page.emulateMedia({ media: "print" });
  for (const p of await page.evaluate(outOfPage, printed)) fail(`in print: ${p}`);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  if (options.keep) writeFileSync(join(options.keep, "report.pdf"), pdf);
  const pages = execFileSync("pdftotext", ["-layout", "-", "-"], { input: pdf, encoding: "utf8", maxBuffer: 1 << 26 }).split("\f").map(bare);
  for (const words of await page.evaluate(wordsOfPictures)) {
    if (!pages.some((p) => words.every((w) => p.includes(bare(w))))) fail(`in print: a picture is cut between pages: ${words[0]}`);
  }
  const sheets = [...pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)];
  if (sheets.length === 0) fail("in print: no pages");
  for (const [, wide, high] of sheets) {
    if (Math.abs(wide - 595.3) > 1.5 || Math.abs(high - 841.9) > 1.5) fail(`in print: a page of ${wide} by ${high} points is not A4`);
  }
  await page.close();
}

// bare leaves out what a print may set differently: spaces.
function bare(text) {
  return text.replace(/\s+/g, "");
}

// wordsOfPictures lists the words that each picture holds. All of a picture's words
// stand on one printed page, unless it is cut.
function wordsOfPictures() {
  return [...document.querySelectorAll("svg")].map((svg) => [...svg.querySelectorAll("text")].map((t) => t.textContent));
}

function outOfPage(paper) {
  const out = [];
  for (const e of document.querySelectorAll("figure, table, pre, p, h1, h2, h3")) {
    const box = e.getBoundingClientRect();
    if (box.right > paper.width + 1) out.push(`${e.tagName} ${e.id} reaches ${Math.round(box.right)} of ${paper.width} px`);
    if (e.tagName !== "FIGURE") continue;
    if (box.height > paper.height) out.push(`a picture is ${Math.round(box.height)} px high, a page ${paper.height}`);
    if (getComputedStyle(e).breakInside !== "avoid") out.push("a picture may be cut between pages");
  }
  // The customer's part is one page.
  const customer = document.querySelector(".customer").getBoundingClientRect();
  if (customer.bottom > paper.height) out.push(`the first page is ${Math.round(customer.bottom)} px high, ${paper.height} fit`);
  return out;
}
