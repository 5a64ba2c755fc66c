//! What makes a course's cards live, and the course itself kept on the reader's device.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::Path;

use drivecourse_machine::chance::name_hash;

/// The calculation for the browser and what it works on.
#[derive(Debug, Clone, Default)]
pub struct Live {
    /// The modules by their names: `practice` draws cases and marks answers, `pictures` draws; the others calculate.
    pub modules: BTreeMap<String, Vec<u8>>,
    /// The registry's words, packed.
    pub words: String,
    /// Families and items, packed.
    pub bank: String,
}

/// The folder of the live parts in a course.
const FOLDER: &str = "live";
/// The name of the script that keeps the course on the device.
const WORKER: &str = "service-worker.js";

impl Live {
    /// Each part as a script: a page opened straight from a file may load scripts, but no data.
    fn scripts(&self) -> Vec<(&str, String)> {
        let script = |name, value: String| (name, format!("(window.drivecourseParts ??= {{}}).{name} = {value};\n"));
        let modules = self.modules.iter();
        let mut out: Vec<_> =
            modules.map(|(name, bytes)| script(name.as_str(), format!("\"{}\"", base64(bytes)))).collect();
        out.push(script("words", quoted(&self.words)));
        out.push(script("bank", quoted(&self.bank)));
        out
    }

    /// Where a page finds the parts: their addresses from the root of the course, with digests in their names.
    pub(super) fn addresses(&self) -> String {
        let named: Vec<String> = self.scripts().iter().map(|(name, text)| address(name, text)).collect();
        named.join(" ")
    }

    /// Writes the parts into the course.
    pub(super) fn write(&self, course: &Path) -> io::Result<()> {
        fs::create_dir_all(course.join(FOLDER))?;
        self.scripts().iter().try_for_each(|(name, text)| fs::write(course.join(address(name, text)), text))
    }
}

fn address(name: &str, text: &str) -> String {
    format!("{FOLDER}/{name}-{:08x}.js", name_hash(text) >> 32)
}

/// Writes the script that keeps the course on the device, from `template`: with the list of every file and a version
/// that changes whenever one of them does.
pub(super) fn write_worker(course: &Path, template: &str) -> io::Result<()> {
    let mut names = Vec::new();
    gather(course, "", &mut names)?;
    names.sort();
    let mut version = 0_u64;
    for name in &names {
        // A checksum is enough to see a change, and a course is long.
        let digest = crc32fast::hash(&fs::read(course.join(name))?);
        version = name_hash(&format!("{version:x} {name} {digest:x}"));
    }
    let list: Vec<String> = names.iter().map(|name| quoted(name)).collect();
    let text = template
        .replace("\"version-to-be-set\"", &format!("\"{version:016x}\""))
        .replace("\"files-to-be-set\"", &list.join(",\n  "));
    fs::write(course.join(WORKER), text)
}

/// Every file below `folder`, by its address; hidden ones belong to the program.
fn gather(folder: &Path, before: &str, out: &mut Vec<String>) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if name.starts_with('.') {
            continue;
        }
        if entry.path().is_dir() {
            gather(&entry.path(), &format!("{before}{name}/"), out)?;
        } else {
            out.push(format!("{before}{name}"));
        }
    }
    Ok(())
}

/// `text` as a string of a script.
pub(super) fn quoted(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 2);
    out.push('"');
    for c in text.chars() {
        match c {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            c if c < ' ' || matches!(c, '\u{2028}' | '\u{2029}') => out.push_str(&format!("\\u{:04x}", u32::from(c))),
            c => out.push(c),
        }
    }
    out.push('"');
    out
}

/// RFC 4648, section 4.
fn base64(bytes: &[u8]) -> String {
    const SIGNS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut out = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for chunk in bytes.chunks(3) {
        let group = (0..3).fold(0_u32, |group, place| group << 8 | u32::from(*chunk.get(place).unwrap_or(&0)));
        for place in 0..4 {
            let sign = SIGNS[(group >> (18 - 6 * place) & 63) as usize];
            out.push(if place > chunk.len() { '=' } else { char::from(sign) });
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_are_written_as_the_standard_says() {
        // RFC 4648, section 10.
        for (bytes, text) in [("", ""), ("f", "Zg=="), ("fo", "Zm8="), ("foo", "Zm9v"), ("foobar", "Zm9vYmFy")] {
            assert_eq!(base64(bytes.as_bytes()), text);
        }
    }

    #[test]
    fn a_string_of_a_script_ends_where_it_should() {
        assert_eq!(quoted("a\"b\\\n\u{2028}µ"), "\"a\\\"b\\\\\\u000a\\u2028µ\"");
    }

    #[test]
    fn the_version_changes_with_any_file() {
        let folder = tempfile::tempdir().unwrap();
        let worker = |name: &str, text: &str| {
            fs::write(folder.path().join(name), text).unwrap();
            write_worker(folder.path(), "\"version-to-be-set\" [\"files-to-be-set\"]").unwrap();
            let text = fs::read_to_string(folder.path().join(WORKER)).unwrap();
            fs::remove_file(folder.path().join(WORKER)).unwrap();
            text
        };
        let (one, two) = (worker("a.html", "1"), worker("a.html", "2"));
        assert_ne!(one, two);
        assert_eq!(two, worker("a.html", "2"));
        assert!(worker("b.html", "").contains("[\"a.html\",\n  \"b.html\"]"));
    }
}
