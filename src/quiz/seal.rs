//! The seal: every paper's chance comes from the assessor's secret, so that owning this program
//! and a paper does not give the key.
//!
//! A paper's seed is a keyed hash (HMAC with SHA-256) of the exam, the candidate and the sitting
//! under the secret. The secret itself never appears in a paper, an exam record, an error or `Debug`.

use core::fmt;

use drivecourse_machine::messages;
use hmac::{Hmac, Mac};
use sha2::{Digest, Sha256};

const HEADER: &str = "drivecourse secret 1";
const CHECK: &str = "check";

/// The assessor's secret: 32 random bytes.
#[derive(Clone, PartialEq, Eq)]
pub struct Secret([u8; 32]);

/// Why a text holds no secret; says nothing of what the text holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoSecret {
    /// The first line is not a secret's.
    Header,
    /// Not 64 hexadecimal figures.
    Figures,
    /// The check line is missing or belongs to another secret: a figure was changed.
    Check,
}

messages! { pub(crate) SAYS {
    NO_HEADER = "problem-secret-no-header", "This is not a secret file: its first line should read {header}.";
    BAD_FIGURES = "problem-secret-bad-figures", "This secret file is damaged: it should hold 64 hexadecimal figures. Use a sound copy.";
    BAD_CHECK = "problem-secret-bad-check", "This secret file is damaged: its check line does not fit its figures. Use a sound copy.";
} }

impl fmt::Display for NoSecret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::Header => NO_HEADER.say(&[("header", &format!("{HEADER:?}"))]),
            Self::Figures => BAD_FIGURES.text().to_owned(),
            Self::Check => BAD_CHECK.text().to_owned(),
        })
    }
}

impl core::error::Error for NoSecret {}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret(..)")
    }
}

impl Secret {
    /// The secret made of `bytes`, which must come from the system's random source.
    pub fn new(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// Reads a secret from the text that [`Secret::write`] gives; blank lines and the case of letters do not matter.
    ///
    /// # Errors
    /// [`NoSecret`].
    pub fn read(text: &str) -> Result<Self, NoSecret> {
        let text = text.trim_start_matches('\u{feff}');
        let mut lines = text.lines().map(str::trim).filter(|line| !line.is_empty());
        if lines.next() != Some(HEADER) {
            return Err(NoSecret::Header);
        }
        let (mut figures, mut check) = (String::new(), None);
        for line in lines {
            match line.strip_prefix(CHECK) {
                Some(rest) => check = Some(rest.trim().to_ascii_lowercase()),
                None => figures.extend(line.chars().filter(|c| !c.is_whitespace())),
            }
        }
        let bytes = from_hex(&figures).ok_or(NoSecret::Figures)?;
        let secret = Self(bytes.try_into().map_err(|_| NoSecret::Figures)?);
        if check.as_deref() == Some(secret.file_check().as_str()) { Ok(secret) } else { Err(NoSecret::Check) }
    }

    /// The secret as a text to keep: a header line, the figures, a check.
    pub fn write(&self) -> String {
        let figures = hex(&self.0);
        let groups: Vec<_> = (0..figures.len()).step_by(16).map(|start| &figures[start..start + 16]).collect();
        format!("{HEADER}\n{}\n{CHECK} {}\n", groups.join(" "), self.file_check())
    }

    fn file_check(&self) -> String {
        let hash = Sha256::new().chain_update(HEADER).chain_update(self.0).finalize();
        hex(&hash[..4])
    }

    fn keyed(&self, what: &str, fields: &[&[u8]]) -> Hmac<Sha256> {
        keyed(&self.0, what, fields)
    }

    /// A short value kept in the exam record, by which a wrong secret is recognised; it gives nothing away.
    pub fn key_check(&self, exam: &str) -> String {
        let hash = self.keyed("key check", &[exam.as_bytes()]).finalize().into_bytes();
        hex(&hash[..8])
    }

    /// Whether `check` is this secret's [`Secret::key_check`]; takes equally long whatever it is.
    pub fn fits(&self, exam: &str, check: &str) -> bool {
        let Some(check) = from_hex(check).filter(|bytes| bytes.len() == 8) else { return false };
        self.keyed("key check", &[exam.as_bytes()]).verify_truncated_left(&check).is_ok()
    }

    /// What all chance of one candidate's paper comes from.
    pub fn paper_seed(&self, exam: &str, candidate: &str, sitting: u32) -> PaperSeed {
        let fields = [exam.as_bytes(), candidate.as_bytes(), &sitting.to_be_bytes()];
        PaperSeed(self.keyed("paper", &fields).finalize().into_bytes().into())
    }
}

/// The seed of one paper; as secret as the secret.
#[derive(Clone, PartialEq, Eq)]
pub struct PaperSeed([u8; 32]);

impl fmt::Debug for PaperSeed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("PaperSeed(..)")
    }
}

impl PaperSeed {
    /// The `counter`-th number of the stream called `name`.
    pub fn number(&self, name: &str, counter: u64) -> u64 {
        let hash: [u8; 32] = keyed(&self.0, name, &[&counter.to_be_bytes()]).finalize().into_bytes().into();
        u64::from_be_bytes(hash.first_chunk().copied().unwrap_or_default())
    }
}

/// Every field goes in with its length before it, so that no two lists of fields read alike.
fn keyed(key: &[u8; 32], what: &str, fields: &[&[u8]]) -> Hmac<Sha256> {
    let mut mac = <Hmac<Sha256> as Mac>::new_from_slice(key).expect("HMAC takes a key of any length");
    for field in core::iter::once(&what.as_bytes()).chain(fields) {
        mac.update(&(field.len() as u64).to_be_bytes());
        mac.update(field);
    }
    mac
}

/// Bytes as lower-case hexadecimal figures.
pub(crate) fn hex(bytes: &[u8]) -> String {
    let figure = |nibble: u8| char::from(b"0123456789abcdef"[usize::from(nibble & 15)]);
    bytes.iter().flat_map(|byte| [figure(byte >> 4), figure(*byte)]).collect()
}

fn from_hex(text: &str) -> Option<Vec<u8>> {
    let nibbles: Vec<u8> = text.chars().map(|c| c.to_digit(16).map(|n| n as u8)).collect::<Option<_>>()?;
    if nibbles.len() % 2 == 1 {
        return None;
    }
    Some(nibbles.chunks_exact(2).map(|pair| pair[0] << 4 | pair[1]).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn secret() -> Secret {
        Secret::new(core::array::from_fn(|index| index as u8))
    }

    /// RFC 4231, test case 2: HMAC-SHA-256 of a known key and text, for the library we lean on.
    #[test]
    fn the_keyed_hash_is_the_published_one() {
        let mut mac = <Hmac<Sha256> as Mac>::new_from_slice(b"Jefe").unwrap();
        mac.update(b"what do ya want for nothing?");
        let published = "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843";
        assert_eq!(hex(&mac.finalize().into_bytes()), published);
    }

    #[test]
    fn a_secret_survives_its_file_and_damage_is_seen() {
        let text = secret().write();
        assert_eq!(Secret::read(&text), Ok(secret()));
        assert_eq!(Secret::read(&format!("\u{feff}{}", text.replace('\n', "\r\n\r\n"))), Ok(secret()));
        assert_eq!(Secret::read(&text.replacen("07", "08", 1)), Err(NoSecret::Check));
        assert_eq!(Secret::read(&text.replacen("07", "0", 1)), Err(NoSecret::Figures));
        assert_eq!(Secret::read(&text.replacen("07", "zz", 1)), Err(NoSecret::Figures));
        assert_eq!(Secret::read(text.lines().next().unwrap()), Err(NoSecret::Figures));
        assert_eq!(Secret::read("title = \"x\""), Err(NoSecret::Header));
        assert_eq!(Secret::read(&text.lines().take(2).collect::<Vec<_>>().join("\n")), Err(NoSecret::Check));
    }

    #[test]
    fn nothing_shows_the_secret() {
        let shown = format!("{:?} {:?}", secret(), secret().paper_seed("e", "a", 1));
        assert_eq!(shown, "Secret(..) PaperSeed(..)");
        assert!(!secret().write().contains(&secret().key_check("e")));
    }

    #[test]
    fn a_wrong_secret_is_recognised() {
        let check = secret().key_check("spring");
        assert!(secret().fits("spring", &check));
        assert!(!secret().fits("autumn", &check));
        assert!(!Secret::new([7; 32]).fits("spring", &check));
        for bad in ["", "zz", &check[..6], &format!("{check}00")] {
            assert!(!secret().fits("spring", bad));
        }
    }

    #[test]
    fn seeds_differ_by_every_field() {
        let seeds = [
            secret().paper_seed("ab", "c", 1),
            secret().paper_seed("a", "bc", 1),
            secret().paper_seed("ab", "c", 2),
            Secret::new([7; 32]).paper_seed("ab", "c", 1),
        ];
        for (index, seed) in seeds.iter().enumerate() {
            assert!(seeds[..index].iter().all(|other| other != seed));
        }
        assert_ne!(seeds[0].number("question", 0), seeds[0].number("question", 1));
        assert_ne!(seeds[0].number("question", 0), seeds[0].number("item", 0));
        // Golden, worked out with another HMAC: a change here would change every sealed paper ever printed.
        assert_eq!(seeds[0].number("question", 0), GOLDEN);
    }

    const GOLDEN: u64 = 10_496_632_833_820_364_229;
}
