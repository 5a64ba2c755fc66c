//! Text on its way to and from a terminal.

use std::io::{BufRead, IsTerminal, Write};

use anyhow::Result;

/// Characters that steer a terminal or turn the writing direction instead of being seen.
pub(crate) fn is_hidden(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}')
}

/// What a person or a file said, as it may be shown in a terminal: white space single, nothing hidden.
pub(crate) fn clean(text: &str) -> String {
    let words: Vec<String> =
        text.split_whitespace().map(|word| word.chars().filter(|c| !is_hidden(*c)).collect()).collect();
    words.join(" ")
}

/// Somebody to talk with: at a keyboard, or a file through a pipe.
pub(crate) struct Talk {
    input: std::io::StdinLock<'static>,
    out: std::io::StdoutLock<'static>,
    live: bool,
}

impl Talk {
    pub(crate) fn new() -> Self {
        let input = std::io::stdin();
        let live = input.is_terminal();
        Self { input: input.lock(), out: std::io::stdout().lock(), live }
    }

    pub(crate) fn say(&mut self, text: &str) -> Result<()> {
        self.out.write_all(text.as_bytes())?;
        Ok(self.out.flush()?)
    }

    /// The next line; `None` at the end of the input.
    pub(crate) fn line(&mut self, prompt: &str) -> Result<Option<String>> {
        self.say(prompt)?;
        let mut bytes = Vec::new();
        if self.input.read_until(b'\n', &mut bytes)? == 0 {
            self.say("\n")?;
            return Ok(None);
        }
        let text = String::from_utf8_lossy(&bytes).trim_start_matches('\u{feff}').trim().to_owned();
        if !self.live {
            // From a pipe nobody sees what was typed: show it.
            let shown: String = text.chars().filter(|c| !is_hidden(*c)).take(200).collect();
            self.say(&format!("{shown}\n"))?;
        }
        Ok(Some(text))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_steers_the_terminal() {
        for (text, shown) in [
            ("Ada\u{1b}[2J Brenn", "Ada[2J Brenn"),
            ("a\u{202e}b\u{2066}c\u{200f}", "abc"),
            ("two\nlines\ttabs\r", "two lines tabs"),
            ("Zoë 🙂 李雷 محمد", "Zoë 🙂 李雷 محمد"),
            ("\u{9b}31m\u{7f}\u{0}", "31m"),
        ] {
            assert_eq!(clean(text), shown);
        }
    }
}
