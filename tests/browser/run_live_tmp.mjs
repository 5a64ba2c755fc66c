import { chromium } from "playwright-core";
import { live } from "./live.mjs";
import { Report } from "./report.mjs";
const report = new Report();
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox", "--disable-gpu", "--no-first-run"] });
await live(browser, process.argv[2], report);
await browser.close();
process.exit(report.close());
