// Counts what was checked, a line for each group.

const MOST_SHOWN = 12;

export class Report {
  passed = 0;
  failed = 0;

  /** Runs `checks` as one group; `checks` is handed a function `(holds, place, words)`. */
  async group(name, checks) {
    const faults = [];
    let held = 0;
    const began = Date.now();
    const check = (holds, place, words) => {
      if (holds) held += 1;
      else faults.push(`${place}: ${words}`);
    };
    try {
      await checks(check);
    } catch (error) {
      faults.push(`broke off: ${error.message}`);
    }
    if (held + faults.length === 0) faults.push("nothing was checked");
    const seconds = ((Date.now() - began) / 1000).toFixed(0);
    console.log(`${faults.length ? "FAILED" : "ok    "} ${name}: ${held} held, ${faults.length} did not (${seconds} s)`);
    for (const fault of faults.slice(0, MOST_SHOWN)) console.log(`         ${fault}`.slice(0, 700));
    if (faults.length > MOST_SHOWN) console.log(`         and ${faults.length - MOST_SHOWN} more`);
    this.passed += held;
    this.failed += faults.length;
  }

  /** Says why something cannot be checked here. */
  skip(name, reason) {
    console.log(`skipped ${name}: ${reason}`);
  }

  /** The closing line; returns the exit code. */
  close() {
    console.log(`${this.passed} passed, ${this.failed} failed`);
    return this.failed ? 1 : 0;
  }
}
