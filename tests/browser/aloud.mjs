// A screen reader (Orca) reads the report and the technician's page aloud, in every language;
// what it says must be the page's own words in the page's own order. Needs a session bus.
import { spawn, spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Server, assert, openBrowser, run, verdict } from "./browser.mjs";
import { OF_PAGE, jobsOf } from "./languages.mjs";

const TAGS = ["en", "de", "es", "fr"];
const DISPLAY = ":77";
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/// A screen, its windows, the bus of what can be read, and the reader itself, that writes down what it says.
class Reader {
  constructor() {
    this.home = mkdtempSync(join(tmpdir(), "baywitness-aloud-"));
    this.heard = join(this.home, "heard");
    // No sound card is needed: the words are written down before they become sound.
    const spoken = join(this.home, ".config", "speech-dispatcher");
    mkdirSync(join(this.home, "run"), { mode: 0o700 });
    mkdirSync(spoken, { recursive: true });
    writeFileSync(join(spoken, "speechd.conf"), 'AddModule "dummy" "sd_dummy" ""\nDefaultModule dummy\n');
    Object.assign(process.env, { DISPLAY, HOME: this.home, XDG_RUNTIME_DIR: join(this.home, "run"), ACCESSIBILITY_ENABLED: "1" });
    this.children = [];
  }
  begin(program, ...words) {
    this.children.push(spawn(program, words, { stdio: "ignore" }));
    return wait(2000);
  }
  async screen() {
    await this.begin("Xvfb", DISPLAY, "-screen", "0", "1280x1600x24");
    await this.begin("openbox");
    spawnSync("gsettings", ["set", "org.gnome.desktop.interface", "toolkit-accessibility", "true"]);
    await this.begin("/usr/libexec/at-spi-bus-launcher", "--launch-immediately");
  }
  async listen() {
    await this.begin("orca", "--replace", "--debug-file", this.heard);
    for (let i = 0; i < 30 && !this.said().length; i++) await wait(1000);
    assert(this.said().length, "the screen reader says nothing");
  }
  said() {
    if (!existsSync(this.heard)) return [];
    const lines = readFileSync(this.heard, "utf8").split("\n");
    return lines.map((l) => l.match(/SPEECH OUTPUT: '(.*)'/)?.[1]).filter((l) => l !== undefined);
  }
  /// Until it has said nothing for a while.
  async silence() {
    for (let last = -1, now = this.said().length, still = 0; still < 6; last = now) {
      await wait(1000);
      now = this.said().length;
      still = now === last ? still + 1 : 0;
    }
  }
  /// All that it says of the page in front, from its first line.
  async all() {
    const key = (name) => spawnSync("xdotool", ["key", name]);
    // It may begin by itself when a page opens: that is not stopped halfway.
    await this.silence();
    key("ctrl+Home");
    await this.silence();
    const from = this.said().length;
    key("KP_Add");
    await this.silence();
    return this.said().slice(from);
  }
  end() {
    this.children.reverse().forEach((c) => c.kill());
  }
}

/// What must be heard in turn: the title, the headings, the cells of the checks, what is to be done.
function wanted() {
  const folded = (e) => e.closest("details:not([open])") && !e.closest("summary");
  const shown = (e) => e.checkVisibility({ visibilityProperty: true }) && !folded(e) && !e.closest("[aria-hidden=true]");
  const all = document.querySelectorAll("main h1, main h2, main h3, header h1, table.checks :is(th, td), .todo li, [data-verdict] h2");
  // A drawing's words are read as its name.
  return [...all].filter((e) => shown(e) && !e.querySelector("svg:not([aria-hidden=true])")).map((e) => e.innerText.trim().split("\n")[0].trim()).filter((t) => t);
}

const plain = (text) => text.normalize("NFKC").replace(/\\'/g, "'").replace(/\s+/g, " ").toLowerCase();
/// Letters and figures alone: where lines end and how signs are spoken is the reader's business.
const letters = (text) => plain(text).replace(/[^\p{L}\p{N}]/gu, "");

function compare(what, said, words) {
  const heard = letters(said.join(" "));
  let at = 0;
  for (const word of words) {
    const found = heard.indexOf(letters(word), at);
    assert(found >= 0, `${what}: "${word}", wanted as one of ${JSON.stringify(words)}, is not heard${heard.includes(letters(word)) ? " in its turn" : ""}`);
    at = found;
  }
  assert(words.length >= 5, `${what}: only ${words.length} things to hear`);
  // Where eyes see columns, words must not run into each other.
  const glued = said.filter((s) => /\p{Ll}\d|\d\p{Lu}\p{Ll}|\p{Ll}\p{Lu}\p{Ll}/u.test(s.replace(/\S*[._/-]\S*|[0-9a-f]{16,}/g, "")));
  assert(glued.length === 0, `${what}: words without a space: ${glued.join(" | ")}`);
  // A picture has a name, or it is decoration and not read: its name comes just before.
  const nameless = said.filter((s, i) => /^(image|graphic)$/.test(s) && !/\p{L}{3}/u.test(said[i - 1] ?? ""));
  assert(nameless.length === 0, `${what}: ${nameless.length} pictures without a name`);
  console.log(`${what}: ${said.length} utterances, ${words.length} of them asked for, in turn`);
}

async function read(page, reader, what, shots) {
  const words = await page.evaluate(wanted);
  await page.bringToFront();
  await page.mouse.click(5, 5);
  const said = await reader.all();
  writeFileSync(join(shots, `aloud-${what}.txt`), said.join("\n") + "\n");
  compare(what, said, words);
}

export async function aloud(program, work, shots) {
  const reader = new Reader();
  const jobs = jobsOf(work, OF_PAGE);
  let server, context;
  try {
    await reader.screen();
    const options = { headless: false, viewport: { width: 1200, height: 1400 }, locale: "en-GB" };
    context = await openBrowser({ dir: join(reader.home, "browser"), args: ["--force-renderer-accessibility"], options });
    const page = context.pages()[0] ?? await context.newPage();
    await reader.listen();
    server = await Server.start(program, jobs);
    for (const tag of TAGS) {
      const out = join(reader.home, tag);
      run(program, "verify", join(jobs, "outside"), "--report", out, "--language", tag);
      const [report] = readdirSync(out).filter((n) => n.endsWith(".html"));
      copyFileSync(join(out, report), join(out, "report.html"));
      await page.goto(pathToFileURL(join(out, "report.html")).href);
      await read(page, reader, `report-${tag}`, shots);
      await page.goto(`${server.link}language/${tag}`);
      await page.goto(`${server.link}jobs/outside/photos`);
      await verdict(page, "outside");
      await read(page, reader, `page-${tag}`, shots);
    }
    console.log("aloud: ok");
    return true;
  } catch (e) {
    console.error(`aloud: ${e.stack ?? e}`);
    return false;
  } finally {
    await context?.close();
    await server?.stop("SIGINT").catch(() => {});
    reader.end();
    rmSync(jobs, { recursive: true });
  }
}
